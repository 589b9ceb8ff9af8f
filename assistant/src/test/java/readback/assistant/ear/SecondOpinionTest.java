package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
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
        return new Vocabulary("step", PHRASES, new TreeSet<>(), Completion.ofPhrases(PHRASES), doubt);
    }

    /** So many seconds of quiet, a second of speech, a second of quiet. */
    private static Samples speechAfter(double quiet) {
        short[] sound = new short[(int) ((quiet + 2) * Ear.RATE)];
        int from = (int) (quiet * Ear.RATE);
        for (int at = from; at < from + Ear.RATE; at++) {
            sound[at] = (short) (at % 2 == 0 ? 3000 : -3000);
        }
        return Samples.of(sound, Ear.RATE);
    }

    private Utterance heard(double quiet, Doubt doubt, Hypothesis... again) {
        second.says = List.of(again);
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
    void the_second_hears_the_whole_utterance_and_a_second_before_it_however_long_it_was_quiet() {
        for (double quiet : List.of(0.2, 1.0, 40.0)) {
            heard(quiet, hypotheses -> true, Hypothesis.typed("two eight"));
        }

        assertThat(second.sounds).hasSize(3).allSatisfy(sound -> {
            int loud = 0;
            for (short sample : sound) {
                loud += Math.abs(sample) > 1000 ? 1 : 0;
            }
            assertThat(loud).isEqualTo(Ear.RATE);
            assertThat(sound.length / (double) Ear.RATE).isBetween(1.4, 2.7);
        });
    }

    @Test
    void the_words_of_the_second_lie_where_they_were_said() {
        Hypothesis again = new Hypothesis("two", 1, List.of(new Hypothesis.Word("two", 1, 0.9, 1.4)));

        Utterance heard = heard(12, hypotheses -> true, again);

        assertThat(heard.alternatives().get(0).details().get(0).start()).isBetween(11.7, 12.3);
    }

    /** Hears what it was told to hear, and remembers in what. */
    private static final class Remembering implements Ear {
        private final List<short[]> sounds = new ArrayList<>();
        private List<Hypothesis> says = List.of();

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
                    return says.isEmpty() ? Optional.empty() : Optional.of(new Utterance(says, 0, seconds()));
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
