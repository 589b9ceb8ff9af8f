package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.assistant.record.Header;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Verification;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Session;
import readback.calc.caution.CautionRule;
import readback.calc.measurement.Limits;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.JobId;
import readback.prompts.text.Message;

/**
 * Whole conversations as reviewed text. A line that starts with {@code >} is an event, everything under it is what the
 * dialogue made of it; a changed file is a changed behaviour. Run with {@code -Dgolden.write=true} to write them anew,
 * then read the difference.
 *
 * <pre>
 * > words                       typed
 * > 0.6 words | 0.4 words       heard, with confidences
 * > after PT15M                 time passes
 * > timer NAME                  a timer runs out
 * > lost NAME / found NAME      a device
 * > clock PT-2H                 the device's clock is set
 * > probe 1 xa steady 118.2 PSIG suction-pressure | 2 xb lost    what probes show
 * > resumed / ended
 * </pre>
 */
class GoldenConversationTest {

    private static final Path FOLDER = Path.of("src/test/resources/readback/assistant/golden");
    /** What is understood where hoses went on a system that does not burn. */
    private static final Set<CautionRule> ORDINARY = Set.of(
            CautionRule.HIGH_PRESSURE,
            CautionRule.FROSTBITE,
            CautionRule.VENTING_PROHIBITED,
            CautionRule.CERTIFIED_WORK);

    private static final boolean WRITE = Boolean.getBoolean("golden.write");

    static Stream<Path> conversations() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".txt")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("conversations")
    void the_conversation_goes_as_reviewed(Path file) throws IOException {
        String expected = Files.readString(file, StandardCharsets.UTF_8);
        String actual = play(expected.lines().toList());
        if (WRITE) {
            Files.writeString(file, actual, StandardCharsets.UTF_8);
        }
        assertThat(actual).as(file.toString()).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("conversations")
    void the_conversation_goes_the_same_way_again_from_its_events(Path file) throws IOException {
        Rehearsal rehearsal =
                rehearse(Files.readString(file, StandardCharsets.UTF_8).lines().toList());

        State state = null;
        for (Event event : rehearsal.events()) {
            state = event instanceof Event.Started started
                    ? Rehearsal.DIALOGUE.begin(started).state()
                    : Rehearsal.DIALOGUE
                            .on(java.util.Objects.requireNonNull(state), event)
                            .state();
        }

        assertThat(state).isEqualTo(rehearsal.state());
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("conversations")
    void the_record_of_the_conversation_verifies_as_identical(Path file, @TempDir Path sessions) throws Exception {
        List<Event> events = rehearse(
                        Files.readString(file, StandardCharsets.UTF_8).lines().toList())
                .events();
        Event.Started started = (Event.Started) events.get(0);
        Map<String, String> parts = Fingerprints.of(Checklists.standard());
        Path folder;
        try (SessionRecord record =
                SessionRecord.create(sessions, new Header("golden", started.at(), "test", parts, Map.of()))) {
            Session session = Session.open(
                    Rehearsal.DIALOGUE, Rehearsal.WORDING, record, List.of(), started.settings(), started.at());
            events.subList(1, events.size()).forEach(session::on);
            folder = record.folder();
        }

        RecordedSession recorded = RecordedSession.read(folder);
        Verification verification = Verification.of(Rehearsal.DIALOGUE, Rehearsal.WORDING, parts, recorded);

        // What comes after the end is not recorded; everything before it is.
        assertThat(recorded.entries())
                .extracting(Entry::event)
                .isEqualTo(events.subList(0, recorded.entries().size()));
        assertThat(recorded.closed() || recorded.entries().size() == events.size())
                .isTrue();

        assertThat(verification)
                .returns(Optional.empty(), Verification::fault)
                .returns(Optional.empty(), Verification::difference)
                .returns(recorded.entries().size(), Verification::events);
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("conversations")
    void a_process_killed_at_any_event_comes_to_the_same_end(Path file) throws IOException {
        Rehearsal rehearsal =
                rehearse(Files.readString(file, StandardCharsets.UTF_8).lines().toList());
        List<Event> events = rehearsal.events();
        for (int killed = 1; killed < events.size(); killed++) {
            State state =
                    Rehearsal.DIALOGUE.begin((Event.Started) events.get(0)).state();
            for (int i = 1; i < events.size(); i++) {
                if (i == killed) {
                    state = restarted(state);
                }
                state = Rehearsal.DIALOGUE.on(state, events.get(i)).state();
            }
            assertThat(state.sheet())
                    .as("killed before event " + killed)
                    .isEqualTo(rehearsal.state().sheet());
            assertThat(state.standing()).isEqualTo(rehearsal.state().standing());
            assertThat(state.closed()).isEqualTo(rehearsal.state().closed());
        }
    }

    /** After a restart the probes are heard of anew. */
    private static State restarted(State before) {
        State resumed =
                Rehearsal.DIALOGUE.on(before, new Event.Resumed(before.at())).state();
        Event shown = new Event.Measured(
                before.at(), List.copyOf(before.probes().reports().values()));
        return before.probes().reports().isEmpty()
                ? resumed
                : Rehearsal.DIALOGUE.on(resumed, shown).state();
    }

    static Rehearsal rehearse(List<String> lines) {
        Rehearsal rehearsal = new Rehearsal(settings(lines));
        lines.stream().filter(line -> line.startsWith("> ")).forEach(line -> perform(rehearsal, line.substring(2)));
        return rehearsal;
    }

    private static String play(List<String> lines) {
        List<String> out = new ArrayList<>();
        lines.stream().filter(line -> line.startsWith("#")).forEach(out::add);
        Rehearsal rehearsal = new Rehearsal(settings(lines));
        out.add("");
        answer(rehearsal, out);
        for (String line : lines) {
            if (line.startsWith("> ")) {
                out.add(line);
                if (perform(rehearsal, line.substring(2))) {
                    answer(rehearsal, out);
                }
            }
        }
        List<JobOutcome> standing = rehearsal.state().standing();
        out.add("= " + (standing.isEmpty() ? "no verdict" : JobOutcome.line(standing)));
        return String.join("\n", out) + "\n";
    }

    private static SessionSettings settings(List<String> lines) {
        SessionSettings settings = SessionSettings.STANDARD;
        for (String line : lines) {
            if (line.startsWith("# with ")) {
                for (String word : line.substring("# with ".length()).split(" ", -1)) {
                    settings = with(settings, word);
                }
            }
        }
        return settings;
    }

    private static SessionSettings with(SessionSettings before, String word) {
        String[] parts = word.split("=", 2);
        boolean brief = before.brief() || word.equals("brief");
        UnitSetting units = word.equals("metric") ? UnitSetting.METRIC : before.units();
        Limits limits = word.equals("verifier") ? Limits.INDEPENDENT_VERIFIER : before.limits();
        JobId job = parts[0].equals("job") ? new JobId(parts[1]) : before.job();
        List<Reading> known = parts[0].equals("feet")
                ? List.of(new Reading(Quantity.ALTITUDE, new BigDecimal(parts[1]), Unit.FOOT))
                : word.equals("altitude-asked") ? List.of() : before.known();
        Set<CautionRule> understood = word.equals("again-today") ? ORDINARY : before.understood();
        return new SessionSettings(
                        job, units, brief, known, limits, before.refrigerant(), before.technician(), before.site())
                .having(understood)
                .taughtBy(word.equals("exam") ? Tutor.EXAMINER : before.tutor());
    }

    /** Number, channel, quality, value and unit, quantity; a probe without a value is a clamp. */
    private static ProbeReport report(String line, Instant now) {
        List<String> words = List.of(line.split(" ", -1));
        ProbeReport.Quality quality =
                ConstantName.find(ProbeReport.Quality.class, words.get(2)).orElseThrow();
        Optional<ProbeValue> value = words.size() < 5
                ? Optional.empty()
                : Optional.of(new ProbeValue(
                        new BigDecimal(words.get(3)),
                        Unit.valueOf(words.get(4)),
                        words.get(3) + " " + Unit.valueOf(words.get(4)).symbol(),
                        now));
        Optional<Quantity> measures =
                words.size() < 6 ? Optional.empty() : ConstantName.find(Quantity.class, words.get(5));
        Dimension dimension = value.map(each -> each.unit().dimension()).orElse(Dimension.TEMPERATURE);
        return new ProbeReport(
                new Probe(Integer.parseInt(words.get(0)), words.get(1), dimension, measures), quality, value);
    }

    /** Whether the line was an event, not only time. */
    private static boolean perform(Rehearsal rehearsal, String line) {
        if (line.startsWith("after ")) {
            rehearsal.passes(Duration.parse(line.substring("after ".length())));
            return false;
        }
        if (line.startsWith("timer ")) {
            rehearsal.happens(new Event.TimerElapsed(rehearsal.now(), line.substring("timer ".length())));
        } else if (line.startsWith("lost ")) {
            rehearsal.happens(new Event.DeviceLost(rehearsal.now(), line.substring("lost ".length())));
        } else if (line.startsWith("found ")) {
            rehearsal.happens(new Event.DeviceFound(rehearsal.now(), line.substring("found ".length())));
        } else if (line.startsWith("clock ")) {
            rehearsal.happens(
                    new Event.ClockChanged(rehearsal.now(), Duration.parse(line.substring("clock ".length()))));
        } else if (line.startsWith("probe ")
                && line.matches("probe \\d+ [a-z-]+ (steady|changing|stale|lost|not-a-number).*")) {
            rehearsal.happens(new Event.Measured(
                    rehearsal.now(),
                    Arrays.stream(line.substring("probe ".length()).split(" \\| ", -1))
                            .map(each -> report(each, rehearsal.now()))
                            .toList()));
        } else if (line.equals("resumed")) {
            rehearsal.happens(new Event.Resumed(rehearsal.now()));
        } else if (line.equals("ended")) {
            rehearsal.happens(new Event.Ended(rehearsal.now()));
        } else if (line.matches("0\\.\\d+ .*")) {
            rehearsal.hears(Arrays.stream(line.split(" \\| ", -1))
                    .map(each -> each.split(" ", 2))
                    .map(each -> new Hypothesis(each[1], Double.parseDouble(each[0]), List.of()))
                    .toArray(Hypothesis[]::new));
        } else {
            rehearsal.says(line);
        }
        return true;
    }

    private static void answer(Rehearsal rehearsal, List<String> out) {
        out.add("    [" + rehearsal.turn().outcome().understood().line() + "]");
        for (Message message : rehearsal.messages()) {
            String shown = Rehearsal.WORDING.shown(
                    message, rehearsal.state().settings().units());
            boolean brief = rehearsal.state().brief();
            String spoken = Rehearsal.WORDING.silent(message, brief)
                    ? "(not spoken)"
                    : Rehearsal.WORDING.spoken(
                            message, brief, rehearsal.state().settings().units());
            out.add("    " + shown);
            if (!spoken.equalsIgnoreCase(shown)) {
                out.add("      ~ " + spoken);
            }
        }
        for (Effect effect : rehearsal.turn().effects()) {
            if (effect instanceof Effect.StartTimer timer) {
                out.add("    (timer " + timer.timer() + " in " + timer.duration() + ")");
            } else if (effect instanceof Effect.StopTimer timer) {
                out.add("    (timer " + timer.timer() + " stopped)");
            } else if (effect instanceof Effect.Hush) {
                out.add("    (silence)");
            } else if (effect instanceof Effect.Close) {
                out.add("    (closed)");
            }
        }
    }
}
