package readback.assistant.echo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.ear.Ear;
import readback.assistant.microphone.LevelMeter;

/** With the real canceller in simulated rooms, with a little noise. */
class EchoTrialTest {

    private static final int CHUNK = Ear.RATE / 50;
    private static final double NOISE = 10;

    /** A second of quiet, then the voice, two fifths of which are pauses, for as long as the trial needs. */
    private static short[] played() {
        short[] voice = WebRtcEchoCancellerTest.voice(24);
        short[] played = new short[Ear.RATE + voice.length];
        System.arraycopy(voice, 0, played, Ear.RATE, voice.length);
        return played;
    }

    private static EchoTrial.Result trial(short[] played, double[] atMicrophone, EchoCanceller canceller) {
        SplittableRandom random = new SplittableRandom(3);
        double[] noisy = Arrays.stream(atMicrophone)
                .map(sample -> sample + NOISE * (2 * random.nextDouble() - 1))
                .toArray();
        short[] heard = WebRtcEchoCancellerTest.rounded(noisy);
        try (EchoTrial trial = new EchoTrial(canceller, LevelMeter.USUAL_GATE)) {
            for (int at = 0; at + CHUNK <= heard.length; at += CHUNK) {
                trial.hear(Arrays.copyOfRange(heard, at, at + CHUNK), Arrays.copyOfRange(played, at, at + CHUNK));
            }
            return trial.result();
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 0.3", "150, 0.5", "350, 0.3"})
    void in_usual_rooms_the_own_voice_can_be_taken_out(int delayMillis, double gain) throws Exception {
        short[] played = played();
        EchoTrial.Result result = trial(played, new Room(delayMillis, gain).heard(played), WebRtcEchoCanceller.open());

        assertThat(result.outcome()).isEqualTo(EchoTrial.Outcome.TAKEN_OUT);
        assertThat(result.above()).isGreaterThan(20);
        assertThat(result.reduction()).isGreaterThan(10);
    }

    @Test
    void where_the_microphone_hears_nothing_of_it_that_is_told() throws Exception {
        short[] played = played();
        EchoTrial.Result result = trial(played, new double[played.length], WebRtcEchoCanceller.open());

        assertThat(result.outcome()).isEqualTo(EchoTrial.Outcome.NOT_HEARD);
        assertThat(result.above()).isBetween(-1.0, 1.0);
    }

    @Test
    void an_echo_that_comes_later_than_the_canceller_looks_back_is_too_strong() throws Exception {
        short[] played = played();
        EchoTrial.Result result = trial(played, new Room(1700, 0.8).heard(played), WebRtcEchoCanceller.open());

        assertThat(result.outcome()).isEqualTo(EchoTrial.Outcome.TOO_STRONG);
        assertThat(result.reduction()).isLessThan(10);
    }

    /** A line that runs dry now and then: the canceller loses its place, finds it, and loses it again. */
    @Test
    void an_echo_that_comes_back_whole_every_other_while_is_too_strong() {
        short[] played = played();
        EchoTrial.Result result = trial(played, new Room(20, 0.3).heard(played), new EchoCanceller() {
            private double voice;

            @Override
            public short[] cancel(short[] heard, short[] played) {
                voice += EchoReturn.loud(played) ? 0.01 : 0;
                return voice % 8 < 4 ? heard : new short[heard.length];
            }

            @Override
            public void close() {
                // nothing is held
            }
        });

        assertThat(result.outcome()).isEqualTo(EchoTrial.Outcome.TOO_STRONG);
        assertThat(result.reduction()).isLessThan(10);
    }

    @Test
    void before_anything_was_played_nothing_was_heard() throws Exception {
        try (EchoTrial trial = new EchoTrial(WebRtcEchoCanceller.open(), LevelMeter.USUAL_GATE)) {
            assertThat(trial.result().outcome()).isEqualTo(EchoTrial.Outcome.NOT_HEARD);
        }
    }
}
