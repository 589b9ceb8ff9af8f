package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sound with known beginnings and ends: bursts of noise as loud as speech over steadier noise, signal to noise as
 * stated.
 */
class VoiceActivityDetectorTest {
    private static final long SEED = 11;
    private static final double LOUD = 3000;

    /** Steady noise, and in it louder noise from and to these seconds. */
    private static VoiceActivityDetector heard(double noise, double seconds, double from, double to) {
        return heard(noise, seconds, time -> time >= from && time < to);
    }

    private static VoiceActivityDetector heard(double noise, double seconds, DoublePredicate speaking) {
        Random random = new Random(SEED);
        VoiceActivityDetector level = new VoiceActivityDetector();
        int length = (int) (seconds * Ear.RATE);
        short[] chunk = new short[320];
        for (int at = 0; at < length; at += chunk.length) {
            for (int i = 0; i < chunk.length; i++) {
                double time = (double) (at + i) / Ear.RATE;
                double sample = noise * random.nextGaussian();
                if (speaking.test(time)) {
                    sample += LOUD * random.nextGaussian();
                }
                chunk[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, sample));
            }
            level.hear(chunk);
        }
        return level;
    }

    @ParameterizedTest(name = "{0} dB")
    @ValueSource(ints = {60, 20, 10, 8})
    void quietIsCountedFromTheEndOfSpeech(int decibels) {
        double noise = LOUD / Math.pow(10, decibels / 20.0);

        VoiceActivityDetector level = heard(noise, 2.3, 1, 2);

        assertThat(level.spoken()).as("seed %d", SEED).isTrue();
        // 30 ms are the frames over which the level is averaged.
        assertThat(level.quietSeconds()).as("seed %d", SEED).isCloseTo(0.3, within(0.031));
    }

    @Test
    void whileSomebodySpeaksNothingIsQuiet() {
        assertThat(heard(30, 1.8, 1, 2).quietSeconds()).isLessThan(0.05);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 100, 2000})
    void steadyNoiseIsNobodySpeaking(int noise) {
        assertThat(heard(noise, 10, 0, 0).spoken()).as("seed %d", SEED).isFalse();
    }

    /** Sound that is equally loud from the first sample on could be a fan; syllables, four a second, could not. */
    @Test
    void syllablesFromTheFirstSampleOnEndAllTheSame() {
        VoiceActivityDetector level = heard(100, 1.3, time -> time < 1 && time % 0.25 >= 0.08);

        assertThat(level.spoken()).isTrue();
        assertThat(level.quietSeconds()).isCloseTo(0.3, within(0.031));
    }

    @Test
    void onlySpeechFarAboveTheNoiseIsClear() {
        assertThat(heard(30, 2.3, 1, 2).clear()).isTrue();
        assertThat(heard(LOUD / Math.sqrt(10), 2.3, 1, 2).clear()).isFalse();
    }
}
