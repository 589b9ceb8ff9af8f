package readback.assistant.echo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.ScriptedEar;
import readback.grammar.Vocabulary;

class BargeInTest {

    private static final List<String> PHRASES = List.of("stop", "stop", "stop talking", "i smell gas", Ear.UNKNOWN);
    private static final int CHUNK = Ear.RATE / 50;

    /** Takes nothing out: nothing is played. */
    private static final class Untouched implements EchoCanceller {
        @Override
        public short[] cancel(short[] heard, short[] played) {
            return heard;
        }

        @Override
        public void close() {}
    }

    /** The order that silences the voice when this is what the recogniser sees in half a second of speech. */
    private static Optional<String> order(Ear ear, Predicate<String> ownWords) {
        try (BargeIn bargeIn = new BargeIn(ear, new Untouched(), PHRASES, ownWords, -55)) {
            for (int chunk = 0; chunk < 50; chunk++) {
                short[] sound = new short[CHUNK];
                for (int i = 0; i < CHUNK && chunk >= 25; i++) {
                    sound[i] = (short) (9000 * Math.sin(2 * Math.PI * 300 * i / Ear.RATE));
                }
                Optional<String> order = bargeIn.order(bargeIn.clean(sound, new short[CHUNK]));
                if (order.isPresent()) {
                    return order;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> seen(String words) {
        return order(new ScriptedEar(List.of(words), List.of()), said -> false);
    }

    @Test
    void an_order_silences_the_voice_and_so_does_the_beginning_of_one() {
        assertThat(seen("stop talking")).contains("stop talking");
        assertThat(seen("i smell")).contains("i smell gas");
    }

    @Test
    void an_order_counts_behind_what_the_echo_left() {
        assertThat(seen("gas [unk] stop")).contains("stop");
        assertThat(seen("non stop")).contains("stop");
    }

    @Test
    void what_is_no_order_does_not_silence_it() {
        assertThat(seen("gas")).isEmpty();
        assertThat(seen("stop it")).isEmpty();
        assertThat(seen("nonstop")).isEmpty();
        assertThat(seen("[unk]")).isEmpty();
    }

    @Test
    void what_it_says_itself_does_not_silence_it() {
        Ear ear = new ScriptedEar(List.of("i smell"), List.of());

        assertThat(order(ear, "i smell"::equals)).isEmpty();
    }

    @Test
    void it_listens_with_the_ear_that_is_believed_most() {
        assertThat(order(new WithKeener(new ScriptedEar(List.of("stop"), List.of())), said -> false))
                .contains("stop");
    }

    /** Hears nothing by itself. */
    private record WithKeener(Ear keenest) implements Ear {
        @Override
        public String name() {
            return "with keener";
        }

        @Override
        public String place() {
            return "memory";
        }

        @Override
        public Listening listen(Vocabulary vocabulary) {
            throw new IllegalStateException("the keener one is to listen");
        }

        @Override
        public SortedSet<String> missing(Collection<String> words) {
            return keenest.missing(words);
        }

        @Override
        public void close() {
            keenest.close();
        }
    }
}
