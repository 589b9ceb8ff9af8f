package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;

/** A replayed conversation on the loudspeaker. */
class LoudTellerTest {

    private static final int RATE = 16000;

    private final List<Double> seconds = new ArrayList<>();
    private final List<String> closed = new ArrayList<>();
    private boolean lost;

    private final Voice voice = new Voice() {
        @Override
        public String name() {
            return "test voice";
        }

        @Override
        public Samples speak(String text) {
            return Samples.silence(text.length(), RATE);
        }

        @Override
        public void close() {
            closed.add(name());
        }
    };

    private final Loudspeaker loudspeaker = new Loudspeaker() {
        @Override
        public String name() {
            return "test loudspeaker";
        }

        @Override
        public void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException {
            if (lost) {
                throw new LoudspeakerLostException("It is gone.");
            }
            seconds.add(sound.seconds());
        }

        @Override
        public void close() {
            closed.add(name());
        }
    };

    @Test
    void plays_the_pause_the_technician_and_the_answer_in_turn() {
        LoudTeller teller = new LoudTeller(voice, loudspeaker, true);
        teller.play(Samples.silence(2, RATE), 3);
        teller.speak("four");
        teller.close();

        assertThat(seconds).containsExactly(3.0, 2.0, 4.0);
        assertThat(teller.summary()).contains("test loudspeaker").contains("test voice");
        assertThat(closed).containsExactlyInAnyOrder("test voice", "test loudspeaker");
    }

    @Test
    void leaves_out_pauses_that_pass_otherwise() {
        new LoudTeller(voice, loudspeaker, false).play(Samples.silence(2, RATE), 3);

        assertThat(seconds).containsExactly(2.0);
    }

    @Test
    void a_lost_loudspeaker_is_one_sentence_with_a_way_on() {
        lost = true;

        assertThatThrownBy(() -> new LoudTeller(voice, loudspeaker, true).speak("four"))
                .isInstanceOf(CommandFailure.class)
                .hasMessageContaining("It is gone.")
                .hasMessageContaining("--speak-to");
    }
}
