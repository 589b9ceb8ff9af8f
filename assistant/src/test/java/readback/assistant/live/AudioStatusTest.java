package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.View;
import readback.prompts.text.Language;

class AudioStatusTest {
    private static final Instant NOON = Instant.parse("2026-07-01T12:00:00Z");
    private final AudioStatus condition = new AudioStatus(new ScreenTexts(Language.english()));

    private View.Status status(double level) {
        return condition.status(level, true, "flite", false);
    }

    @Test
    void theMeterGoesFromSixtyDecibelsBelowFullScaleToFullScale() {
        condition.microphoneFound("headset");

        assertThat(status(-90).level()).isZero();
        assertThat(status(-60).level()).isZero();
        assertThat(status(-30).level()).isEqualTo(5);
        assertThat(status(0).level()).isEqualTo(10);
    }

    @Test
    void aLostMicrophoneIsTroubleUntilItIsBack() {
        assertThat(condition.microphoneFound("headset")).as("was never missed").isFalse();

        condition.microphoneLost("It is gone.");

        assertThat(condition.hint()).startsWith("It is gone. Use the keys");
        assertThat(status(-30).level()).isZero();
        assertThat(condition.microphoneFound("headset")).isTrue();
        assertThat(condition.hint()).isEmpty();
    }

    @Test
    void aVoiceThatFailsIsShownUntilItSpeaksAgain() {
        condition.voiceFailed("There is no loudspeaker.");
        assertThat(status(-30).voice()).isEqualTo("no voice");
        assertThat(condition.hint()).contains("Read the screen");

        condition.voiceWorks();

        assertThat(status(-30).voice()).isEqualTo("voice flite");
        assertThat(condition.hint()).isEmpty();
    }

    @Test
    void aLoudRoomComesBeforeSoundThatIsNotKept() {
        condition.soundNotKept("the disk is nearly full");
        assertThat(condition.hint()).contains("not kept").contains("nearly full");

        condition.spoken(3, NOON);
        assertThat(condition.spoken(3, NOON)).isTrue();

        assertThat(condition.hint()).startsWith("Too loud here");
    }

    @Test
    void lostSoundIsCounted() {
        condition.overrun();
        condition.overrun();

        assertThat(condition.overruns()).isEqualTo(2);
        assertThat(status(-30).overruns()).isEqualTo(2);
    }
}
