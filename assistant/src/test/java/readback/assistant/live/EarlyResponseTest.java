package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EarlyResponseTest {
    private static final long MILLI = 1_000_000;
    private final EarlyResponse foresight = new EarlyResponse();

    @Test
    void wordsThatStoodStillAreGivenOnce() {
        foresight.partial("suction one one eight", 0);

        assertThat(foresight.due(79 * MILLI)).isEmpty();
        assertThat(foresight.due(80 * MILLI)).contains("suction one one eight");
        assertThat(foresight.due(81 * MILLI)).isEmpty();
    }

    @Test
    void aFurtherWordBeginsAnew() {
        foresight.partial("suction", 0);
        foresight.partial("suction one", 70 * MILLI);

        assertThat(foresight.due(100 * MILLI)).isEmpty();
        assertThat(foresight.due(150 * MILLI)).contains("suction one");
    }

    @Test
    void nothingIsForeseenOfNothing() {
        foresight.partial("suction", 0);
        foresight.partial("", 10 * MILLI);

        assertThat(foresight.speaking()).isFalse();
        assertThat(foresight.due(1000 * MILLI)).isEmpty();
    }
}
