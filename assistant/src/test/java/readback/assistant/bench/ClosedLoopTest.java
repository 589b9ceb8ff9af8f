package readback.assistant.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.record.About;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.Verification;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Reader;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

/**
 * Calls by voice with a voice and an ear that agree about every word, and with an ear that mishears some: the loop
 * without the acoustic model, which {@code readback measure --calls} measures.
 */
class ClosedLoopTest {

    private static final int CALLS = 6;
    private static final List<String> CORRECTIONS =
            List.of("correction", "no", "make that", "i mean", "sorry", "scratch that", "make it", "wait no");
    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Dialogue DIALOGUE = new Dialogue(GRAMMAR, Checklists.standard());

    /** Voice and ear that share the words in place of sound; a correction is an utterance of its own. */
    private static final class Wire implements Voice, Ear {

        private final UnaryOperator<String> line;
        private final Deque<String> utterances = new ArrayDeque<>();
        /** The step that was listened for at each utterance. */
        private final List<String> heard = new ArrayList<>();

        Wire(UnaryOperator<String> line) {
            this.line = line;
        }

        @Override
        public String name() {
            return "wire";
        }

        @Override
        public String place() {
            return "memory";
        }

        @Override
        public Samples speak(String text) {
            boolean corrects = CORRECTIONS.stream().anyMatch(text::startsWith);
            String before = corrects || utterances.isEmpty() ? "" : utterances.removeLast() + " ";
            utterances.add(before + text);
            return Samples.silence(0.1, RATE);
        }

        @Override
        public SortedSet<String> missing(Collection<String> asked) {
            return new TreeSet<>();
        }

        @Override
        public Listening listen(Vocabulary vocabulary) {
            return new Listening() {
                @Override
                public Optional<Utterance> hear(short[] chunk, short[] recorded) {
                    return utterances.size() > 1 ? Optional.of(next()) : Optional.empty();
                }

                @Override
                public Optional<Utterance> finish() {
                    return Optional.of(next());
                }

                private Utterance next() {
                    String words = line.apply(utterances.remove());
                    heard.add(vocabulary.step() + ": " + words);
                    List<Hypothesis.Word> details = List.of(words.split(" ", -1)).stream()
                            .map(word -> new Hypothesis.Word(word, 0.99, 0, 0.1))
                            .toList();
                    return new Utterance(List.of(new Hypothesis(words, 0.99, details)), 0, 0.1);
                }

                @Override
                public String partial() {
                    return "";
                }

                @Override
                public double seconds() {
                    return 0;
                }

                @Override
                public void close() {}
            };
        }

        @Override
        public void close() {}
    }

    private static ClosedLoop loop(UnaryOperator<String> line, Reader.Acquaintance acquaintance) {
        return loop(line, acquaintance, 1);
    }

    private static ClosedLoop loop(UnaryOperator<String> line, Reader.Acquaintance acquaintance, int atOnce) {
        List<SpokenWords> speeches = new ArrayList<>();
        for (int i = 0; i < atOnce; i++) {
            Wire wire = new Wire(line);
            Caller caller = new Caller("wire", acquaintance, wire);
            speeches.add(new SpokenWords(GRAMMAR, List.of(caller), wire, OptionalDouble.empty()));
        }
        return new ClosedLoop(DIALOGUE, speeches, 7);
    }

    private static List<String> calls(UnaryOperator<String> line) throws RecordUnavailableException {
        return loop(line, Reader.Acquaintance.STRANGER).measure(1, CALLS, Optional.empty(), made -> {});
    }

    private static String line(List<String> lines, String what) {
        return lines.stream().filter(each -> each.startsWith(what)).findFirst().orElseThrow();
    }

    @Test
    void what_is_heard_as_it_was_said_comes_to_the_same_verdicts_as_what_is_typed() throws RecordUnavailableException {
        List<String> lines = calls(words -> words);

        assertThat(line(lines, "calls that came to their end")).containsPattern(CALLS + " of +" + CALLS);
        assertThat(line(lines, "first verdict as when typed")).containsPattern(CALLS + " of +" + CALLS);
        assertThat(line(lines, "readings taken wrong")).containsPattern(" 0 of ");
        assertThat(line(lines, "calls with a verdict from a reading that was misheard"))
                .containsPattern(" 0 of ");
    }

    @Test
    void a_reading_that_is_read_back_wrong_is_counted_and_corrected() throws RecordUnavailableException {
        RandomGenerator chance = new SplittableRandom(1);
        List<String> lines = calls(words ->
                chance.nextInt(6) == 0 && !words.contains("correction") ? words.replaceFirst("six", "seven") : words);

        assertThat(line(lines, "calls that came to their end")).containsPattern(CALLS + " of +" + CALLS);
        assertThat(line(lines, "readings taken wrong")).doesNotContainPattern(" 0 of ");
    }

    @Test
    void a_call_is_the_same_whichever_were_made_before_it() throws RecordUnavailableException {
        List<String> after = new ArrayList<>();
        List<String> alone = new ArrayList<>();

        loop(words -> words, Reader.Acquaintance.STRANGER).measure(1, 3, Optional.empty(), after::add);
        loop(words -> words, Reader.Acquaintance.STRANGER).measure(3, 3, Optional.empty(), alone::add);

        assertThat(alone).hasSize(1).first().isEqualTo(after.get(2));
    }

    @Test
    void calls_made_at_the_same_time_are_those_made_one_after_the_other() throws RecordUnavailableException {
        List<String> together = new ArrayList<>();
        List<String> alone = new ArrayList<>();

        List<String> table = loop(words -> words, Reader.Acquaintance.STRANGER, 3)
                .measure(1, CALLS, Optional.empty(), together::add);

        assertThat(loop(words -> words, Reader.Acquaintance.STRANGER).measure(1, CALLS, Optional.empty(), alone::add))
                .isEqualTo(table);
        assertThat(together).isEqualTo(alone);
    }

    /** Whoever is misheard again and again leaves it at last, and acts on what stands: counted apart. */
    @Test
    void acting_on_what_was_misheard_is_counted() throws RecordUnavailableException {
        List<String> lines = calls(words -> words.replace("five", "four"));

        assertThat(line(lines, "calls in which a misheard reading was acted on"))
                .doesNotContainPattern(" 0 of ");
        assertThat(line(calls(words -> words), "calls in which a misheard reading was acted on"))
                .containsPattern(" 0 of ");
    }

    @Test
    void a_voice_that_fails_ends_the_measurement_with_its_reason() {
        assertThatThrownBy(() -> loop(
                                words -> {
                                    throw new SpokenWords.VoiceSilentException(new VoiceFailedException("no breath"));
                                },
                                Reader.Acquaintance.STRANGER,
                                2)
                        .measure(1, CALLS, Optional.empty(), made -> {}))
                .isInstanceOf(SpokenWords.VoiceSilentException.class)
                .hasMessage("no breath");
    }

    /** As in a session, the phrases are those of the next step as soon as a value is taken. */
    @Test
    void a_correction_in_the_same_breath_is_listened_for_after_the_value_reached_the_dialogue()
            throws RecordUnavailableException {
        Wire wire = new Wire(words -> words);
        Caller caller = new Caller("wire", Reader.Acquaintance.STRANGER, wire);

        List<String> lines = new ClosedLoop(
                        DIALOGUE, List.of(new SpokenWords(GRAMMAR, List.of(caller), wire, OptionalDouble.empty())), 7)
                .measure(1, CALLS, Optional.empty(), made -> {});

        int corrections = 0;
        for (int i = 1; i < wire.heard.size(); i++) {
            String[] heard = wire.heard.get(i).split(": ", 2);
            String[] before = wire.heard.get(i - 1).split(": ", 2);
            if (CORRECTIONS.stream().anyMatch(heard[1]::startsWith)
                    && before[1].matches(".*(zero|one|two|three|four|five|six|seven|eight|nine|ty|teen)")) {
                corrections++;
                assertThat(heard[0]).as(wire.heard.get(i)).isNotEqualTo(before[0]);
            }
        }
        assertThat(corrections).isPositive();
        assertThat(line(lines, "readings corrected in the same breath")).doesNotContainPattern(" 0 of ");
    }

    @Test
    void a_caller_on_whom_the_model_was_trained_is_counted_apart() throws RecordUnavailableException {
        assertThat(loop(words -> words, Reader.Acquaintance.TRAINED_ON).measure(1, 1, Optional.empty(), made -> {}))
                .anyMatch(line -> line.contains("no measure of others"))
                .noneMatch(line -> line.contains("never met"));
    }

    /** Whoever is never heard comes to no end; that call's record is kept and is what the dialogue makes of it. */
    @Test
    void the_record_of_a_call_that_does_not_end_is_kept(@TempDir Path folder) throws Exception {
        KeptCalls kept = new KeptCalls(folder, DIALOGUE, Language.english().wording(), Map.of());

        loop(words -> "[unk]", Reader.Acquaintance.STRANGER).measure(1, 1, Optional.of(kept), made -> {});

        RecordedSession session = RecordedSession.read(folder.resolve("call-7-1"));
        assertThat(session.fault()).isEmpty();
        assertThat(session.entries()).hasSizeGreaterThan(100);
        assertThat(session.header().about()).containsKey(About.PRACTICE);
        assertThat(Verification.of(DIALOGUE, Language.english().wording(), Map.of(), session)
                        .difference())
                .isEmpty();
        assertThat(Files.readAllLines(folder.resolve("call-7-1.txt")))
                .first()
                .asString()
                .contains("endless");
    }

    @Test
    void a_call_that_went_as_when_typed_is_not_kept(@TempDir Path folder) throws Exception {
        KeptCalls kept = new KeptCalls(folder, DIALOGUE, Language.english().wording(), Map.of());

        loop(words -> words, Reader.Acquaintance.STRANGER).measure(1, 1, Optional.of(kept), made -> {});

        try (Stream<Path> inside = Files.list(folder)) {
            assertThat(inside).isEmpty();
        }
    }
}
