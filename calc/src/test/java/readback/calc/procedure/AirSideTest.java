package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import readback.calc.air.MoistAir;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

/** Trade formulas: sensible heat 1.08 cfm °F, total heat 4.5 cfm Btu/lb, both Btu/h at sea level. */
class AirSideTest {

    private static final MoistAir RETURN = air(80, 67);
    private static final MoistAir SUPPLY = air(56, 55);

    private static MoistAir air(double dryBulb, double wetBulb) {
        return MoistAir.fromWetBulb(
                Temperature.fahrenheit(dryBulb), Temperature.fahrenheit(wetBulb), Atmosphere.SEA_LEVEL);
    }

    private static double cubicFeetPerMinute(double watts, double rise, AbsolutePressure atmosphere) {
        return Unit.CUBIC_FOOT_PER_MINUTE.fromBase(
                AirSide.airflow(watts, TemperatureDifference.fahrenheit(rise), atmosphere));
    }

    /** 34,121 Btu/h over 1.08 × 28 °F. */
    @Test
    void ten_kilowatts_of_heat_and_a_rise_of_28_degrees_are_1129_cfm() {
        assertThat(cubicFeetPerMinute(10_000, 28, Atmosphere.SEA_LEVEL)).isCloseTo(1129, within(1.0));
    }

    /** The factor falls from 1.08 to 0.90 at 5,000 ft, 12.228 psia. */
    @Test
    void thin_air_needs_more_volume_for_the_same_heat() {
        assertThat(cubicFeetPerMinute(10_000, 28, AbsolutePressure.psia(12.228)))
                .isCloseTo(34_121 / (0.8986 * 28), within(2.0));
    }

    /**
     * 4.5 × 970 cfm × 8.23 Btu/lb: enthalpy 31.45 at 80 °F dry and 67 °F wet bulb, 23.22 at 56 °F dry and 55 °F wet
     * bulb. ASHRAE Fundamentals, chapter 1, computed.
     */
    @Test
    void usual_return_and_supply_air_at_970_cfm_are_three_tons() {
        double airflow = Unit.CUBIC_FOOT_PER_MINUTE.toBase(970);

        assertThat(Unit.BTU_PER_HOUR.fromBase(AirSide.totalCooling(airflow, RETURN, SUPPLY)))
                .isCloseTo(4.5 * 970 * (31.45 - 23.22), within(250.0));
        assertThat(Unit.BTU_PER_HOUR.fromBase(AirSide.sensibleCooling(airflow, RETURN, SUPPLY)))
                .isCloseTo(1.08 * 970 * 24, within(30.0));
    }

    @Test
    void air_that_is_warmed_is_cooled_by_less_than_nothing() {
        assertThat(AirSide.totalCooling(0.5, SUPPLY, RETURN)).isNegative();
        assertThat(AirSide.sensibleCooling(0.5, SUPPLY, RETURN)).isNegative();
    }

    @Test
    void heat_and_rise_must_be_above_zero() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> AirSide.airflow(0, TemperatureDifference.fahrenheit(28), Atmosphere.SEA_LEVEL))
                .withMessageContaining("heat");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> AirSide.airflow(1, TemperatureDifference.fahrenheit(0), Atmosphere.SEA_LEVEL))
                .withMessageContaining("temperature rise");
    }
}
