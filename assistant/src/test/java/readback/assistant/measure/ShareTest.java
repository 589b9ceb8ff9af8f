package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareTest {

    /** R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3: the score interval. */
    @ParameterizedTest
    @CsvSource({"81, 263, 25.53, 36.62", "15, 148, 6.24, 16.05", "0, 20, 0, 16.11", "1, 29, 0.61, 17.18"})
    void theIntervalIsWilsons(int part, int whole, double lowest, double highest) {
        double[] interval = new Share(part, whole).interval();

        assertThat(interval[0]).isCloseTo(lowest, within(0.005));
        assertThat(interval[1]).isCloseTo(highest, within(0.005));
    }
}
