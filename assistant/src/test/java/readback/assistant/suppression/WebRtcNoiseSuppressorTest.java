package readback.assistant.suppression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.ear.Ear;
import readback.assistant.ear.SpokenLines;
import readback.assistant.webrtc.ProcessingUnavailableException;

/** The suppressor that comes with a library. */
class WebRtcNoiseSuppressorTest {

    private static short[] hiss(double seconds, double level) {
        Random random = new Random(1);
        short[] hiss = new short[(int) (seconds * Ear.RATE)];
        for (int i = 0; i < hiss.length; i++) {
            hiss[i] = (short) Math.round(level * random.nextGaussian());
        }
        return hiss;
    }

    private static short[] through(Strength strength, short[] sound) throws ProcessingUnavailableException {
        short[] all = new short[sound.length];
        try (NoiseSuppressor suppressor = WebRtcNoiseSuppressor.open(strength)) {
            for (int at = 0; at + NoiseSuppressor.FRAME <= sound.length; at += NoiseSuppressor.FRAME) {
                short[] frame = suppressor.suppress(Arrays.copyOfRange(sound, at, at + NoiseSuppressor.FRAME));
                System.arraycopy(frame, 0, all, at, NoiseSuppressor.FRAME);
            }
        }
        return all;
    }

    private static double decibels(short[] sound, double fromSeconds) {
        double sum = 0;
        int from = (int) (fromSeconds * Ear.RATE);
        for (int i = from; i < sound.length; i++) {
            sum += (double) sound[i] * sound[i];
        }
        return 10 * Math.log10(sum / (sound.length - from) + 1e-9);
    }

    /** The library's own limits are 6, 12 and 18 dB (modules/audio_processing/ns/suppression_params.cc). */
    @ParameterizedTest
    @CsvSource({"LOW, 6", "MODERATE, 12", "HIGH, 18"})
    void steady_noise_is_softer_after_two_seconds(Strength strength, double limit) throws Exception {
        short[] hiss = hiss(5, 500);

        double less = decibels(hiss, 2) - decibels(through(strength, hiss), 2);

        assertThat(less).isBetween(limit - 4, limit + 4);
    }

    @Test
    void speech_in_quiet_stays() throws Exception {
        short[] speech = SpokenLines.sound("piston").at(Ear.RATE).slice(0, 20 * Ear.RATE);

        double less = decibels(speech, 1) - decibels(through(Strength.HIGH, speech), 1);

        assertThat(less).isBetween(-0.5, 2.5);
    }
}
