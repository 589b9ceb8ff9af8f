package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AnswerTimesTest {
    /** Nearest rank: of 1 to 100 the 95th percentile is 95. */
    @Test
    void percentilesAreThoseOfTheNearestRank() {
        AnswerTimes times = new AnswerTimes();
        for (int i = 100; i >= 1; i--) {
            // A tenth of it goes into hearing, nothing into deciding.
            times.add(0, i * 1_000_000L, i * 1_000_000L, i * 10_000_000L);
        }

        assertThat(times.percentile(50)).isEqualTo(0.5);
        assertThat(times.percentile(95)).isEqualTo(0.95);
        assertThat(times.summary())
                .contains("100, begun 0.50 s")
                .contains("0.95 s at the 95th")
                .contains("(hearing 0.05 and 0.10, deciding 0.00 and 0.00, voice 0.45 and 0.86).");
    }
}
