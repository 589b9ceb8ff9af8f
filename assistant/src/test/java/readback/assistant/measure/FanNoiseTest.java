package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;

class FanNoiseTest {

    @Test
    void a_fan_alone_has_the_level_asked_for() {
        Samples fan = FanNoise.alone(5, 3000, 1);

        assertThat(fan.seconds()).isCloseTo(5, within(1e-9));
        assertThat(fan.loudness() * 32768).isCloseTo(3000, within(30.0));
    }

    @Test
    void mixed_noise_stands_the_decibels_below_the_tone() {
        short[] tone = new short[Ear.RATE];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = (short) Math.round(8000 * Math.sin(2 * Math.PI * 440 * i / Ear.RATE));
        }
        short[] mixed = FanNoise.mixed(Samples.of(tone, Ear.RATE), 10, 3).pcm();
        double noise = 0;
        double signal = 0;
        for (int i = 0; i < tone.length; i++) {
            noise += Math.pow(mixed[i] - tone[i], 2);
            signal += Math.pow(tone[i], 2);
        }

        assertThat(10 * Math.log10(signal / noise)).isCloseTo(10, within(0.1));
    }
}
