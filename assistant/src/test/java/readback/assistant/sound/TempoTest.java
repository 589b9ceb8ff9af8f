package readback.assistant.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TempoTest {
    private static final int RATE = 16000;
    private final Samples tone = Tone.of(220, 2, RATE);

    private static double crossingsPerSecond(Samples sound) {
        short[] pcm = sound.pcm();
        int upwards = 0;
        for (int i = 1; i < pcm.length; i++) {
            if (pcm[i - 1] < 0 && pcm[i] >= 0) {
                upwards++;
            }
        }
        return upwards / sound.seconds();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.25, 2})
    void theLengthChangesAndThePitchStays(double speed) {
        Samples changed = Tempo.changed(tone, speed);

        assertThat(changed.seconds()).isCloseTo(2 / speed, within(0.01));
        // A tone crosses zero upwards once a period.
        assertThat(crossingsPerSecond(changed)).isCloseTo(220, within(220 * 0.03));
        assertThat(changed.loudness()).isCloseTo(tone.loudness(), within(0.1 * tone.loudness()));
    }

    @Test
    void atItsOwnSpeedASoundStaysTheSame() {
        assertThat(Tempo.changed(tone, 1)).isSameAs(tone);
    }

    @Test
    void aSpeedThatNobodyUnderstandsIsRefused() {
        assertThatThrownBy(() -> Tempo.changed(tone, 3)).hasMessageContaining("between 0.5 and 2, not at 3.0");
    }
}
