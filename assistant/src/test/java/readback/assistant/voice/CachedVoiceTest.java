package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CachedVoiceTest {
    private final CountingVoice engine = new CountingVoice();
    private final CachedVoice voice = new CachedVoice(engine, 2);

    @Test
    void aTextIsMadeOnce() throws VoiceFailedException {
        voice.warm(List.of("ready", "say again"));

        assertThat(voice.speak("ready")).isSameAs(voice.speak("ready"));
        assertThat(engine.asked).containsExactly("ready", "say again");
    }

    @Test
    void theTextUnusedForLongestIsForgottenFirst() throws VoiceFailedException {
        voice.warm(List.of("one", "two", "one", "three"));

        voice.speak("one");
        voice.speak("two");

        assertThat(engine.asked).containsExactly("one", "two", "three", "two");
    }

    @Test
    void theEngineIsClosedWithIt() {
        voice.close();

        assertThat(engine.closed).isTrue();
        assertThat(voice.name()).isEqualTo("counting");
    }
}
