package readback.calc.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {

    @Test
    void scalesMeetAtTheirFixedPoints() {
        assertThat(Temperature.fahrenheit(32).kelvin()).isCloseTo(273.15, within(1e-12));
        assertThat(Temperature.celsius(100).fahrenheit()).isCloseTo(212, within(1e-10));
        assertThat(Temperature.fahrenheit(-40).celsius()).isCloseTo(-40, within(1e-10));
        assertThat(Temperature.kelvin(300).kelvin()).isEqualTo(300);
    }

    @Test
    void aDifferenceHasNoOffset() {
        TemperatureDifference difference = Temperature.fahrenheit(52).minus(Temperature.fahrenheit(40));

        assertThat(difference.fahrenheit()).isCloseTo(12, within(1e-10));
        assertThat(difference.kelvins()).isCloseTo(12 / 1.8, within(1e-10));
        assertThat(Temperature.fahrenheit(40)
                        .plus(TemperatureDifference.fahrenheit(12))
                        .fahrenheit())
                .isCloseTo(52, within(1e-10));
    }

    @Test
    void differencesSubtractAndChangeSign() {
        TemperatureDifference ten = TemperatureDifference.kelvins(10);

        assertThat(ten.minus(TemperatureDifference.kelvins(4)).kelvins()).isEqualTo(6);
        assertThat(ten.negated().kelvins()).isEqualTo(-10);
        assertThat(ten).isGreaterThan(TemperatureDifference.kelvins(9));
        assertThat(Temperature.kelvin(280)).isGreaterThan(Temperature.kelvin(270));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aTemperatureThatCannotBeIsRefused(double kelvin) {
        assertThatThrownBy(() -> Temperature.kelvin(kelvin))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature " + kelvin + " K")
                .hasMessageContaining("above 0 K");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void aDifferenceThatIsNoNumberIsRefused(double kelvins) {
        assertThatThrownBy(() -> TemperatureDifference.kelvins(kelvins))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature difference")
                .hasMessageContaining("finite");
    }
}
