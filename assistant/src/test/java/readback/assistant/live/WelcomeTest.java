package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WelcomeTest {
    private static final long SECOND = 1_000_000_000;
    private static final long START = 5 * SECOND;

    private final Welcome welcome = new Welcome();

    @BeforeEach
    void hold() {
        welcome.hold(List.of("Readback is listening.", "Refrigerant?"));
        assertThat(welcome.due(false, START)).isEmpty();
    }

    @Test
    void firstItListensThenItSpeaksOnce() {
        assertThat(welcome.due(false, START + SECOND)).isEmpty();
        assertThat(welcome.due(false, START + 2 * SECOND)).contains(List.of("Readback is listening.", "Refrigerant?"));
        assertThat(welcome.due(false, START + 3 * SECOND)).isEmpty();
    }

    @Test
    void nobodyIsInterrupted() {
        assertThat(welcome.due(true, START + 2 * SECOND)).isEmpty();
        assertThat(welcome.due(false, START + 3 * SECOND)).isPresent();
    }

    @Test
    void whoWasQuickerIsNotWelcomed() {
        welcome.drop();

        assertThat(welcome.due(false, START + 2 * SECOND)).isEmpty();
    }
}
