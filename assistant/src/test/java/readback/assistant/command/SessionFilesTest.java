package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.record.About;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;

/** The commands for finished sessions as a supervisor meets them. */
class SessionFilesTest {

    @TempDir
    Path folder;

    private Path charged() throws Exception {
        return Scripted.charging("charged")
                .about(About.TECHNICIAN, "Ines Ardent")
                .about(About.CYLINDER, "C-17")
                .in(folder);
    }

    private static void flipByte(Path session, String within) throws Exception {
        Path file = session.resolve(SessionRecord.FILE);
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(within);
        bytes[at] ^= 1;
        Files.write(file, bytes);
    }

    @Test
    void replay_shows_what_was_said_doubted_warned_of_and_decided() throws Exception {
        Ran ran = Ran.of("", "replay", charged().toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .containsSubsequence(
                        "technician  four ten a",
                        "readback    R-410A.",
                        "* doubt: not understood",
                        "technician  suction pressure one one eight",
                        "* verdict: charge low",
                        "technician  refrigerant added nine ounces",
                        "technician  correction eight ounces",
                        "* verdict: ");
    }

    /** Kathmandu is 5 h 45 min ahead all year (IANA time zones). */
    @Test
    void local_time_stands_beside_universal_time_wherever_people_read() throws Exception {
        Path session = Scripted.charging("far")
                .in(java.time.ZoneId.of("Asia/Kathmandu"))
                .in(folder);
        Ran.of("", "remark", session.toString(), "Seen.", "--by", "Vera Lund");
        Path page = folder.resolve("page.html");
        Path index = folder.resolve("index.html");
        Ran.of("", "report", session.toString(), "-o", page.toString());
        Ran.of("", "sessions", folder.toString(), "--html", index.toString());

        String both = "2026-07-14 18:50:00 +05:45 (13:05:00 UTC)";
        assertThat(Ran.of("", "replay", session.toString()).out()).startsWith("far, " + both);
        assertThat(page).content().contains("<dd>" + both + "</dd>");
        assertThat(index).content().contains("2026-07-14 18:50 +05:45 (13:05 UTC)");
        for (int i = 0; i < 2; i++) {
            assertThat(Ran.of("", "sessions", folder.toString()).out())
                    .as("read, then taken from the index")
                    .contains("2026-07-14 18:50 +05:45 (13:05 UTC)");
        }
    }

    /** ESC ] 0 sets the title of a terminal, ESC [ 2 J wipes it (ECMA-48); U+202E turns the direction of writing. */
    @Test
    void what_a_record_holds_never_acts_on_the_terminal() throws Exception {
        String wicked = "Ines\u001b]0;owned\u0007\u001b[2J\r\u009b31m\u202e";
        Path session = Scripted.charging("wicked")
                .say(2720, "note " + wicked)
                .about(About.TECHNICIAN, wicked)
                .about(About.CYLINDER, wicked)
                .about(About.APPLIANCE, wicked)
                .in(folder);
        Ran.of("", "remark", session.toString(), wicked, "--by", wicked);
        flipByte(Scripted.session("bad" + "x").say(1, wicked).in(folder), "HEARD".toLowerCase(java.util.Locale.ROOT));

        for (String[] command : new String[][] {
            {"sessions", folder.toString()},
            {"sessions", folder.toString(), "--check", "--sums"},
            {"replay", session.toString()},
            {"replay", session.toString(), "--verify"},
            {"check", "--typed", "--resume", wicked.substring(0, 9)},
            {
                "report",
                session.toString(),
                "-o",
                folder.resolve(wicked.substring(0, 6) + ".html").toString()
            }
        }) {
            Ran ran = Ran.of("", command);

            assertThat(ran.out() + ran.err())
                    .as(String.join(" ", command))
                    .doesNotContain("\u001b", "\u0007", "\u009b", "\u202e", "\r");
        }
    }

    /** The file needs no loudspeaker, and has the technician's words where only they were kept. */
    @Test
    void replay_aloud_into_a_file_holds_both_sides() throws Exception {
        Path session = Scripted.session("short")
                .say(5, "suction pressure one one eight")
                .say(9, "suction line seventy")
                .in(folder);
        Path answers = folder.resolve("answers.wav");
        Path both = folder.resolve("both.wav");

        Ran one = Ran.of("", "replay", session.toString(), "--voice", "flite", "--speak-to", answers.toString());
        Ran two =
                Ran.of("", "replay", session.toString(), "--voice", "flite", "--aloud", "--speak-to", both.toString());

        assertThat(one.code()).as(one.err()).isZero();
        assertThat(two.code()).as(two.err()).isZero();
        assertThat(two.out()).contains("Spoken side: " + both).doesNotContain("Spoken on");
        // 16-bit sound of 16 kHz: two utterances of words take a second each at least
        assertThat(Files.size(both) - Files.size(answers)).isGreaterThan(2 * 2 * 16000);
    }

    @Test
    void replay_shows_only_the_moments_asked_for() throws Exception {
        Ran ran = Ran.of("", "replay", charged().toString(), "--only", "verdict");

        assertThat(ran.out()).contains("* verdict: charge low").doesNotContain("technician  four ten a");
        assertThat(ran.out().lines().filter(line -> line.contains("events passed over")))
                .isNotEmpty();
    }

    @Test
    void replay_step_by_step_jumps_to_the_next_doubt_and_ends_on_request() throws Exception {
        Ran ran = Ran.of("\nx\nd\nq\n", "replay", charged().toString(), "--step");

        assertThat(ran.out())
                .containsSubsequence("technician  four ten a", "technician  piston", "* doubt:")
                .doesNotContain("technician  suction pressure one one eight");
        assertThat(ran.err()).contains("Enter, d, c, v or q, not 'x'");
    }

    @ParameterizedTest
    @CsvSource({"--speed, 0, above 0", "--speed, fast, --speed", "--only, jokes, 'doubt, caution or verdict'"})
    void replay_says_which_option_it_does_not_take(String option, String value, String expected) throws Exception {
        Ran ran = Ran.of("", "replay", charged().toString(), option, value);

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains(expected).doesNotContain("Exception");
    }

    @Test
    void replay_writes_both_sides_as_sound() throws Exception {
        Path sound = folder.resolve("replay.wav");

        Ran ran = Ran.of(
                "",
                "replay",
                charged().toString(),
                "--only",
                "verdict",
                "--voice",
                "none",
                "--speak-to",
                sound.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Spoken side: " + sound);
        assertThat(Files.size(sound)).isGreaterThan(44);
    }

    @Test
    void verification_passes_an_honest_record_and_names_its_hash() throws Exception {
        Path session = charged();

        Ran ran = Ran.of("", "replay", session.toString(), "--verify");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("every line fits its hash")
                .contains("is identical")
                .contains("Hash of the record: " + RecordedSession.read(session).hash());
    }

    @Test
    void verification_fails_a_changed_record_and_names_the_line() throws Exception {
        Path session = charged();
        flipByte(session, "suction pressure one one eight");

        Ran ran = Ran.of("", "replay", session.toString(), "--verify");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("The record does not hold: line 11");
        assertThat(Ran.of("", "replay", session.toString()).err()).contains("cannot be trusted: line 11");
    }

    @Test
    void report_writes_page_table_and_object() throws Exception {
        Path page = folder.resolve("report.html");
        Path csv = folder.resolve("report.csv");
        Path json = folder.resolve("report.json");

        Ran ran = Ran.of(
                "",
                "report",
                charged().toString(),
                "-o",
                page.toString(),
                "--csv",
                csv.toString(),
                "--json",
                json.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Written: " + page)
                .contains("Written: " + csv)
                .contains("Written: " + json);
        assertThat(page)
                .content()
                .contains("<!DOCTYPE html>")
                .contains("R-410A")
                .contains("Ines Ardent");
        assertThat(csv)
                .content()
                .startsWith("session,event,at,kind,name,content,value,unit,si_value,si_unit,superseded");
        assertThat(json).content().startsWith("{").contains("R-410A");
    }

    @Test
    void report_asks_what_to_write_and_says_where_it_cannot() throws Exception {
        String session = charged().toString();

        assertThat(Ran.of("", "report", session))
                .returns(1, Ran::code)
                .extracting(Ran::err)
                .asString()
                .contains("-o FILE");
        assertThat(Ran.of(
                        "",
                        "report",
                        session,
                        "-o",
                        folder.resolve("nowhere/page.html").toString()))
                .returns(1, Ran::code)
                .extracting(Ran::err)
                .asString()
                .contains("cannot be written");
        assertThat(Ran.of("", "report", folder.resolve("missing").toString(), "-o", "page.html"))
                .returns(1, Ran::code)
                .extracting(Ran::err)
                .asString()
                .contains("There is no session record");
    }

    @Test
    void report_of_a_changed_record_warns() throws Exception {
        Path session = charged();
        flipByte(session, "suction pressure one one eight");

        Ran ran = Ran.of(
                "",
                "report",
                session.toString(),
                "-o",
                folder.resolve("page.html").toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("the record does not hold: line 11");
    }

    @Test
    void sessions_are_listed_chosen_and_summed() throws Exception {
        charged();
        Scripted.valve("valve").about(About.TECHNICIAN, "Odo Ferrant").in(folder);
        String all = folder.toString();

        assertThat(Ran.of("", "sessions", all).out()).contains("charged", "valve", "2 of 2 sessions, 1 with doubts.");
        for (List<String> choice : List.of(
                List.of("--technician", "ferr"),
                List.of("--verdict", "add"),
                List.of("--to", "2026-07-14", "--doubt"))) {
            List<String> words = new java.util.ArrayList<>(List.of("sessions", all));
            words.addAll(choice);
            assertThat(Ran.of("", words.toArray(String[]::new)).out())
                    .as(choice.toString())
                    .contains("1 of 2 sessions");
        }
        assertThat(Ran.of("", "sessions", all, "--from", "2026-07-15").out()).contains("0 of 2 sessions");
        // 8 oz and 4 oz of 28.349523 g
        assertThat(Ran.of("", "sessions", all, "--sums").out())
                .contains("cylinder C-17: added 0.340 kg, recovered 0.000 kg")
                .contains("refrigerant R-410A: added 0.340 kg");
    }

    @Test
    void sessions_are_exported_as_lines_and_as_a_page() throws Exception {
        charged();
        Path lines = folder.resolve("fleet.jsonl");
        Path page = folder.resolve("fleet.html");

        Ran ran = Ran.of("", "sessions", folder.toString(), "--export", lines.toString(), "--html", page.toString());

        assertThat(ran.code()).isZero();
        assertThat(Files.readAllLines(lines)).singleElement().asString().contains("\"added_kg\":0.34");
        assertThat(page).content().contains("charged").contains("C-17");
    }

    /** 118 psig = 118 × 6894.757293168 Pa, an ounce = 28.349523125 g: NIST SP 811 (2008), appendix B. */
    @Test
    void the_export_has_readings_verdicts_moves_and_the_customer() throws Exception {
        Scripted.charging("charged")
                .about(About.CUSTOMER, "The \"owner\", and heirs")
                .about(About.CYLINDER, "C-17")
                .in(folder);
        Scripted.pressureTest("tested").in(folder);
        Path lines = folder.resolve("fleet.jsonl");
        Path table = folder.resolve("fleet.csv");

        Ran ran = Ran.of("", "sessions", folder.toString(), "--export", lines.toString(), "--csv", table.toString());

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("Written: " + lines, "Written: " + table);
        List<String> written = Files.readAllLines(lines);
        assertThat(written).hasSize(2);
        com.fasterxml.jackson.databind.JsonNode charged =
                new com.fasterxml.jackson.databind.ObjectMapper().readTree(written.get(0));
        assertThat(charged.path("customer").asText()).isEqualTo("The \"owner\", and heirs");
        assertThat(charged.path("readings").findValuesAsText("name")).contains("SUCTION_PRESSURE", "NAMEPLATE_CHARGE");
        assertThat(charged.path("verdicts").findValuesAsText("verdict"))
                .startsWith("add")
                .endsWith("in-tolerance");
        assertThat(charged.path("moves").get(0).path("kg").asDouble())
                .isCloseTo(8 * 0.028349523125, org.assertj.core.api.Assertions.within(1e-8));
        assertThat(charged.path("moves").get(0).path("cylinder").asText()).isEqualTo("C-17");
        assertThat(table)
                .content()
                .startsWith("session,started,customer,")
                .contains("charged,2026-07-14T13:05:00Z,\"The \"\"owner\"\", and heirs\",")
                .contains(",reading,SUCTION_PRESSURE,130 psig,130,psig,896318.448,Pa,")
                .contains(",move,in,8 oz,8,oz,0.226796185,kg,C-17")
                .contains(",verdict,pressure-test,pressure-test ")
                .contains(",reading,pressure-start,300 psig,300,psig,2068427.19,Pa,");
        assertThat(Files.readAllLines(table))
                .filteredOn(line -> line.startsWith("session,"))
                .hasSize(1);
    }

    /** 8 oz and 4 oz of 28.349523 g: NIST SP 811 (2008), appendix B. */
    @Test
    void cylinders_are_told_by_voice_and_several_in_one_session() throws Exception {
        Scripted.pistonReadings("two-cylinders")
                .say(260, "liquid pressure three three zero")
                .say(280, "liquid line one hundred")
                .say(300, "discharge line one eighty five")
                .say(360, "understood")
                .say(380, "understood")
                .say(700, "refrigerant added eight ounces")
                .say(705, "cylinder number seven")
                .timer(1610, "settle")
                .say(1640, "return wet bulb sixty seven")
                .say(1660, "suction pressure one two six")
                .say(1680, "suction line sixty four")
                .say(1685, "cylinder number eight")
                .say(1690, "understood")
                .say(1700, "refrigerant added four ounces")
                .in(folder);

        assertThat(Ran.of("", "sessions", folder.toString(), "--sums").out())
                .contains("cylinder 7: added 0.227 kg")
                .contains("cylinder 8: added 0.113 kg");
    }

    @Test
    void parts_and_the_leak_test_are_kept_and_exported() throws Exception {
        Path session = Scripted.pistonReadings("parts")
                .say(255, "new capacitor")
                .say(260, "liquid pressure three three zero")
                .say(270, "new relay")
                .say(275, "scratch that")
                .say(280, "liquid line one hundred")
                .say(300, "discharge line one eighty five")
                .say(360, "understood")
                .say(380, "understood")
                .say(700, "refrigerant added eight ounces")
                .say(705, "new capacitor")
                .timer(1610, "settle")
                .say(1615, "leak tested with soap bubbles")
                .in(folder);
        Path lines = folder.resolveSibling("parts.jsonl");
        Path table = folder.resolveSibling("parts.csv");
        Path sheet = folder.resolveSibling("parts-sheet.html");
        Path json = folder.resolveSibling("parts.json");

        Ran.of("", "sessions", folder.toString(), "--export", lines.toString(), "--csv", table.toString());
        Ran.of("", "report", session.toString(), "--json", json.toString(), "--sheet", sheet.toString());

        assertThat(Files.readString(lines))
                .contains("\"leak_test\":\"bubbles\"")
                .contains("\"work\":[\"capacitor\",\"capacitor\"]");
        assertThat(Files.readAllLines(table))
                .filteredOn(line -> line.contains(",work,"))
                .hasSize(2)
                .allMatch(line -> line.contains("capacitor"));
        assertThat(Files.readString(json))
                .contains("\"leakTest\" : \"bubbles\"")
                .doesNotContain("\"what\" : \"relay\"");
        assertThat(Files.readString(sheet))
                .contains("New capacitor, New capacitor")
                .contains("Bubbles");
    }

    @Test
    void who_where_and_which_unit_are_told_by_number() throws Exception {
        Path session = Scripted.pistonReadings("numbers")
                .about(About.TECHNICIAN, "A. Tester; B. Tester")
                .about(About.APPLIANCE, "SN 4471; SN 4472 ;SN 4473")
                .say(255, "technician number two")
                .say(256, "unit number two")
                .say(257, "unit number three")
                .say(258, "site number seven")
                .in(folder);
        Path lines = folder.resolveSibling("numbers.jsonl");
        Path json = folder.resolveSibling("numbers.json");

        Ran.of("", "sessions", folder.toString(), "--export", lines.toString());
        Ran.of("", "report", session.toString(), "--json", json.toString());

        assertThat(Files.readString(lines))
                .contains("\"technician\":\"B. Tester\"")
                .contains("\"appliance\":\"SN 4473\"")
                .contains("\"place\":\"7\"");
        assertThat(Files.readString(json)).contains("\"technician\" : \"B. Tester\"");
    }

    @Test
    void no_output_takes_the_place_of_a_record() throws Exception {
        Path session = charged();
        Path record = session.resolve("session.jsonl");
        byte[] before = Files.readAllBytes(record);
        String file = record.toString();

        for (String[] attempt : new String[][] {
            {"report", session.toString(), "-o", file, "--force"},
            {"report", session.toString(), "--csv", file, "--force"},
            {"report", session.toString(), "--json", file, "--force"},
            {"sessions", folder.toString(), "--html", file, "--force"},
            {"sessions", folder.toString(), "--export", file, "--force"},
            {"replay", session.toString(), "--voice", "flite", "--speak-to", file, "--force"}
        }) {
            Ran ran = Ran.of("", attempt);

            assertThat(ran.code()).as(String.join(" ", attempt)).isNotZero();
            assertThat(ran.err()).contains("belongs to a recorded session");
        }
        assertThat(Files.readAllBytes(record)).isEqualTo(before);
    }

    @Test
    void sessions_refuse_a_date_that_is_none_and_a_folder_that_is_not_there() {
        assertThat(Ran.of("", "sessions", folder.toString(), "--from", "yesterday")
                        .err())
                .contains("--from is a day as in 2026-07-01, not 'yesterday'");
        assertThat(Ran.of("", "sessions", folder.resolve("missing").toString()).err())
                .contains("There is no folder");
    }

    @Test
    void sessions_name_a_damaged_record() throws Exception {
        flipByte(charged(), "suction pressure one one eight");

        assertThat(Ran.of("", "sessions", folder.toString(), "--check", "--damaged")
                        .out())
                .contains("DAMAGED: line 11")
                .contains("1 of 1 sessions");
    }

    @Test
    void a_remark_lies_beside_the_record_and_appears_in_the_report() throws Exception {
        Path session = charged();
        byte[] before = Files.readAllBytes(session.resolve(SessionRecord.FILE));

        Ran ran = Ran.of("", "remark", session.toString(), "Good work, note the sight glass too.", "--by", "Vera Lund");
        Path page = folder.resolve("page.html");
        Ran.of("", "report", session.toString(), "-o", page.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(RecordedSession.read(session).hash());
        assertThat(session.resolve(SessionRecord.FILE)).hasBinaryContent(before);
        assertThat(page)
                .content()
                .contains("Good work, note the sight glass too.")
                .contains("Vera Lund");
    }

    @Test
    void a_remark_without_text_or_too_long_is_refused() throws Exception {
        String session = charged().toString();

        assertThat(Ran.of("", "remark", session, " ", "--by", "Vera Lund").err())
                .contains("has a text and a name");
        assertThat(Ran.of("", "remark", session, "x".repeat(10_001), "--by", "Vera Lund")
                        .err())
                .contains("10000 characters at most, this one has 10001");
        assertThat(Ran.of("", "remark", session, "nameless").code()).isEqualTo(2);
    }

    @Test
    void a_session_is_resumed_by_its_name_the_beginning_of_it_or_as_the_last_one_left_open() throws Exception {
        charged();
        Path session =
                Scripted.session("cut").say(5, "four ten a").say(12, "piston").cutShortIn(folder);
        String name = session.getFileName().toString();

        for (String named : List.of("last", name, name.substring(0, name.length() - 1))) {
            Ran ran = Ran.of("", "check", "--typed", "--sessions", folder.toString(), "--resume", named);

            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).contains("It was left open. To go on: readback check --resume " + session);
        }
    }

    @Test
    void what_could_be_more_than_one_session_or_is_none_is_not_resumed() throws Exception {
        Scripted.session("cut-one").say(5, "four ten a").cutShortIn(folder);
        Scripted.session("cut-two").say(5, "four ten a").cutShortIn(folder);

        assertThat(Ran.of("", "check", "--typed", "--sessions", folder.toString(), "--resume", "cut")
                        .err())
                .contains("More than one session begins with 'cut': cut-two, cut-one");
        assertThat(Ran.of("", "check", "--typed", "--sessions", folder.toString(), "--resume", "none")
                        .err())
                .contains("none");
        assertThat(Ran.of(
                                "",
                                "check",
                                "--typed",
                                "--sessions",
                                folder.resolve("no").toString(),
                                "--resume",
                                "last")
                        .err())
                .contains("was left open");
    }

    @Test
    void a_session_that_was_cut_short_goes_on_at_its_step_and_ends_as_one_record() throws Exception {
        Path session = Scripted.session("cut")
                .say(5, "four ten a")
                .say(12, "piston")
                .say(30, "understood")
                .say(60, "yes")
                .say(75, "yes")
                .say(90, "outdoor ninety five, wet bulb sixty seven")
                .cutShortIn(folder);

        Ran first = Ran.of("suction 118\n", "check", "--typed", "--json", "--resume", session.toString());
        assertThat(first.code()).isZero();
        assertThat(first.out()).contains("We are at", "It was left open. To go on: readback check --resume " + session);

        Ran ran = Ran.of("suction line 52\nfinish\n", "check", "--typed", "--json", "--resume", session.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.lastLine().path("verdict").asText()).isEqualTo("in-tolerance");
        assertThat(Ran.of("", "replay", session.toString(), "--verify").code()).isZero();
        assertThat(Ran.of("", "check", "--typed", "--resume", session.toString())
                        .err())
                .contains("was brought to its end");
    }
}
