package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import readback.assistant.sound.Samples;
import readback.grammar.Completion;
import readback.grammar.Doubt;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

class SecondOpinionTest extends EarContract {

    private static final List<String> PHRASES = List.of("two eight", "two eight nine");

    private final Remembering second = new Remembering();

    /** Where nothing is in doubt, two ears keep what one ear promises. */
    @Override
    Ear open() {
        List<String> lines = SpokenLines.of("piston");
        List<String> words =
                lines.stream().flatMap(line -> Arrays.stream(line.split(" "))).toList();
        return new SecondOpinion(new ScriptedEar(lines, words), second);
    }

    private static Vocabulary vocabulary(Doubt doubt) {
        return vocabulary(PHRASES, doubt);
    }

    private static Vocabulary vocabulary(List<String> phrases, Doubt doubt) {
        return new Vocabulary("step", phrases, new TreeSet<>(), Completion.ofPhrases(phrases), doubt);
    }

    /** "Two eight" is only the beginning of something. */
    private static Vocabulary ofThreeDigits() {
        return vocabulary(List.of("two eight nine"), hypotheses -> true);
    }

    /** So many seconds of quiet, a second of speech, a second of quiet. */
    private static Samples speechAfter(double quiet) {
        return Samples.joined(
                List.of(Samples.silence(quiet, Ear.RATE), speech(1), Samples.silence(1, Ear.RATE)), Ear.RATE);
    }

    private static Samples speech(double seconds) {
        short[] sound = new short[(int) (seconds * Ear.RATE)];
        for (int at = 0; at < sound.length; at++) {
            sound[at] = (short) (at % 2 == 0 ? 3000 : -3000);
        }
        return Samples.of(sound, Ear.RATE);
    }

    private Utterance heard(double quiet, Doubt doubt, Hypothesis... again) {
        second.says = sound -> List.of(again);
        Ear ear = new SecondOpinion(new ScriptedEar(List.of("two eight"), List.of()), second);
        return new AudioFileFeed(ear, speechAfter(quiet))
                .next(vocabulary(doubt))
                .orElseThrow();
    }

    @Test
    void the_one_that_counts_for_more_is_the_keener() {
        assertThat(new SecondOpinion(new ScriptedEar(List.of(), List.of()), second).keenest())
                .isSameAs(second);
    }

    @Test
    void what_the_first_is_sure_of_is_not_heard_again() {
        Utterance heard = heard(1, hypotheses -> false, Hypothesis.typed("two eight nine"));

        assertThat(heard.alternatives()).containsExactly(Hypothesis.typed("two eight"));
        assertThat(second.sounds).isEmpty();
    }

    @Test
    void in_doubt_the_second_counts_for_more() {
        Utterance heard = heard(1, hypotheses -> true, Hypothesis.typed("two eight nine"));

        assertThat(heard.words()).isEqualTo("two eight nine");
        assertThat(heard.alternatives()).extracting(Hypothesis::words).containsExactly("two eight nine", "two eight");
        assertThat(heard.alternatives().stream()
                        .mapToDouble(Hypothesis::confidence)
                        .sum())
                .isBetween(0.999, 1.001);
    }

    @Test
    void what_both_heard_keeps_all_of_its_confidence() {
        Utterance heard = heard(1, hypotheses -> true, Hypothesis.typed("two eight"));

        assertThat(heard.alternatives()).hasSize(1);
        assertThat(heard.confidence()).isBetween(0.999, 1.001);
    }

    @Test
    void what_hardly_either_heard_is_no_longer_offered() {
        Utterance heard = heard(
                1,
                hypotheses -> true,
                new Hypothesis("two eight", 0.98, List.of()),
                new Hypothesis("two eight nine", 0.02, List.of()));

        assertThat(heard.alternatives()).extracting(Hypothesis::words).containsExactly("two eight");
    }

    @Test
    void how_sure_each_word_is_the_second_tells() {
        Hypothesis.Word unsure = new Hypothesis.Word("eight", 0.6, 0.5, 0.9);
        Hypothesis again = new Hypothesis("two eight", 1, List.of(new Hypothesis.Word("two", 1, 0.1, 0.4), unsure));

        Utterance heard = heard(1, hypotheses -> true, again);

        assertThat(heard.alternatives().get(0).details())
                .extracting(Hypothesis.Word::confidence)
                .containsExactly(1.0, 0.6);
    }

    @Test
    void where_the_second_hears_nothing_the_first_is_believed_less() {
        Utterance heard = heard(1, hypotheses -> true);

        assertThat(heard.words()).isEqualTo("two eight");
        assertThat(heard.confidence()).isLessThan(0.5);
    }

    @Test
    void the_second_hears_the_whole_utterance_and_two_seconds_before_it_however_long_it_was_quiet() {
        for (double quiet : List.of(0.2, 1.0, 40.0)) {
            heard(quiet, hypotheses -> true, Hypothesis.typed("two eight"));
        }

        assertThat(second.sounds).hasSize(3).allSatisfy(sound -> {
            assertThat(loud(sound)).isEqualTo(Ear.RATE);
            assertThat(sound.length / (double) Ear.RATE).isBetween(1.4, 3.7);
        });
    }

    /** The second hears "two eight", and "two eight nine" once there is speech for more than a second. */
    private AudioFileFeed pieces(Samples sound, String... first) {
        second.says = all -> List.of(Hypothesis.typed(loud(all) > Ear.RATE ? "two eight nine" : "two eight"));
        return new AudioFileFeed(new SecondOpinion(new ScriptedEar(List.of(first), List.of()), second), sound);
    }

    private static int loud(short[] sound) {
        int loud = 0;
        for (short sample : sound) {
            loud += Math.abs(sample) > 1000 ? 1 : 0;
        }
        return loud;
    }

    @Test
    void what_follows_a_beginning_is_heard_in_one_with_it() {
        Samples quiet = Samples.silence(0.7, Ear.RATE);
        Samples said = Samples.joined(List.of(quiet, speech(1), quiet, speech(0.5), quiet, quiet, quiet), Ear.RATE);

        AudioFileFeed feed = pieces(said, "two [unk]", "nine");
        Utterance heard = feed.next(ofThreeDigits()).orElseThrow();

        assertThat(heard.words()).isEqualTo("two eight nine");
        assertThat(heard.startSeconds()).isBetween(0.6, 0.8);
        assertThat(heard.endSeconds()).isBetween(2.8, 3.0);
        assertThat(feed.seconds()).as("nothing is expected after it").isLessThan(3.1);
        assertThat(feed.next(ofThreeDigits())).isEmpty();
    }

    @Test
    void a_beginning_that_nothing_follows_is_told_after_the_pause_for_more() {
        Samples said = Samples.joined(
                List.of(Samples.silence(1, Ear.RATE), speech(1), Samples.silence(5, Ear.RATE)), Ear.RATE);

        AudioFileFeed feed = pieces(said, "two [unk]");

        assertThat(feed.next(ofThreeDigits()).orElseThrow().words()).isEqualTo("two eight");
        assertThat(feed.seconds()).as("less the run-up").isBetween(3.1, 3.3);
    }

    @Test
    void a_beginning_is_seen_while_more_is_waited_for() {
        second.says = all -> List.of(Hypothesis.typed("two eight"));
        Ear ear = new SecondOpinion(new ScriptedEar(List.of("two [unk]"), List.of()), second);

        try (Listening listening = ear.listen(ofThreeDigits())) {
            assertThat(listening.hear(speechAfter(0.5).pcm())).isEmpty();
            assertThat(listening.partial()).isEqualTo("two eight");
            assertThat(listening.finish()).get().extracting(Utterance::words).isEqualTo("two eight");
        }
    }

    @Test
    void the_words_of_the_second_lie_where_they_were_said() {
        Hypothesis again = new Hypothesis("two", 1, List.of(new Hypothesis.Word("two", 1, 1.9, 2.4)));

        Utterance heard = heard(12, hypotheses -> true, again);

        assertThat(heard.alternatives().get(0).details().get(0).start()).isBetween(11.7, 12.3);
    }

    /** Hears what it was told to hear, and remembers in what. */
    private static final class Remembering implements Ear {
        private final List<short[]> sounds = new ArrayList<>();
        private Function<short[], List<Hypothesis>> says = sound -> List.of();

        @Override
        public String name() {
            return "remembering";
        }

        @Override
        public String place() {
            return "memory";
        }

        @Override
        public Listening listen(Vocabulary vocabulary) {
            return new Listening() {
                private long samples;

                @Override
                public Optional<Utterance> hear(short[] chunk, short[] recorded) {
                    sounds.add(chunk);
                    samples += chunk.length;
                    return Optional.empty();
                }

                @Override
                public Optional<Utterance> finish() {
                    List<Hypothesis> said = says.apply(sounds.get(sounds.size() - 1));
                    return said.isEmpty() ? Optional.empty() : Optional.of(new Utterance(said, 0, seconds()));
                }

                @Override
                public String partial() {
                    return "";
                }

                @Override
                public double seconds() {
                    return (double) samples / RATE;
                }

                @Override
                public void close() {}
            };
        }

        @Override
        public SortedSet<String> missing(Collection<String> words) {
            return new TreeSet<>();
        }

        @Override
        public void close() {}
    }
}
