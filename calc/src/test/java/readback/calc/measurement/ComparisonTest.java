package readback.calc.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Comparison.Position;
import readback.calc.numeric.Normal;
import readback.calc.quantity.TemperatureDifference;

class ComparisonTest {

    private static final Band FIVE = Band.fahrenheit(-5, 5);

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "0.5, 0.6914624613",
        "1, 0.8413447461",
        "1.28, 0.8997274320",
        "2, 0.9772498681",
        "3, 0.9986501020",
        "-1, 0.1586552539",
        "-2, 0.0227501319"
    })
    void the_normal_distribution_agrees_with_the_printed_table(double z, double probability) {
        assertThat(Normal.below(z)).isCloseTo(probability, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "-5.1, BELOW",
        "-5.04, INSIDE",
        "-5, INSIDE",
        "0, INSIDE",
        "5, INSIDE",
        "5.04, INSIDE",
        "5.06, ABOVE",
        "9, ABOVE"
    })
    void limits_belong_to_the_inside_and_tenths_decide(double value, Position position) {
        assertThat(compare(value, 1).position()).isEqualTo(position);
    }

    /** JCGM 106:2012, 7: Φ((5 − 7)/1.37) and Φ(5/1.37) − Φ(−5/1.37). */
    @Test
    void probability_is_that_of_the_true_value_lying_on_the_same_side() {
        assertThat(compare(-7, 1.37).probability()).isCloseTo(Normal.below(2 / 1.37), within(1e-9));
        assertThat(compare(7, 1.37).probability()).isCloseTo(Normal.below(2 / 1.37), within(1e-9));
        assertThat(compare(0, 1.37).probability())
                .isCloseTo(Normal.below(5 / 1.37) - Normal.below(-5 / 1.37), within(1e-9));
        assertThat(compare(4, 1.37).probability())
                .isCloseTo(Normal.below(1 / 1.37) - Normal.below(-9 / 1.37), within(1e-9));
    }

    /** 1.2816 standard deviations: the one-sided 90 % point of the normal distribution. */
    @Test
    void a_comparison_is_borderline_within_the_one_sided_ninety_percent_interval_of_a_limit() {
        assertThat(compare(6.2, 1).borderline()).isTrue();
        assertThat(compare(6.3, 1).borderline()).isFalse();
        assertThat(compare(3.8, 1).borderline()).isTrue();
        assertThat(compare(3.7, 1).borderline()).isFalse();
        assertThat(compare(-3.8, 1).borderline()).isTrue();
        assertThat(compare(-6.2, 1).borderline()).isTrue();
        assertThat(compare(-6.3, 1).borderline()).isFalse();
    }

    @Test
    void instruments_too_coarse_for_the_limits_make_every_comparison_borderline() {
        for (double value = -12; value <= 12; value += 1) {
            if (Math.abs(value) < 11) {
                assertThat(compare(value, 5).borderline()).as("%s", value).isTrue();
            }
        }
    }

    @Test
    void a_band_that_ends_before_it_starts_is_refused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException().isThrownBy(() -> Band.fahrenheit(2, 1));
        assertThat(Band.fahrenheit(8, 14).middle().fahrenheit()).isCloseTo(11, within(1e-9));
    }

    private static Comparison compare(double fahrenheit, double uncertainty) {
        return Comparison.of(
                TemperatureDifference.fahrenheit(fahrenheit), TemperatureDifference.fahrenheit(uncertainty), FIVE);
    }
}
