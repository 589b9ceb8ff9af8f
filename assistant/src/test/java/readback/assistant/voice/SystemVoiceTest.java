package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SystemVoiceTest {
    @Test
    void aSystemWithoutAVoiceOfItsOwnIsSaidInOneSentence() {
        assertThatThrownBy(() -> SystemVoice.open("Linux"))
                .isInstanceOf(VoiceFailedException.class)
                .hasMessageContaining("Linux has no voice of its own")
                .hasMessageContaining("--voice");
    }
}
