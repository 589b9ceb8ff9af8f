package readback.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

class WaterTest {

    /**
     * ASHRAE Fundamentals, chapter 1, saturation pressure over ice and water, computed; 760,000 microns are one
     * atmosphere.
     */
    @ParameterizedTest
    @CsvSource({"50, -50.2", "500, -12.1", "1000, 0.8", "4579, 32.0", "20000, 71.8", "760000, 212.0"})
    void boils_in_a_vacuum_at_the_saturation_temperature(double microns, double fahrenheit) {
        assertThat(Water.boilsAt(AbsolutePressure.pascals(Unit.MICRON.toBase(microns)))
                        .fahrenheit())
                .isCloseTo(fahrenheit, within(0.06));
    }

    @Test
    void pressures_beyond_the_equations_are_refused() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Water.boilsAt(AbsolutePressure.pascals(1e-4)));
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Water.boilsAt(AbsolutePressure.pascals(2e6)));
    }
}
