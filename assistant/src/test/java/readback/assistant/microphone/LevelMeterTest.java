package readback.assistant.microphone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LevelMeterTest {
    private static final int RATE = 16000;
    private static final int CHUNK = RATE / 50;

    private final LevelMeter meter = new LevelMeter(RATE, -55);

    /** A sine of a peak relative to full scale; its power is half the square of the peak. */
    private void sine(double peak, double seconds) {
        for (int chunk = 0; chunk < Math.round(seconds * 50); chunk++) {
            short[] sound = new short[CHUNK];
            for (int i = 0; i < CHUNK; i++) {
                sound[i] = (short) Math.round(peak * 32767 * Math.sin(2 * Math.PI * 500 * i / RATE));
            }
            meter.hear(sound);
        }
    }

    /** A full-scale sine has a root mean square of 1 / sqrt 2, which is 3.01 decibels below full scale. */
    @Test
    void aFullScaleSineIsThreeDecibelsBelowFullScale() {
        sine(1, 0.1);

        assertThat(meter.level()).isCloseTo(-3.01, within(0.05));
    }

    @Test
    void tenTimesQuieterIsTwentyDecibelsLess() {
        sine(0.1, 0.1);

        assertThat(meter.level()).isCloseTo(-23.01, within(0.05));
    }

    @Test
    void aWordDoesNotRaiseTheNoise() {
        sine(0.01, 3);
        sine(0.5, 1.5);

        assertThat(meter.noise()).isCloseTo(-43.01, within(0.5));
        assertThat(meter.open()).isTrue();
        assertThat(meter.openSeconds()).isCloseTo(1.5, within(0.05));
    }

    @Test
    void aFanThatStartsBecomesNoiseAfterAFewSeconds() {
        sine(0.001, 3);
        sine(0.1, 5);

        assertThat(meter.noise()).isCloseTo(-23.01, within(0.5));
        assertThat(meter.open()).isFalse();
    }

    @Test
    void belowTheGateNothingIsSpeech() {
        sine(0.0001, 3);
        sine(0.001, 1);

        assertThat(meter.open()).isFalse();
    }

    @Test
    void digitalSilenceHasALevelToo() {
        sine(0, 1);

        assertThat(meter.level()).isEqualTo(LevelMeter.SILENCE);
        assertThat(meter.open()).isFalse();
    }
}
