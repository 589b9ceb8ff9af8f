package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Limits;
import readback.calc.quantity.Temperature;

/** Worked cases after California Energy Commission RA3.2.2.7 and table RA3.2-3 (recalled). */
class SplitCheckTest {

    @ParameterizedTest
    @CsvSource({
        "75, 63, 56, INSTALLER, SUFFICIENT",
        "80, 67, 56, INSTALLER, TOO_LITTLE_AIR",
        "76, 62, 62, INSTALLER, REPEAT",
        "75, 63, 52.9, INSTALLER, TOO_LITTLE_AIR",
        "75, 63, 52.9, INDEPENDENT_VERIFIER, SUFFICIENT",
        "75, 63, 59.9, INSTALLER, REPEAT",
        "75, 63, 59.9, INDEPENDENT_VERIFIER, SUFFICIENT"
    })
    void the_split_is_judged_by_the_limits_of_who_judges(
            double dryBulb, double wetBulb, double supply, Limits limits, SplitCheck.Outcome outcome) {
        assertThat(judge(dryBulb, wetBulb, supply, limits).map(SplitCheck.Result::outcome))
                .contains(outcome);
    }

    @Test
    void a_deviation_that_prints_as_the_limit_is_inside() {
        // the table has 18.6 for 75/63
        assertThat(judge(75, 63, 75 - 21.6, Limits.INSTALLER).map(SplitCheck.Result::outcome))
                .contains(SplitCheck.Outcome.SUFFICIENT);
    }

    @Test
    void return_air_outside_the_table_has_no_outcome() {
        assertThat(judge(90, 63, 60, Limits.INSTALLER)).isEmpty();
    }

    private static java.util.Optional<SplitCheck.Result> judge(
            double dryBulb, double wetBulb, double supply, Limits limits) {
        return SplitCheck.judge(
                Temperature.fahrenheit(dryBulb),
                Temperature.fahrenheit(wetBulb),
                Temperature.fahrenheit(dryBulb).minus(Temperature.fahrenheit(supply)),
                limits);
    }
}
