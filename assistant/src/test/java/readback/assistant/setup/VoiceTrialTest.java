package readback.assistant.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.EchoTrial;
import readback.assistant.microphone.Microphone;

/** Listening to the own voice, with sound that is made here. */
class VoiceTrialTest {

    private static final int CHUNK = Microphone.RATE / 50;
    private static final short[] SILENCE = chunk(0);
    private static final short[] QUIET = chunk(20);
    private static final short[] VOICE = chunk(3000);

    private final List<SetupEvent> came = new ArrayList<>();
    private final List<Consumer<Optional<String>>> speaking = new ArrayList<>();
    private final VoiceTrial trial = new VoiceTrial(new Untouched(), (more, ended) -> speaking.add(ended), came::add);

    private static short[] chunk(int amplitude) {
        short[] chunk = new short[CHUNK];
        Arrays.fill(chunk, (short) amplitude);
        return chunk;
    }

    /** As setting up does, which takes a trial's outcome for its end. */
    private void hear(double seconds, short[] heard, short[] played) {
        for (int i = 0; i < Math.round(seconds * Microphone.RATE / CHUNK) && came.isEmpty(); i++) {
            trial.sound(heard, played);
        }
    }

    private EchoTrial.Result result() {
        assertThat(came).hasSize(1);
        return ((SetupEvent.EchoTried) came.get(0)).result().orElseThrow();
    }

    @Test
    void it_speaks_after_two_seconds_of_quiet_and_judges_a_second_after_its_last_word() {
        hear(1.9, QUIET, SILENCE);
        assertThat(speaking).isEmpty();
        hear(0.2, QUIET, SILENCE);
        assertThat(speaking).hasSize(1);
        hear(15, QUIET, VOICE);
        speaking.get(0).accept(Optional.empty());
        hear(0.9, QUIET, SILENCE);
        assertThat(came).isEmpty();
        hear(0.2, QUIET, SILENCE);

        assertThat(result().outcome()).isEqualTo(EchoTrial.Outcome.NOT_HEARD);
    }

    /** What is still being played when it begins, or still on its way to the microphone, would be taken for quiet. */
    @Test
    void the_end_of_what_was_said_before_is_neither_quiet_nor_its_voice() {
        hear(2, VOICE, VOICE);
        hear(0.8, VOICE, SILENCE);
        assertThat(speaking).isEmpty();
        hear(1.3, QUIET, SILENCE);
        hear(15, QUIET, VOICE);
        speaking.get(0).accept(Optional.empty());
        hear(1.1, QUIET, SILENCE);

        assertThat(result().above()).isBetween(-1.0, 1.0);
    }

    @Test
    void what_could_not_be_said_is_told_and_not_judged() {
        hear(2.1, QUIET, SILENCE);
        speaking.get(0).accept(Optional.of("It was silenced."));

        assertThat(came).containsExactly(new SetupEvent.EchoTried(Optional.empty(), Optional.of("It was silenced.")));
    }

    @Test
    void after_the_step_was_left_nothing_is_told() {
        hear(2.1, QUIET, SILENCE);
        trial.over();
        speaking.get(0).accept(Optional.of("It was silenced."));

        assertThat(came).isEmpty();
    }

    /** Takes nothing out. */
    private static final class Untouched implements EchoCanceller {
        @Override
        public short[] cancel(short[] heard, short[] played) {
            return heard;
        }

        @Override
        public void close() {
            // nothing is held
        }
    }
}
