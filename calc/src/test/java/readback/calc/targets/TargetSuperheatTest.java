package readback.calc.targets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Temperature;

/** The closed form (3 × wet bulb − 80 − outdoor) / 2: trade lore. */
class TargetSuperheatTest {

    @ParameterizedTest
    @CsvSource({"67, 95, 13.0", "60, 70, 15.0", "64, 95, 8.5", "58, 65, 14.5", "72, 100, 18.0"})
    void is_given_as_an_estimate_inside_its_range(double wetBulb, double outdoor, double estimate) {
        Target target = at(wetBulb, outdoor).orElseThrow();

        assertThat(target.value().fahrenheit()).isCloseTo(estimate, within(1e-9));
        assertThat(target.source()).isEqualTo(TargetSource.CLOSED_FORM_ESTIMATE);
        assertThat(target.standardUncertainty().fahrenheit()).isCloseTo(1.5, within(1e-9));
    }

    /** Held against the charging grid it is 6.5 °F low at 76/115: using it there would overcharge. */
    @ParameterizedTest
    @CsvSource({"76, 115", "72.1, 90", "57.9, 70", "67, 64.9", "70, 100.1"})
    void is_not_given_outside_its_range(double wetBulb, double outdoor) {
        assertThat(at(wetBulb, outdoor)).isEmpty();
    }

    /** The charging grid has a dash at these points, where the closed form claims 3.0, 5.5 and 6.0 °F. */
    @ParameterizedTest
    @CsvSource({"62, 100", "62, 95", "64, 100"})
    void never_allows_a_test_that_the_table_forbids(double wetBulb, double outdoor) {
        assertThat(at(wetBulb, outdoor)).isEmpty();
    }

    /** The table of RA3.2 (recalled): the closed form strays most beside the forbidden region, where it is too high. */
    @Test
    void strays_from_the_table_by_at_most_3_2_degrees_inside_its_range() {
        for (int outdoor = 65; outdoor <= 100; outdoor++) {
            for (int wetBulb = 58; wetBulb <= 72; wetBulb++) {
                Optional<Target> estimate = at(wetBulb, outdoor);
                if (estimate.isPresent()
                        && SuperheatTable.standard()
                                        .target(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor))
                                instanceof SuperheatTable.Answer.Usable usable) {
                    assertThat(estimate.get().value().fahrenheit())
                            .isCloseTo(usable.target().fahrenheit(), within(3.2));
                }
            }
        }
    }

    private static Optional<Target> at(double wetBulb, double outdoor) {
        return TargetSuperheat.closedFormEstimate(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor));
    }
}
