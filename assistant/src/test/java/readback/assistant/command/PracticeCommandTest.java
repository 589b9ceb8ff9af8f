package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import readback.assistant.practice.PracticeTime;

/**
 * Practice calls as an apprentice has them in lines. The goldens were read by a person; {@code -Dgolden.write=true}
 * writes them anew. A line that begins with {@code >} is typed; {@code > @} reads out what the unit showed last.
 */
class PracticeCommandTest {

    private static final Path GOLDENS = Path.of("src/test/resources/readback/assistant/practice");
    private static final Pattern NUMBER = Pattern.compile("(\\d+\\.?\\d*)( oz| \\S+)?$");
    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");

    @TempDir
    private Path sessions;

    /** What was typed and what came, in one text. */
    private String transcript(List<String> typed, String... arguments) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        Deque<String> left = new ArrayDeque<>(typed);
        BufferedReader in = new BufferedReader(new StringReader("")) {
            @Override
            public @Nullable String readLine() {
                String next = left.poll();
                if (next == null) {
                    return null;
                }
                out.println("> " + next);
                return next.equals("@") ? lastNumber(bytes.toString(StandardCharsets.UTF_8)) : next;
            }
        };
        // half a second for each look at the clock: the same in every run
        long[] nanos = {0};
        Clock morning = Clock.fixed(MORNING, ZoneOffset.UTC);
        PracticeCommand command = new PracticeCommand(
                new Console(in, out, out, OptionalInt::empty),
                () -> new PracticeTime(morning, () -> nanos[0] += 500_000_000));
        List<String> all = new ArrayList<>(List.of("--typed", "--voice", "none", "--sessions", sessions.toString()));
        all.addAll(List.of(arguments));
        new CommandLine(command)
                .setExecutionExceptionHandler((failure, line, parsed) -> {
                    assertThat(failure).isInstanceOf(CommandFailure.class);
                    out.println(failure.getMessage());
                    return 1;
                })
                .execute(all.toArray(String[]::new));
        return bytes.toString(StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("Record: "))
                .reduce("", (text, line) -> text + line + "\n");
    }

    private static String lastNumber(String shown) {
        List<String> lines =
                shown.lines().filter(line -> line.startsWith("unit ")).toList();
        Matcher number = NUMBER.matcher(lines.get(lines.size() - 1));
        assertThat(number.find()).as(lines.get(lines.size() - 1)).isTrue();
        return number.group(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"short-of-charge", "grey-filter", "kinked-line"})
    void a_practice_call_goes_as_reviewed(String scenario) throws IOException {
        Path golden = GOLDENS.resolve(scenario + ".txt");
        String expected = Files.readString(golden);

        String actual = transcript(typedIn(scenario), "--scenario", scenario);

        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(golden, actual);
        }
        assertThat(actual).isEqualTo(expected);
    }

    @Test
    void a_practice_record_replays_alike_and_its_page_tells_how_it_went() throws IOException {
        String told = transcript(typedIn("grey-filter"), "--scenario", "grey-filter");
        Path record = only(sessions);
        Path page = sessions.resolve("page.html");

        assertThat(Ran.of("", "replay", record.toString(), "--verify").out()).contains("is identical");
        assertThat(Ran.of("", "report", record.toString(), "-o", page.toString())
                        .code())
                .isZero();
        String html = Files.readString(page);
        assertThat(told).contains("Put right: too little indoor air.");
        assertThat(html)
                .contains("Practice, nothing real")
                .contains("Put right: too little indoor air.")
                .contains("Liquid reached the compressor for 3 min.");
    }

    @Test
    void practice_is_never_counted_among_real_work() throws IOException {
        transcript(typedIn("short-of-charge"), "--scenario", "short-of-charge");
        Path table = sessions.resolve("table.csv");

        Ran list = Ran.of("", "sessions", sessions.toString(), "--csv", table.toString());
        assertThat(list.out()).contains("0 of 1 sessions").contains("Left out: 1 of practice");
        assertThat(Files.readAllLines(table)).hasSize(1);
        assertThat(Ran.of("", "sessions", sessions.toString(), "--sums").out()).doesNotContain("kg");
        assertThat(Ran.of("", "history", sessions.toString()).out()).doesNotContain("R-410A");
        assertThat(Ran.of("", "sessions", sessions.toString(), "--practice").out())
                .contains("1 of 1 sessions")
                .doesNotContain("Left out");
    }

    @Test
    void practice_is_neither_gone_on_with_as_a_real_call_nor_given_to_a_customer() throws IOException {
        transcript(List.of("410a"), "--scenario", "short-of-charge");

        Ran resumed = Ran.of(
                "", "check", "--typed", "--voice", "none", "--sessions", sessions.toString(), "--resume", "last");
        assertThat(resumed.code()).isEqualTo(1);
        assertThat(resumed.err()).contains("was practice").contains("--scenario short-of-charge");
        Ran sheet = Ran.of(
                "",
                "report",
                only(sessions).toString(),
                "--sheet",
                sessions.resolve("s.html").toString());
        assertThat(sheet.code()).isEqualTo(1);
        assertThat(sheet.err()).contains("was practice");

        Ran commissioning = Ran.of(
                "",
                "report",
                only(sessions).toString(),
                "--commissioning",
                sessions.resolve("c.html").toString());
        assertThat(commissioning.code()).isEqualTo(1);
        assertThat(commissioning.err()).contains("was practice").contains("no installation");
    }

    @Test
    void an_exam_marks_no_instrument_and_shows_them_all() {
        List<String> typed = List.of("410a", "txv", "understood", "yes", "yes");

        assertThat(transcript(typed, "--scenario", "short-of-charge"))
                .contains("unit        outdoor air 91.9 °F\n")
                .doesNotContain("low side");
        assertThat(transcript(typed, "--scenario", "short-of-charge", "--exam"))
                .contains("No hints until you have said what is wrong")
                .containsPattern("low side .* high side .* outdoor air 91.9 °F");
    }

    private String examined(String... ownVerdict) {
        List<String> typed = new ArrayList<>(List.of(
                "410a",
                "txv",
                "understood",
                "yes",
                "yes",
                "why",
                "outdoor 92",
                "plate subcooling 10.5",
                "liquid 330.2",
                "liquid line 102.5",
                "what's my subcooling",
                "suction 122.5",
                "suction line 59.4"));
        typed.addAll(List.of(ownVerdict));
        typed.addAll(List.of("finish", "yes"));
        return transcript(typed, "--scenario", "short-of-charge", "--exam");
    }

    @Test
    void an_exam_tells_nothing_before_the_own_verdict_and_everything_after_it() throws IOException {
        String told = examined("it's undercharged", "what's my subcooling");
        int own = told.indexOf("> it's undercharged");

        assertThat(told.substring(0, own))
                .contains("No help before your verdict.")
                .contains("The system is under high pressure.")
                .doesNotContain("Subcooling 0");
        assertThat(told.substring(own))
                .contains("readback    Subcooling 0")
                .contains("Your verdict: low charge. That was it.")
                .contains("Found. What mends it is another job.");
        assertThat(Ran.of("", "replay", only(sessions).toString(), "--verify").out())
                .contains("is identical");
    }

    @Test
    void a_wrong_verdict_is_told_beside_what_the_readings_pointed_to() {
        assertThat(examined("restriction"))
                .contains("Your verdict: restriction. Your readings pointed to the truth: too little charge.")
                .contains("Left open: what is wrong was not found.");
    }

    @Test
    void an_exam_without_an_own_verdict_found_nothing() {
        assertThat(examined("skip"))
                .contains("You said no verdict of your own.")
                .contains("Left open: what is wrong was not found.");
    }

    @Test
    void the_same_start_number_draws_the_same_call_and_its_name_draws_it_again() {
        String drawn = transcript(List.of(), "--level", "middle", "--start", "12");
        String again = transcript(List.of(), "--scenario", "drawn-middle-12");

        assertThat(drawn)
                .contains("readback practice --scenario drawn-middle-12")
                .isEqualTo(again);
        assertThat(transcript(List.of(), "--level", "middle", "--start", "13")).isNotEqualTo(drawn);
    }

    @ParameterizedTest
    @ValueSource(strings = {"drawn-", "drawn-easy", "drawn-easy-x", "drawn-later-3", "no-such"})
    void a_scenario_that_there_is_not_is_refused_with_the_way_to_the_names(String name) {
        assertThat(transcript(List.of(), "--scenario", name)).contains("practice --list");
    }

    @Tag("slow")
    @Test
    void nothing_that_is_typed_stops_it() {
        List<String> words = List.of(
                "yes",
                "no",
                "understood",
                "skip",
                "410a",
                "piston",
                "txv",
                "95",
                "67",
                "118",
                "5 ounces",
                "",
                "clean the filter",
                "clean the condenser",
                "fixed the bulb",
                "start weigh in",
                "add",
                "scratch that",
                "hold on",
                "carry on",
                "recovered 4 ounces",
                "go to airflow",
                "finish",
                "two pounds",
                "frozen coil");
        SplittableRandom chance = new SplittableRandom(20261129);
        for (int run = 0; run < 8; run++) {
            List<String> typed = new ArrayList<>();
            for (int line = 0; line < 60; line++) {
                typed.add(words.get(chance.nextInt(words.size())));
            }
            String start = String.valueOf(run);

            assertThatCode(() -> assertThat(transcript(typed, "--level", "hard", "--start", start))
                            .contains("Practice again: "))
                    .as(typed.toString())
                    .doesNotThrowAnyException();
        }
    }

    private static List<String> typedIn(String scenario) throws IOException {
        return Files.readAllLines(GOLDENS.resolve(scenario + ".txt")).stream()
                .filter(line -> line.startsWith(">"))
                .map(line -> line.substring(1).strip())
                .toList();
    }

    private static Path only(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(Files::isDirectory).findFirst().orElseThrow();
        }
    }
}
