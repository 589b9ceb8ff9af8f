package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;

class NoiseTest {

    @ParameterizedTest
    @EnumSource
    void noise_alone_has_the_level_asked_for(Noise noise) {
        Samples alone = noise.alone(5, 1000, 1);

        assertThat(alone.seconds()).isCloseTo(5, within(1e-9));
        assertThat(alone.loudness() * 32768).isCloseTo(1000, within(10.0));
    }

    @ParameterizedTest
    @EnumSource
    void mixed_noise_stands_the_decibels_below_the_tone(Noise noise) {
        short[] tone = new short[Ear.RATE];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = (short) Math.round(4000 * Math.sin(2 * Math.PI * 440 * i / Ear.RATE));
        }
        short[] mixed = noise.mixed(Samples.of(tone, Ear.RATE), 10, 3).pcm();
        double left = 0;
        double signal = 0;
        for (int i = 0; i < tone.length; i++) {
            left += Math.pow(mixed[i] - tone[i], 2);
            signal += Math.pow(tone[i], 2);
        }

        assertThat(10 * Math.log10(signal / left)).isCloseTo(10, within(0.1));
    }

    @Test
    void the_same_start_gives_the_same_noise_and_another_one_another() {
        Samples clatter = Noise.CLATTER.alone(1, 1000, 4);

        assertThat(Noise.CLATTER.alone(1, 1000, 4)).isEqualTo(clatter);
        assertThat(Noise.CLATTER.alone(1, 1000, 5)).isNotEqualTo(clatter);
    }

    @Test
    void wind_is_low_clatter_strikes_and_a_road_comes_and_goes() {
        double[] wind = Noise.WIND.drawn(8 * Ear.RATE, Ear.RATE, new SplittableRandom(1));

        assertThat(shareBelow(wind, 120)).isGreaterThan(0.6);
        assertThat(swing(Noise.CLATTER, 0.01)).isGreaterThan(2 * swing(Noise.FAN, 0.01));
        assertThat(swing(Noise.ROAD, 0.5)).isGreaterThan(2 * swing(Noise.FAN, 0.5));
    }

    /** The share of the power that a first-order low pass leaves, at least. */
    private static double shareBelow(double[] noise, double hertz) {
        double pole = Math.exp(-2 * Math.PI * hertz / Ear.RATE);
        double low = 0;
        double below = 0;
        double all = 0;
        for (double each : noise) {
            low = pole * low + (1 - pole) * each;
            below += low * low;
            all += each * each;
        }
        return below / all;
    }

    /** How much louder than the mean the loudest piece of so many seconds is, in power. */
    private static double swing(Noise noise, double seconds) {
        short[] pcm = noise.alone(10, 1000, 2).pcm();
        int piece = (int) (seconds * Ear.RATE);
        double loudest = 0;
        for (int at = 0; at + piece <= pcm.length; at += piece) {
            double power = 0;
            for (int i = at; i < at + piece; i++) {
                power += (double) pcm[i] * pcm[i] / piece;
            }
            loudest = Math.max(loudest, power);
        }
        return loudest / (1000.0 * 1000.0);
    }
}
