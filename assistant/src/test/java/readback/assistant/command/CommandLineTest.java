package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;

/** The program as its user meets it: words in, words and an exit code out. */
class CommandLineTest {

    @TempDir
    Path folder;

    private Ran check(String typed, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "check",
                "--typed",
                "--json",
                "--sessions",
                folder.resolve("sessions").toString()));
        arguments.addAll(List.of(more));
        if (!arguments.contains("--altitude-ft")) {
            arguments.addAll(List.of("--altitude-ft", "0"));
        }
        return Ran.of(typed, arguments.toArray(String[]::new));
    }

    /**
     * California Energy Commission Reference Appendices RA3.2.2.6.1 (rule read; table of target superheat recalled),
     * and the R-410A pressure-temperature table: 118 psig is 40 °F.
     */
    @ParameterizedTest
    @CsvSource({
        "52, 12, in-tolerance, ''",
        "62, 22, add, skip;ten pounds",
        "44, 4, recover, no;liquid pressure 440;liquid line 98;skip;skip;ten pounds"
    })
    void a_piston_is_judged_by_its_superheat(int line, double superheat, String verdict, String whatElseIsAsked) {
        JsonNode result = check(
                        "four ten a\npiston\nunderstood\nyes\nyes\noutdoor 95, wet bulb 67\nsuction 118, suction line "
                                + line + "\nunderstood\n" + whatElseIsAsked.replace(';', '\n') + "\n")
                .lastLine();

        assertThat(result.path("method").asText()).isEqualTo("total-superheat");
        assertThat(result.path("refrigerant").asText()).isEqualTo("R-410A");
        assertThat(result.path("evaporatingSaturation").asDouble()).isBetween(39.7, 40.2);
        assertThat(result.path("superheat").asDouble()).isBetween(superheat - 0.2, superheat + 0.3);
        assertThat(result.path("target").asDouble()).isEqualTo(12.0);
        assertThat(result.path("verdict").asText()).isEqualTo(verdict);
        assertThat(result.path("cautions").toString().contains("liquid-at-compressor"))
                .isEqualTo(line == 44);
    }

    /** RA3.2.2.6.2, and the R-410A pressure-temperature table: 365 psig is 110 °F. */
    @Test
    void an_expansion_valve_is_judged_by_its_subcooling() {
        JsonNode result = check("""
                four ten a
                txv
                understood
                yes
                yes
                outdoor 95
                plate subcooling ten
                liquid pressure 365, liquid line 100
                suction 118
                suction line 52
                """).lastLine();

        assertThat(result.path("method").asText()).isEqualTo("subcooling");
        assertThat(result.path("condensingSaturation").asDouble()).isBetween(109.6, 110.2);
        assertThat(result.path("subcooling").asDouble()).isBetween(9.6, 10.2);
        assertThat(result.path("verdict").asText()).isEqualTo("in-tolerance");
        assertThat(result.path("valve").asText()).isEqualTo("inside");
    }

    /** What was worked out while a condition was not confirmed was never said, and so it is no result. */
    @Test
    void a_verdict_that_was_not_announced_is_not_in_the_result() {
        Ran ran = check("""
                four ten a
                piston
                understood
                yes
                outdoor 95, wet bulb 67
                suction 118, suction line 52
                finish
                yes
                """);

        assertThat(ran.out()).contains("Closed without a verdict");
        assertThat(ran.lastLine().path("verdict").isNull()).isTrue();
        assertThat(ran.lastLine().path("superheat").asDouble()).isBetween(11.8, 12.4);
    }

    @Test
    void altitude_counts() {
        // 118 psig at 5,000 ft is 38.9 °F, not 40.0: computed from the standard atmosphere
        JsonNode result = check("four ten a\npiston\nsuction 118\n", "--altitude-ft", "5000")
                .lastLine();

        assertThat(result.path("evaporatingSaturation").asDouble()).isBetween(38.6, 39.1);
    }

    /** JCGM 100:2008, 4.3.7: with the gauges at 20 % of 118 psi, 23.6 psi and about 10 °F over √3, twice. */
    @Test
    void instruments_count_as_the_settings_state_them() {
        Ran coarse = check("four ten a\npiston\nsuction 118\nsuction line 52\n", "--gauges", "20%");

        assertThat(coarse.out()).contains("Sea level and gauges, of the reading, good to 20 %, from the settings.");
        assertThat(coarse.lastLine().path("superheatUncertainty").asDouble()).isBetween(11.5, 12.5);
        assertThat(check("four ten a\npiston\nsuction 118\nsuction line 52\n")
                        .lastLine()
                        .path("superheatUncertainty")
                        .asDouble())
                .isBetween(2.9, 3.1);
    }

    @ParameterizedTest
    @CsvSource({"--clamps, 200", "--gauges, -1", "--gauges, much", "--wet-bulb, 90", "--air-probes, 1%"})
    void an_accuracy_that_cannot_be_is_refused(String option, String value) {
        Ran ran = check("four ten a\n", option, value);

        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains(option);
    }

    /** A live session without a microphone, by keys, in plain lines. */
    private Ran live(String typed, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "check",
                "--plain",
                "--voice",
                "none",
                "--microphone",
                "no microphone is called like this",
                "--sessions",
                folder.resolve("live").toString()));
        arguments.addAll(List.of(more));
        return Ran.of(typed, arguments.toArray(String[]::new));
    }

    @Test
    @Tag("slow")
    void a_live_session_that_was_left_goes_on_at_the_same_step() throws IOException, RecordUnavailableException {
        Ran left = live("four ten a\n");
        Path session;
        try (var all = Files.list(folder.resolve("live"))) {
            session = all.filter(Files::isDirectory).findFirst().orElseThrow();
        }
        assertThat(left.out()).contains("It was left open. To go on: readback check --resume " + session);

        Ran again = live("piston\n", "--resume", session.toString());

        assertThat(again.code()).isZero();
        assertThat(again.out().lines().toList())
                .containsSubsequence(
                        "readback    We are at set-up; readings taken: 0.",
                        "readback    Piston, capillary tube, thermostatic valve, or electronic valve?",
                        "technician  piston",
                        "readback    Piston.");
        RecordedSession recorded = RecordedSession.read(session);
        assertThat(recorded.fault()).isEmpty();
        assertThat(recorded.closed()).isFalse();
    }

    @Test
    void a_live_session_that_cannot_be_resumed_says_so_before_anything_is_loaded() {
        Ran ran = live("", "--resume", folder.resolve("nowhere").toString());

        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains("There is no session record at");
    }

    @Test
    void the_record_holds_every_utterance_in_order() throws IOException, RecordUnavailableException {
        check("four ten a\nhumpty dumpty\npiston\n");

        Path session;
        try (var all = Files.list(folder.resolve("sessions"))) {
            session = all.filter(Files::isDirectory).findFirst().orElseThrow();
        }
        RecordedSession read = RecordedSession.read(session);

        assertThat(read.fault()).isEmpty();
        assertThat(read.entries()).hasSize(4);
        assertThat(read.closed()).as("the end of the input leaves it open").isFalse();
        assertThat(read.entries().get(2).outcome().understood().line()).startsWith("not understood");
        assertThat(read.header().parts()).containsKeys("grammar", "checklists", "texts");
    }

    @Test
    void words_that_mean_nothing_are_answered_and_lose_nothing() {
        Ran ran =
                check("four ten a\npiston\nsuction 118\n\u0000\u0007 ¿qué?\nsuction sixty fifteen\nsuction line 52\n");

        assertThat(ran.code()).isZero();
        assertThat(ran.lastLine().path("readings").path("suctionPressure").asInt())
                .isEqualTo(118);
        assertThat(ran.lastLine()
                        .path("readings")
                        .path("suctionLineTemperature")
                        .asInt())
                .isEqualTo(52);
        assertThat(ran.err()).doesNotContain("Exception");
    }

    @Test
    void an_unknown_refrigerant_is_answered_with_the_nearest_names() {
        Ran ran = check("", "--refrigerant", "R-411Q");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("There is no refrigerant 'R-411Q'").contains("Did you mean");
    }

    @Test
    void a_sessions_folder_that_cannot_be_written_stops_before_the_first_question() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("file"), "");

        Ran ran = Ran.of("four ten a\n", "check", "--typed", "--sessions", inTheWay.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("cannot be kept").contains("--sessions");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void a_mapping_of_probes_that_is_wrong_says_where() throws IOException {
        Path mapping = Files.writeString(folder.resolve("probes.txt"), "[clamp]\nfrom = senml stdin\n");
        Ran wrong = Ran.of("", "check", "--typed", "--probes", mapping.toString());
        assertThat(wrong.code()).isNotZero();
        assertThat(wrong.err()).contains("probes.txt, line 1: [clamp] has no 'gives'");

        Files.writeString(mapping, "[clamp]\nfrom = senml stdin\ngives = temperature\n");
        Ran both = Ran.of("", "check", "--typed", "--probes", mapping.toString());
        assertThat(both.err()).contains("Probes on the standard input leave no room for typed lines");
    }

    @Test
    void typed_lines_see_what_a_probe_shows() throws Exception {
        try (ServerSocket nobody = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int port = nobody.getLocalPort();
            Path mapping = Files.writeString(
                    folder.resolve("probes.txt"),
                    "[clamp]\nfrom = senml tcp 127.0.0.1:" + port
                            + "\ngives = temperature\nmeasures = suction-line-temperature\n");

            Ran ran = check("four ten a\npiston\ntake the suction line\n", "--probes", mapping.toString());

            assertThat(ran.out()).contains("No probe offers a steady suction line");
        }
    }

    @Test
    void typed_and_audio_at_once_is_a_question_back() {
        Ran ran = Ran.of("", "check", "--typed", "--audio", "call.wav");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("--typed or --audio, not both");
    }

    @Test
    void a_mistyped_option_is_answered_with_help() {
        Ran ran = Ran.of("", "check", "--typd");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--typed").contains("readback help check");
    }

    @Test
    void alone_it_teaches() {
        Ran ran = Ran.of("");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("readback demo").contains("check").contains("saturation");
    }

    /** R-410A: equipment chart, 118 psig at 40 °F and 365 psig at 110 °F. */
    @ParameterizedTest
    @CsvSource({"118, psig, 40", "365, psig, 110", "8.136, bar, 40", "813.6, kpa, 40"})
    void saturation_follows_from_gauge_pressure(String gauge, String unit, double fahrenheit) {
        JsonNode line = Ran.of("", "saturation", "--refrigerant", "R-410A", "--gauge", gauge, "--unit", unit)
                .lastLine();

        assertThat(line.path("dewF").asDouble()).isBetween(fahrenheit - 0.3, fahrenheit + 0.3);
        assertThat(line.path("bubbleF").asDouble()).isLessThan(line.path("dewF").asDouble());
    }

    @Test
    void a_batch_answers_every_line_and_stumbles_over_none() {
        Ran ran = Ran.of(
                "R-410A,118,0\nR-22,68.5,0\nR-999,1,0\nR-410A,lots,0\nR-410A,5000,0\nnonsense\n",
                "saturation",
                "--batch");

        assertThat(ran.code()).isZero();
        List<String> lines = ran.out().strip().lines().toList();
        assertThat(lines).hasSize(6);
        assertThat(lines.subList(2, 6)).allMatch(line -> line.contains("\"error\""));
        assertThat(ran.err()).isEmpty();
    }

    /** ASHRAE Handbook of Fundamentals, chapter 1, computed: 80 °F dry, 67 °F wet, sea level (from memory). */
    @Test
    void the_state_of_air_follows_from_two_temperatures() {
        JsonNode line = Ran.of("", "air", "--dry", "80", "--wet", "67").lastLine();

        assertThat(line.path("relativeHumidityPercent").asDouble()).isBetween(50.9, 51.4);
        assertThat(line.path("dewPointF").asDouble()).isBetween(60.2, 60.4);
        assertThat(line.path("humidityRatio").asDouble()).isBetween(0.01111, 0.01123);
        assertThat(line.path("enthalpyBtuPerPound").asDouble()).isBetween(31.40, 31.50);
        assertThat(line.path("specificVolumeCubicFeetPerPound").asDouble()).isBetween(13.83, 13.87);
    }

    @Test
    void air_that_cannot_be_is_refused_with_what_can() {
        Ran ran = Ran.of("", "air", "--dry", "60", "--wet", "67");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("wet bulb").contains("at or below the dry bulb");
    }

    /** R-410A pressure-temperature table of equipment makers: 40 °F is 118.0 psig, 110 °F is 365.0 psig. */
    @Test
    void a_table_shows_gauge_pressures_by_temperature() {
        Ran ran = Ran.of("", "table", "--refrigerant", "410a", "--from", "40", "--to", "110", "--step", "70");

        List<String> lines = ran.out().strip().lines().toList();
        assertThat(lines).hasSize(5);
        assertThat(Double.parseDouble(lines.get(3).strip().split(" +", -1)[2])).isBetween(117.5, 119.0);
        assertThat(Double.parseDouble(lines.get(4).strip().split(" +", -1)[2])).isBetween(364.0, 368.0);
    }

    @Test
    void the_vocabulary_of_a_step_can_be_read() {
        Ran ran = Ran.of("", "vocabulary", "--step", "suction-pressure", "--words");

        assertThat(ran.out().lines()).contains("suction", "hundred", "psi", "[unk]");
        assertThat(Ran.of("", "vocabulary", "--step", "suktion").err()).contains("There is no step 'suktion'");
    }

    @Test
    @Tag("slow")
    void measure_counts_what_was_heard_against_the_list() throws IOException {
        Files.write(folder.resolve("quiet.wav"), silence());
        Files.writeString(
                folder.resolve("expected.tsv"), "file\tkind\twords\nquiet.wav\tunrelated\t\nquiet.wav\tnumber\tone\n");

        Ran ran = Ran.of("", "measure", folder.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("0 words accepted")
                .contains("number, step, clean")
                .contains("number, numbers, clean")
                .contains("trade-off")
                .contains("latency")
                .contains("real-time factor");
        assertThat(Ran.of("", "measure", folder.resolve("nowhere").toString()).err())
                .contains("There is no readable list");
    }

    @Test
    void measure_can_be_told_to_hear_with_one_list_only() throws IOException {
        Files.write(folder.resolve("quiet.wav"), silence());
        Files.writeString(folder.resolve("expected.tsv"), "file\tkind\twords\nquiet.wav\tnumber\tone\n");

        Ran ran = Ran.of("", "measure", folder.toString(), "--lists", "NUMBERS");

        assertThat(ran.out()).contains("number, numbers, clean").doesNotContain("number, step");
    }

    /** "Yes" is listened for where a pressure is asked for, "cancel left" is not. */
    @Test
    void measure_hears_a_command_at_a_step_where_it_can_be_said() throws IOException {
        Files.write(folder.resolve("quiet.wav"), silence());
        Path list = folder.resolve("expected.tsv");
        Files.writeString(list, "file\tkind\twords\nquiet.wav\tcommand\tyes\n");

        assertThat(Ran.of("", "measure", folder.toString(), "--lists", "STEP").out())
                .contains("command, step, clean");

        Files.writeString(list, "file\tkind\twords\nquiet.wav\tcommand\tcancel left\n");

        assertThat(Ran.of("", "measure", folder.toString(), "--lists", "STEP").out())
                .doesNotContain("command, step");
    }

    @Test
    @Tag("slow")
    void measure_joins_readings_from_single_digits() throws IOException {
        Files.write(folder.resolve("quiet.wav"), silence());
        Path list = folder.resolve("expected.tsv");
        Files.writeString(list, "file\tkind\twords\nquiet.wav\tdigit\tone\n");

        assertThat(Ran.of("", "measure", folder.toString(), "--joined", "1").err())
                .contains("lacks a recording of some digit");

        Files.writeString(
                list,
                "file\tkind\twords\n"
                        + Stream.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
                                .map(digit -> "quiet.wav\tdigit\t" + digit + "\n")
                                .collect(Collectors.joining()));

        Ran ran = Ran.of("", "measure", folder.toString(), "--joined", "1");

        assertThat(ran.out().lines()).hasSize(14);
        assertThat(ran.out())
                .contains("10 dB, pauses of 0.5 s,    1 readings")
                .containsPattern("clean, all pauses, +6 readings: cut +0.0 %, at once +0.0 %.*nothing 100.0 %")
                .doesNotContain("NaN");

        Ran suppressed =
                Ran.of("", "measure", folder.toString(), "--joined", "1", "--suppress", "LOW,HIGH", "--noise", "10,5");

        assertThat(suppressed.out().lines())
                .anyMatch(line -> line.startsWith("noise    none "))
                .anyMatch(line -> line.startsWith("fan      high "))
                .anyMatch(line -> line.startsWith("clean    low "))
                .noneMatch(line -> line.contains("NaN"));
        assertThat(Ran.of("", "measure", folder.toString(), "--joined", "1", "--suppress", "HIGH")
                        .out()
                        .lines())
                .hasSize(2)
                .allMatch(line -> line.startsWith("clean "));
    }

    @Test
    @Tag("slow")
    void nothing_is_taken_from_silence_and_a_fan_and_missing_talk_is_told() throws IOException {
        Files.write(folder.resolve("quiet.wav"), silence());
        Files.writeString(folder.resolve("expected.tsv"), "file\tkind\twords\nquiet.wav\tnumber\tone\n");

        Ran ran = Ran.of("", "measure", folder.toString(), "--idle", "0.1");

        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines().filter(line -> line.contains("taken: 0 commands") && line.contains("0 values")))
                .hasSize(2);
        assertThat(ran.err()).contains("no unrelated speech");
    }

    @Test
    void understand_says_what_words_mean() {
        JsonNode line = Ran.of("", "understand", "low side's one twenty, vapor line fifty two")
                .lastLine();

        assertThat(line.path("understood").asBoolean()).isTrue();
        assertThat(line.path("interpretations").path(0).path("meaning").asText())
                .isEqualTo("suction-pressure 120 psig, suction-line-temperature 52 °F");
    }

    @ParameterizedTest
    @CsvSource({"missing.wav", "empty.wav", "text.wav"})
    void a_file_that_is_no_recording_is_one_sentence_and_a_failure(String name) throws IOException {
        if (!name.equals("missing.wav")) {
            Files.writeString(folder.resolve(name), name.equals("empty.wav") ? "" : "this is not sound at all, really");
        }

        Ran ran = Ran.of("", "hear", folder.resolve(name).toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains(name).doesNotContain("Exception");
    }

    @Test
    void a_model_folder_that_is_none_is_said_to_be_none() throws IOException {
        Path wave = Files.write(folder.resolve("silence.wav"), silence());

        Ran ran = Ran.of("", "hear", wave.toString(), "--model", folder.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("is not a whole speech model").contains("--model");
    }

    private static byte[] silence() {
        byte[] header = {
            'R',
            'I',
            'F',
            'F',
            0x24,
            0x7d,
            0,
            0,
            'W',
            'A',
            'V',
            'E',
            'f',
            'm',
            't',
            ' ',
            16,
            0,
            0,
            0,
            1,
            0,
            1,
            0,
            (byte) 0x80,
            0x3e,
            0,
            0,
            0,
            0x7d,
            0,
            0,
            2,
            0,
            16,
            0,
            'd',
            'a',
            't',
            'a',
            0,
            0x7d,
            0,
            0
        };
        return java.util.Arrays.copyOf(header, header.length + 32_000);
    }

    @Test
    void on_a_terminal_typed_lines_fit_its_width_and_show_that_one_can_type_also_where_a_session_goes_on() {
        Ran begun = Ran.onTerminal(60, "four ten a\n", "check", "--typed", "--sessions", folder.toString());
        Ran resumed =
                Ran.onTerminal(60, "piston\n", "check", "--typed", "--sessions", folder.toString(), "--resume", "last");

        for (Ran ran : List.of(begun, resumed)) {
            assertThat(ran.out()).contains("\ntype here > ");
            assertThat(ran.out().lines().filter(line -> line.startsWith("readback ") || line.startsWith("    ")))
                    .isNotEmpty()
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(60));
        }
    }
}
