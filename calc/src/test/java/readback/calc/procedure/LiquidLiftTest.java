package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Known;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

class LiquidLiftTest {

    /**
     * Pressure loss of liquid in risers, at 110 °F at the foot, in an installation manual of a condensing unit: psi and
     * °F of subcooling. It prints the same 0.484 psi a foot for every height; its degrees follow pressure tables.
     */
    @ParameterizedTest
    @CsvSource({
        "R-22, 10, 4.8, 1.6",
        "R-22, 30, 14.5, 4.7",
        "R-22, 50, 24.2, 8.0",
        "R-134a, 20, 9.8, 4.1",
        "R-134a, 50, 24.6, 11.0",
        "R-404A, 25, 10.2, 2.7",
        "R-404A, 50, 20.4, 5.6"
    })
    void a_riser_costs_what_a_printed_table_says(String refrigerant, double feet, double psi, double degrees) {
        LiquidLift lift =
                LiquidLift.of(Known.refrigerant(refrigerant), Unit.FOOT.toBase(feet), Temperature.fahrenheit(110));

        assertThat(Unit.PSIG.fromBase(lift.drop().pascals())).isCloseTo(psi, within(0.03 * psi));
        assertThat(lift.subcooling().fahrenheit()).isCloseTo(degrees, within(0.05 * degrees + 0.1));
    }

    /**
     * R-410A: liquid of 61.9 lb/ft³ at 100 °F (from memory) weighs 0.43 psi a foot. A printed pressure table has 317.2
     * psig at 100 °F and 308.2 at 98 °F.
     */
    @Test
    void twenty_feet_of_r_410a_cost_about_two_degrees() {
        LiquidLift lift = LiquidLift.of(Known.R410A, Unit.FOOT.toBase(20));

        assertThat(Unit.PSIG.fromBase(lift.drop().pascals())).isCloseTo(20 * 61.9 / 144, within(0.05));
        assertThat(lift.subcooling().fahrenheit()).isCloseTo(20 * 61.9 / 144 * 2 / (317.2 - 308.2), within(0.03));
    }

    @Test
    void liquid_flashes_once_the_lift_takes_all_its_subcooling() {
        LiquidLift lift = LiquidLift.of(Known.R410A, Unit.FOOT.toBase(60));
        double cost = lift.subcooling().kelvins();

        assertThat(lift.flashes(TemperatureDifference.kelvins(cost + 0.1))).isFalse();
        assertThat(lift.flashes(TemperatureDifference.kelvins(cost))).isTrue();
        assertThat(lift.flashes(TemperatureDifference.kelvins(cost - 0.1))).isTrue();
    }

    @Test
    void no_lift_costs_nothing_and_a_fall_is_no_lift() {
        assertThat(LiquidLift.of(Known.R410A, 0).drop().pascals()).isZero();
        assertThat(LiquidLift.of(Known.R410A, 0).subcooling().kelvins()).isCloseTo(0, within(1e-6));
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> LiquidLift.of(Known.R410A, -1))
                .withMessageContaining("lift");
    }
}
