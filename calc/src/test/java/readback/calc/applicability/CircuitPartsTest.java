package readback.calc.applicability;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircuitPartsTest {

    @ParameterizedTest(name = "micro-channel {0}, accumulator {1}")
    @CsvSource({
        "false, false, 1.0, 15, false, false",
        "true, false, 0.5, 15, true, false",
        "false, true, 1.0, 30, false, true",
        "true, true, 0.5, 30, true, true"
    })
    void every_cell_is_what_the_trade_does(
            boolean microChannel, boolean accumulator, double step, int minutes, boolean pumpDown, boolean hides) {
        assertThat(new CircuitParts(microChannel, accumulator).change())
                .isEqualTo(new CircuitParts.Change(step, Duration.ofMinutes(minutes), pumpDown, hides));
    }
}
