package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.About;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;

/** The records of several tablets come together in the office. */
class ManyTabletsTest {

    @TempDir
    private Path office;

    private Path tablet(String name) throws IOException {
        return Files.createDirectories(office.resolve(name));
    }

    private static void copy(Path session, Path to) throws IOException {
        Path folder = Files.createDirectories(to.resolve(session.getFileName()));
        Files.copy(session.resolve(SessionRecord.FILE), folder.resolve(SessionRecord.FILE));
    }

    private static void keep(Path session, int lines) throws IOException {
        Path file = session.resolve(SessionRecord.FILE);
        List<String> all = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", all.subList(0, lines)) + "\n");
    }

    @Test
    void sessions_of_several_folders_are_listed_together_by_start_each_once() throws Exception {
        Path red = tablet("red");
        Path blue = tablet("blue");
        Path session = Scripted.charging("one").about(About.TABLET, "red").in(red);
        Scripted.valve("two").about(About.TABLET, "blue").in(blue);
        copy(session, blue);

        Ran ran = Ran.of("", "sessions", red.toString(), blue.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("2 of 2 sessions").contains("one").contains("two");
        assertThat(ran.err()).contains("holds session one once more").contains("it is counted once");
    }

    @Test
    void a_tree_is_searched_for_folders_with_sessions() throws Exception {
        Scripted.charging("one").in(tablet("north/red"));
        Scripted.valve("two").in(tablet("south/blue/2026"));

        assertThat(Ran.of("", "sessions", office.toString()).out()).contains("2 of 2 sessions");
    }

    @Test
    void of_two_states_of_a_session_the_longer_one_counts() throws Exception {
        Path red = tablet("red");
        Path blue = tablet("blue");
        Path whole = Scripted.charging("one").in(red);
        copy(whole, blue);
        keep(blue.resolve("one"), 5);

        for (String[] order : new String[][] {{"red", "blue"}, {"blue", "red"}}) {
            Ran ran = Ran.of(
                    "",
                    "sessions",
                    office.resolve(order[0]).toString(),
                    office.resolve(order[1]).toString());
            assertThat(ran.out()).contains("1 of 1 sessions").contains("charge right");
            assertThat(ran.err()).contains("holds an earlier state of session one");
        }
    }

    @Test
    void two_sessions_of_one_name_that_part_are_an_alarm() throws Exception {
        Scripted.charging("one").in(tablet("red"));
        Scripted.valve("one").in(tablet("blue"));

        assertThat(Ran.of("", "sessions", office.toString()).err())
                .contains("holds another session one than")
                .contains("one of them was rewritten");
    }

    @Test
    void the_check_reads_every_ledger_and_anchors_are_found_in_any_folder() throws Exception {
        Path red = tablet("red");
        Ran.of("r 410 a\n", "check", "--typed", "--voice", "none", "--sessions", red.toString(), "--tablet", "Red 7");
        Ran.of(
                "r 410 a\n",
                "check",
                "--typed",
                "--voice",
                "none",
                "--sessions",
                tablet("blue").toString());
        Path anchors = office.resolve("anchors.jsonl");

        Ran check = Ran.of("", "sessions", office.toString(), "--check", "--anchors", anchors.toString());
        assertThat(check.out()).contains("2 of 2 records hold what the ledger knows");
        assertThat(check.code()).isZero();
        assertThat(Ran.of("", "sessions", office.toString(), "--against", anchors.toString())
                        .out())
                .contains("2 of 2 records hold");
        Path lines = office.resolve("lines.jsonl");
        Ran.of("", "sessions", red.toString(), "--export", lines.toString());
        assertThat(lines).content().contains("\"tablet\":\"Red 7\"");
    }

    @Test
    void reports_of_all_sessions_are_written_and_the_index_links_to_them() throws Exception {
        Path red = tablet("red");
        Scripted.charging("one").about(About.PLACE, "12 Elm Road").in(red);
        Scripted.session("left").say(5, "four ten a").cutShortIn(red);
        Path index = office.resolve("index.html");
        Path reports = office.resolve("all reports");

        Ran ran = Ran.of("", "sessions", red.toString(), "--reports", reports.toString(), "--html", index.toString());

        assertThat(ran.out()).contains("Written: 2 reports in " + reports);
        assertThat(reports.resolve("one.html")).content().contains("12 Elm Road");
        assertThat(index)
                .content()
                .contains("<a href=\"all%20reports/one.html\">one</a>")
                .contains("12 Elm Road")
                .contains("(not finished)");
        assertThat(Ran.of("", "sessions", red.toString(), "--reports", reports.toString())
                        .err())
                .as("no page is written over")
                .contains("is there already");
    }

    @Test
    void the_customers_sheet_is_written_beside_the_report() throws Exception {
        Path session =
                Scripted.charging("one").about(About.CUSTOMER, "The owner").in(tablet("red"));
        Path sheet = office.resolve("sheet.html");

        assertThat(Ran.of("", "report", session.toString(), "--sheet", sheet.toString())
                        .code())
                .isZero();
        assertThat(sheet)
                .content()
                .contains("<h1>Service sheet</h1>")
                .contains("The owner")
                .contains("Charge right")
                .contains("12.0 oz (0.75 lb)")
                .doesNotContain("Conversation");
    }

    /** Without the designer's airflow there is no grade of the measured one: the session has none to tell. */
    @Test
    void an_installation_is_graded_by_what_was_measured_and_what_the_designer_states() throws Exception {
        String session = Scripted.newInstallation("new").in(tablet("green")).toString();
        Path without = office.resolve("without.html");
        Path with = office.resolve("with.html");

        Ran.of("", "report", session, "--commissioning", without.toString());
        Ran.of("", "report", session, "--commissioning", with.toString(), "--design-airflow", "1200");

        assertThat(without).content().contains("no design airflow was given");
        assertThat(with)
                .content()
                .contains("lies 0.0 % from the design airflow")
                .contains("Grade I<");
    }

    @Test
    void a_design_airflow_that_is_none_or_for_nothing_is_refused() throws Exception {
        String session = Scripted.weighIn("weighed").in(tablet("blue")).toString();
        Path record = office.resolve("record.html");

        Ran negative = Ran.of("", "report", session, "--commissioning", record.toString(), "--design-airflow", "-5");
        Ran alone = Ran.of("", "report", session, "--sheet", record.toString(), "--design-airflow", "1200");

        assertThat(negative.code()).isEqualTo(1);
        assertThat(negative.err()).contains("-5 is no airflow").contains("--design-airflow 1200");
        assertThat(alone.code()).isEqualTo(1);
        assertThat(alone.err()).contains("add --commissioning");
        assertThat(record).doesNotExist();
    }
}
