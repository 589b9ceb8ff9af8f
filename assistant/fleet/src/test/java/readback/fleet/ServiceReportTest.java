package readback.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.assistant.archive.SessionPacker;
import readback.assistant.record.About;
import readback.prompts.text.Language;
import readback.rules.Browser;

/** What a head of service asks, answered for a dozen calls whose answers can be worked out by hand; and by DuckDB. */
@Tag("slow")
class ServiceReportTest {

    private static final String ONE = "Mo <script>alert(1)</script>";
    private static final String TWO = "Ines";

    /** Pounds in an ounce, and kilograms: NIST SP 811 (2008), appendix B.8. */
    private static final double OUNCES_IN_POUND = 16;

    private static final double POUND = 0.45359237;

    /** When the last call that counts began: thirty days after it are not over. */
    private static final Instant LATEST = Instant.parse("2026-11-20T13:05:00Z");

    @TempDir
    private static Path folder;

    private static Path tables;
    private static FleetRun report;

    private static RecordedCall.Identity call(String name, String day, String technician, String site, String unit) {
        return new RecordedCall.Identity(
                name,
                LocalDate.parse(day),
                Map.of(About.TECHNICIAN, technician, About.PLACE, site, About.APPLIANCE, "SN " + unit));
    }

    @BeforeAll
    static void make() throws IOException {
        RecordedCall charged = RecordedCall.charged();
        RecordedCall low = RecordedCall.low();
        SessionPacker packer = new SessionPacker(folder.resolve("bundles"), 4);
        for (byte[] record : List.of(
                // comes back to the unit after eighteen days
                charged.copy(call("01", "2026-03-02", ONE, "1 Elm", "U1")),
                charged.copy(call("02", "2026-03-20", ONE, "1 Elm", "U1")),
                // left low, and another unit at the site twenty days later
                low.copy(call("03", "2026-03-05", TWO, "2 Elm", "U2")),
                charged.copy(call("04", "2026-03-25", TWO, "2 Elm", "U3")),
                RecordedCall.leftOpen().copy(call("05", "2026-04-10", ONE, "3 Elm", "U4")),
                RecordedCall.evacuation().copy(call("06", "2026-09-01", TWO, "3 Elm", "U4")),
                RecordedCall.weighedIn().copy(call("07", "2026-09-10", TWO, "4 Elm", "U5")),
                charged.copy(call("11", "2026-11-20", ONE, "1 Elm", "U1")),
                // none of these counts: practice, damaged, and a session that goes on in two ways
                charged.copy(practice()),
                damaged(charged.copy(call("09", "2026-10-01", ONE, "1 Elm", "U1"))),
                charged.copy(call("10", "2026-10-02", ONE, "1 Elm", "U1")),
                charged.rewritten(call("10", "2026-10-02", ONE, "1 Elm", "U1"), 20))) {
            packer.add(record, "a call");
        }
        packer.close();
        tables = folder.resolve("tables");
        FleetRun.of("tables", folder.resolve("bundles").toString(), "--out", tables.toString());
        report = FleetRun.of(
                "report", tables.toString(), "--out", folder.resolve("report").toString());
    }

    private static RecordedCall.Identity practice() {
        Map<String, String> about =
                new LinkedHashMap<>(call("08", "2026-10-03", ONE, "1 Elm", "U1").about());
        about.put(About.PRACTICE, "low-charge");
        return new RecordedCall.Identity("08", LocalDate.parse("2026-10-03"), about);
    }

    private static byte[] damaged(byte[] record) {
        record[record.length - 200] ^= 1;
        return record;
    }

    private static List<List<@Nullable Object>> duckDb(Question question) throws Exception {
        try (DuckDesk desk = new DuckDesk(tables)) {
            return new WorkedOut(Language.english(), LATEST)
                    .of(question, desk.ask(question.sql(LATEST)))
                    .rows();
        }
    }

    private static String csv(Question question) throws IOException {
        return Files.readString(folder.resolve("report").resolve(question.id() + ".csv"));
    }

    /** The report's file for other programs is what DuckDB answers over the same tables, to six decimals. */
    @ParameterizedTest
    @EnumSource
    void one_desk_gives_the_same_answer_as_the_engine(Question question) throws Exception {
        try (DuckDesk desk = new DuckDesk(tables)) {
            Answer answer = new WorkedOut(Language.english(), LATEST).of(question, desk.ask(question.sql(LATEST)));

            assertThat(csv(question)).isEqualTo(AnswerTexts.csv(answer));
            assertThat(answer.rows()).isNotEmpty();
        }
    }

    @Test
    void the_page_breaks_no_rule_of_accessibility(@TempDir Path pages) throws Exception {
        Browser.in(pages).breaksNoRule(Files.readString(folder.resolve("report/fleet.html")));
    }

    @Test
    void practice_damaged_and_forked_sessions_are_told_and_take_no_part() throws Exception {
        assertThat(duckDb(Question.OVERVIEW))
                .containsExactly(
                        List.of("sessions", 11L),
                        List.of("practice", 1L),
                        List.of("damaged", 1L),
                        List.of("forked", 1L),
                        List.of("calls", 8L),
                        List.of("unclosed", 1L),
                        List.of("calls_at_named_sites", 8L),
                        List.of("revisited_within_30_days", 2L));
    }

    /** Three charge calls of one: revisited, right, unfinished; two of the other: left low, right. */
    @Test
    void a_call_is_right_the_first_time_when_it_ends_in_tolerance_and_nobody_comes_back() throws Exception {
        assertThat(duckDb(Question.FIRST_TIME_RIGHT))
                .containsExactly(List.of(TWO, 2L, 0L, 1L, 0.5), List.of(ONE, 3L, 0L, 1L, 1.0 / 3));
    }

    @Test
    void sites_that_were_visited_again_are_named() throws Exception {
        assertThat(duckDb(Question.REVISITS)).containsExactly(List.of("1 Elm", 3L, 1L), List.of("2 Elm", 2L, 1L));
    }

    /** Four calls with 8 and 4 oz each, and 100 oz weighed in; potentials of R-410A: IPCC AR4 2088, AR5 1924. */
    @Test
    void refrigerant_is_summed_in_pounds_and_in_tonnes_of_carbon_dioxide() throws Exception {
        double pounds = (4 * 12 + 100) / OUNCES_IN_POUND;

        List<@Nullable Object> row = duckDb(Question.REFRIGERANTS).get(0);

        assertThat(row).startsWith("R-410A", 5L);
        assertThat((Double) row.get(2)).isCloseTo(pounds, within(1e-5));
        assertThat((Double) row.get(4)).isCloseTo(pounds * POUND * 2.088, within(1e-5));
        assertThat((Double) row.get(6)).isCloseTo(pounds * POUND * 1.924, within(1e-5));
    }

    /** 36 oz in a year into a charge of 10 lb are 22.5 %; what was weighed in, and the unit that got 12 oz, do not. */
    @Test
    void a_unit_that_loses_much_is_told_with_the_rule_that_it_is_too_small_for() throws Exception {
        List<List<@Nullable Object>> rows = duckDb(Question.LEAKS);

        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).startsWith("SN U1", "R-410A").endsWith("40 CFR 84.106: from 15 lb, this unit is below");
        assertThat((Double) rows.get(0).get(4)).isCloseTo(22.5, within(1e-3));
    }

    @Test
    void what_was_not_finished_and_what_was_found_is_listed() throws Exception {
        assertThat(duckDb(Question.UNCLOSED))
                .hasSize(1)
                .allMatch(row -> row.get(0).equals("05"));
        assertThat(duckDb(Question.FAULTS)).containsExactly(List.of("undercharge", 6L));
        // "mumble mumble" in each call of a piston
        assertThat(duckDb(Question.ASKED)).contains(List.of("", "not-understood", 5L, 5L));
    }

    @Test
    void the_page_shows_names_as_text_only_and_says_what_they_are() throws Exception {
        String page = Files.readString(folder.resolve("report/fleet.html"));

        assertThat(report.code()).isZero();
        assertThat(page)
                .contains("Mo &lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script")
                .contains("Names of people, places and equipment are as they were given.")
                .contains("exempt from 40 CFR 84.106")
                .contains("(AR4)");
        assertThat(page.split("<section", -1)).hasSize(Question.values().length + 1);
        assertThat(Files.readString(folder.resolve("report/about.csv"))).contains("names,plain");
        try (Stream<Path> files = Files.list(folder.resolve("report"))) {
            assertThat(files).hasSize(Question.values().length + 2);
        }
    }

    @Test
    void what_cannot_be_asked_is_refused_with_what_could() throws Exception {
        String out = folder.resolve("report").toString();

        assertThat(FleetRun.of("report", tables.toString(), "--out", out).err())
                .contains("is there already: name another folder, or add --force.");
        assertThat(FleetRun.of("report", folder.resolve("bundles").toString(), "--out", out)
                        .err())
                .contains("holds no tables: make them first, with 'readback-fleet tables BUNDLES --out FOLDER'.");
        assertThat(FleetRun.of("report", tables.toString(), "--out", out, "--as-of", "today")
                        .err())
                .contains("--as-of is a day as in 2026-11-30, not 'today'.");
    }
}
