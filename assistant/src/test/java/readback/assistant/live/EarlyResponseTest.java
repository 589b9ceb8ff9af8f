package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EarlyResponseTest {
    private static final long MILLI = 1_000_000;
    private final EarlyResponse response = new EarlyResponse();

    @Test
    void wordsThatStoodStillAreGivenOnce() {
        response.partial("suction one one eight", 0);

        assertThat(response.due(79 * MILLI)).isEmpty();
        assertThat(response.due(80 * MILLI)).contains("suction one one eight");
        assertThat(response.due(81 * MILLI)).isEmpty();
    }

    @Test
    void aFurtherWordBeginsAnew() {
        response.partial("suction", 0);
        response.partial("suction one", 70 * MILLI);

        assertThat(response.due(100 * MILLI)).isEmpty();
        assertThat(response.due(150 * MILLI)).contains("suction one");
    }

    @Test
    void nothingIsForeseenOfNothing() {
        response.partial("suction", 0);
        response.partial("", 10 * MILLI);

        assertThat(response.speaking()).isFalse();
        assertThat(response.due(1000 * MILLI)).isEmpty();
    }
}
