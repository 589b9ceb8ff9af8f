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
class AirflowTest {

    private static final double TEN_KILOWATTS = 10_000;
    private static final MoistAir RETURN = air(80, 67);
    private static final MoistAir SUPPLY = air(56, 55);

    /** 34,121 Btu/h over 1.08 × 28 °F. */
    @Test
    void ten_kilowatts_of_strip_heat_and_a_rise_of_28_degrees_are_1129_cfm() {
        Airflow airflow = Airflow.ofSensibleHeat(TEN_KILOWATTS, degrees(28), Atmosphere.SEA_LEVEL);

        assertThat(airflow.cubicFeetPerMinute()).isCloseTo(1129, within(1.0));
        assertThat(airflow.cubicFeetPerMinutePerTon(Unit.TON_OF_REFRIGERATION.toBase(3)))
                .isCloseTo(376, within(0.5));
    }

    /** The factor falls from 1.08 to 0.90 at 5,000 ft, 12.228 psia. */
    @Test
    void thin_air_needs_more_volume_for_the_same_heat() {
        Airflow high = Airflow.ofSensibleHeat(TEN_KILOWATTS, degrees(28), AbsolutePressure.psia(12.228));

        assertThat(high.cubicFeetPerMinute()).isCloseTo(34_121 / (0.8986 * 28), within(2.0));
    }

    /**
     * 36,000 Btu/h over 4.5 × 8.2 Btu/lb: enthalpy 31.45 at 80 °F dry and 67 °F wet bulb, 23.22 at 56 °F dry and 55 °F
     * wet bulb. ASHRAE Fundamentals, chapter 1, computed.
     */
    @Test
    void three_tons_between_usual_return_and_supply_air_are_about_970_cfm() {
        Airflow airflow = Airflow.ofTotalHeat(Unit.TON_OF_REFRIGERATION.toBase(3), RETURN, SUPPLY);

        assertThat(airflow.cubicFeetPerMinute()).isCloseTo(36_000 / (4.5 * (31.45 - 23.22)), within(6.0));
    }

    @Test
    void heat_rise_enthalpy_and_capacity_must_be_above_zero() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Airflow.ofSensibleHeat(0, degrees(28), Atmosphere.SEA_LEVEL))
                .withMessageContaining("heat");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Airflow.ofSensibleHeat(1, degrees(0), Atmosphere.SEA_LEVEL))
                .withMessageContaining("temperature rise");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Airflow.ofTotalHeat(0, RETURN, SUPPLY))
                .withMessageContaining("heat");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Airflow.ofTotalHeat(Double.POSITIVE_INFINITY, RETURN, SUPPLY));
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> Airflow.ofTotalHeat(1, SUPPLY, RETURN))
                .withMessageContaining("enthalpy");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new Airflow(1).cubicFeetPerMinutePerTon(0))
                .withMessageContaining("capacity");
        assertThatExceptionOfType(OutOfRangeException.class).isThrownBy(() -> new Airflow(-1));
        assertThatExceptionOfType(OutOfRangeException.class).isThrownBy(() -> new Airflow(Double.POSITIVE_INFINITY));
        assertThat(new Airflow(0).cubicFeetPerMinute()).isZero();
    }

    private static MoistAir air(double dryBulb, double wetBulb) {
        return MoistAir.fromWetBulb(
                Temperature.fahrenheit(dryBulb), Temperature.fahrenheit(wetBulb), Atmosphere.SEA_LEVEL);
    }

    private static TemperatureDifference degrees(double fahrenheit) {
        return TemperatureDifference.fahrenheit(fahrenheit);
    }
}
