package readback.assistant.microphone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.ear.SpokenLines;
import readback.assistant.sound.Samples;

class SpeechLevelTest {

    private static final int RATE = 16000;

    /** White noise with a loud second in the middle, both of these levels in decibels of full scale. */
    private static short[] spoken(double noise, double speech) {
        SplittableRandom random = new SplittableRandom(7);
        short[] sound = new short[4 * RATE];
        for (int i = 0; i < sound.length; i++) {
            boolean loud = i >= 2 * RATE && i < 3 * RATE;
            double level = 32768 * Math.pow(10, (loud ? speech : noise) / 20);
            // evenly spread: the peak is the root of three above the mean level
            double value = level * Math.sqrt(3) * (2 * random.nextDouble() - 1);
            sound[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
        }
        return sound;
    }

    @ParameterizedTest
    @CsvSource({"-60, -20", "-45, -30", "-70, -50"})
    void speech_and_noise_are_measured(double noise, double speech) {
        SpeechLevel level = SpeechLevel.of(spoken(noise, speech), RATE);

        assertThat(level.speech()).isCloseTo(speech, within(1.0));
        assertThat(level.noise()).isCloseTo(noise, within(1.5));
        assertThat(level.clipped()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "-60, -20, GOOD",
        "-90, -20, GOOD",
        "-60, -50, TOO_SOFT",
        "-60, 2, TOO_LOUD",
        "-30, -22, DROWNED",
        "-50, -50, NOTHING"
    })
    void a_level_is_judged_by_itself_and_by_the_noise(double noise, double speech, SpeechLevel.Grade grade) {
        assertThat(SpeechLevel.of(spoken(noise, speech), RATE).grade()).isEqualTo(grade);
    }

    @Test
    void speech_from_the_first_moment_on_is_speech() {
        short[] sound = spoken(-60, -20);

        SpeechLevel level = SpeechLevel.of(Arrays.copyOfRange(sound, 2 * RATE, sound.length), RATE);

        assertThat(level.speech()).isCloseTo(-20, within(1.0));
        assertThat(level.noise()).isCloseTo(-60, within(1.5));
    }

    @Test
    void digital_silence_and_no_sound_are_nothing() {
        assertThat(SpeechLevel.of(new short[RATE], RATE).grade()).isEqualTo(SpeechLevel.Grade.NOTHING);
        assertThat(SpeechLevel.of(new short[0], RATE).grade()).isEqualTo(SpeechLevel.Grade.NOTHING);
    }

    @Test
    void a_knock_is_nothing() {
        short[] sound = spoken(-60, -60);
        for (int i = 0; i < RATE / 20; i++) {
            sound[2 * RATE + i] = (short) (i % 2 == 0 ? 9000 : -9000);
        }

        assertThat(SpeechLevel.of(sound, RATE).grade()).isEqualTo(SpeechLevel.Grade.NOTHING);
    }

    @Test
    void the_recorded_call_is_loud_enough_and_clips_when_it_is_driven_too_hard() {
        Samples call = SpokenLines.sound("piston").at(RATE);
        short[] part = call.slice(0, 10 * RATE);
        assertThat(SpeechLevel.of(part, RATE).grade()).isEqualTo(SpeechLevel.Grade.GOOD);

        short[] driven = part.clone();
        for (int i = 0; i < driven.length; i++) {
            driven[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, 20 * driven[i]));
        }
        assertThat(SpeechLevel.of(driven, RATE).grade()).isEqualTo(SpeechLevel.Grade.TOO_LOUD);
    }
}
