package readback.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables follow from the set of bundles, and from nothing else. */
@Tag("slow")
class TablesTest {

    private static final int CALLS = 84;
    private static final int LATE = 70;

    /** An avoirdupois ounce in kilograms: NIST SP 811 (2008), appendix B.8. */
    private static final double OUNCE = 0.028349523125;

    private static final String KEY = "sixteen bytes or more of it";

    /** {@code printf 'technician\ntechnician0' | openssl dgst -sha256 -hmac 'sixteen bytes or more of it'} */
    private static final String TECHNICIAN_0 = "970ab6ac81168190";

    @TempDir
    private static Path folder;

    private static FleetRun first;
    private static FleetRun hashed;
    private static FleetRun with;

    private static FleetRun make(String tables, Object... more) {
        return FleetRun.of(Stream.concat(
                        Stream.of("tables", "--out", folder.resolve(tables).toString()),
                        Stream.of(more).map(Object::toString))
                .toArray(String[]::new));
    }

    /** The same calls in bundles that came late, in others, and with names hashed. */
    @BeforeAll
    static void make() throws IOException {
        SmallFleet fleet = new SmallFleet(CALLS);
        Path early = fleet.packed(folder.resolve("early"), 0, LATE);
        Path late = fleet.packed(folder.resolve("late"), LATE, CALLS);
        Path other =
                fleet.and(SmallFleet.kind(0).copy(SmallFleet.identity(0), 9)).shuffled(folder.resolve("other"), 17);
        Path letter = Files.writeString(folder.resolve("letter"), "Dear customer\n");
        Path key = Files.writeString(folder.resolve("key"), KEY);
        first = make("tables", early);
        make("tables", late, early, early);
        with = make("again", other, letter);
        hashed = make("hashed", early, late, "--hash-names", key);
    }

    /** Every row of every table, and what the folder says of itself. */
    private static List<String> content(String tables) throws SQLException, IOException {
        List<String> rows = new ArrayList<>();
        try (DuckDesk desk = new DuckDesk(folder.resolve(tables))) {
            for (String table : Tables.all()) {
                desk.ask("select * from " + table).rows().forEach(row -> rows.add(table + " " + row));
            }
        }
        rows.sort(null);
        rows.add(Files.readString(folder.resolve(tables).resolve("about.json")));
        return rows;
    }

    @Test
    void late_and_repeated_bundles_in_any_order_give_the_tables_of_all_together() throws Exception {
        assertThat(first.out()).contains("with " + LATE + " sessions");
        assertThat(first.code()).isZero();
        List<String> all = content("tables");

        assertThat(all.size()).isGreaterThan(CALLS * 12);
        assertThat(content("again").equals(all)).isTrue();
        try (Stream<Path> months = Files.list(folder.resolve("tables/sessions"))) {
            assertThat(months.map(month -> month.getFileName().toString()))
                    .hasSize(12)
                    .contains("month=2025-12", "month=2026-11");
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString())).noneMatch(name -> name.startsWith("."));
        }
    }

    @Test
    void every_table_has_the_same_columns_whatever_was_said() throws Exception {
        try (DuckDesk desk = new DuckDesk(folder.resolve("tables"))) {
            for (String table : Tables.all()) {
                assertThat(desk.ask("select * from " + table + " limit 0").columns())
                        .containsExactly(Tables.form(table).fieldNames());
            }
        }
    }

    @Test
    void a_call_is_in_the_tables_as_it_was_said() throws Exception {
        RecordedCall.Identity identity = SmallFleet.identity(0);
        String one = " where session = '" + identity.session() + "'";
        try (DuckDesk desk = new DuckDesk(folder.resolve("tables"))) {
            assertThat(desk.ask("select session, job, refrigerant, metering_device, technician, unit, charge,"
                                    + " first_charge, fault_found, closed, forked, fault, cast(started as date)::varchar"
                                    + " from sessions" + one)
                            .rows())
                    .containsExactly(List.of(
                            identity.session(),
                            "charge-check",
                            "R-410A",
                            "piston",
                            String.valueOf(identity.about().get("technician")),
                            String.valueOf(identity.about().get("appliance"))
                                    .replaceAll(".*SN ", "")
                                    .toLowerCase(Locale.ROOT)
                                    .replace("-", ""),
                            "in-tolerance",
                            "add",
                            "undercharge",
                            true,
                            false,
                            "",
                            identity.day().toString()));
            assertThat(desk.ask("select count(*), min(direction), sum(kg) from moves" + one)
                            .rows()
                            .get(0))
                    .startsWith(2L, "in")
                    .last()
                    .asInstanceOf(InstanceOfAssertFactories.DOUBLE)
                    .isCloseTo(12 * OUNCE, within(1e-6));
            assertThat(desk.ask("select kind, asked from doubts" + one).rows()).contains(List.of("not-understood", ""));
            assertThat(desk.ask("select value, unit from readings" + one + " and name = 'SUCTION_LINE_TEMPERATURE'")
                            .rows())
                    .containsExactly(List.of(58.0, "°F"));
            assertThat(desk.ask("select waits, passed_over from cautions" + one + " and caution = 'frostbite'")
                            .rows())
                    .containsExactly(List.of(true, false));
        }
    }

    @Test
    void names_are_hashed_under_a_key_and_counted_together_all_the_same() throws Exception {
        assertThat(hashed.out()).contains("hashed with HMAC-SHA-256");
        assertThat(Files.readString(folder.resolve("hashed/about.json"))).contains("hmac-sha-256");
        assertThat(content("hashed").stream()
                        .filter(row -> row.matches("(?s).*(Technician|Elm Street|Fairhollow|SN U-|u[0-9]+,).*")))
                .isEmpty();
        String together = "select count(distinct technician), count(distinct place), count(distinct site),"
                + " count(distinct unit), count(distinct appliance), count(*) from sessions";
        try (DuckDesk desk = new DuckDesk(folder.resolve("hashed"));
                DuckDesk plain = new DuckDesk(folder.resolve("tables"))) {
            assertThat(desk.ask(together)).isEqualTo(plain.ask(together));
            assertThat(desk.ask("select distinct technician from sessions").rows())
                    .contains(List.of(TECHNICIAN_0));
        }
    }

    @Test
    void what_is_no_bundle_is_told_and_the_others_are_taken() {
        assertThat(with.err()).contains("letter is no bundle").contains("what holds of it is taken");
        assertThat(with.code()).isEqualTo(1);
    }

    @Test
    void what_cannot_be_made_is_refused_with_what_could() throws Exception {
        Path early = folder.resolve("early");
        Files.createDirectories(folder.resolve("others/of"));

        assertThat(make("letter", early).err()).contains("is a file: name a folder for the tables.");
        assertThat(make("others", early).err()).contains("holds something else than tables");
        assertThat(make("letter/tables", early).err())
                .contains("cannot be written")
                .contains("name a folder in a place that you may write to");
        assertThat(make("none", early, "--hash-names", folder.resolve("letter")).err())
                .contains("has 14 bytes and needs 16 at least");
        assertThat(make("none", folder.resolve("letter")).err()).contains("None of the bundles holds a session");
        assertThat(folder.resolve("none")).doesNotExist();
    }
}
