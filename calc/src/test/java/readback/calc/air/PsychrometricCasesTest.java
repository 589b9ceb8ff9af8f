package readback.calc.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Temperature;

/**
 * Worked states of the ASHRAE Handbook of Fundamentals, chapter 1 (from memory), computed with its ideal-gas relations.
 */
class PsychrometricCasesTest {

    private static final double BTU_PER_POUND = 2326;

    /** ASHRAE counts enthalpy from dry air at 0 °F and water at 32 °F, this program from 32 °F for both. */
    private static final double DRY_AIR_FROM_ZERO_TO_32 = 0.240 * 32;

    @ParameterizedTest
    @CsvSource({
        "80, 67, 0.511, 0.01117, 60.3, 31.45",
        "75, 63, 0.516, 0.00953, 56.0, 28.43",
        "80, 72, 0.683, 0.01503, 68.6, 35.68",
        "70, 58.5, 0.502, 0.00782, 50.7, 25.33",
        "95, 75, 0.398, 0.01407, 66.8, 38.32",
        "100, 65, 0.13, 0.00519, 40, 29.7"
    })
    void dry_and_wet_bulb_give_humidity_dew_point_and_enthalpy(
            double dryBulb, double wetBulb, double relative, double ratio, double dewPoint, double enthalpy) {
        MoistAir air = MoistAir.fromWetBulb(
                Temperature.fahrenheit(dryBulb), Temperature.fahrenheit(wetBulb), Atmosphere.SEA_LEVEL);

        assertThat(air.relativeHumidity()).isCloseTo(relative, within(0.005));
        assertThat(air.humidityRatio()).isCloseTo(ratio, within(0.006 * ratio));
        assertThat(air.dewPoint().fahrenheit()).isCloseTo(dewPoint, within(0.3));
        assertThat(air.enthalpy() / BTU_PER_POUND + DRY_AIR_FROM_ZERO_TO_32).isCloseTo(enthalpy, within(0.12));
    }

    @ParameterizedTest
    @CsvSource({"75, 14.696, 62.5", "80, 14.696, 66.7", "75, 12.228, 61.8", "80, 12.228, 65.9"})
    void half_saturated_air_has_a_lower_wet_bulb_at_5000_feet(double dryBulb, double psia, double wetBulb) {
        MoistAir air = MoistAir.fromRelativeHumidity(Temperature.fahrenheit(dryBulb), 0.5, AbsolutePressure.psia(psia));

        assertThat(air.wetBulb().fahrenheit()).isCloseTo(wetBulb, within(0.1));
    }

    /** p = 14.696 (1 − 6.8754e-6 Z)^5.2559, ASHRAE after the U.S. Standard Atmosphere. */
    @Test
    void the_air_presses_with_12_228_psia_at_5000_feet() {
        assertThat(Atmosphere.atAltitude(5000 * 0.3048).psia()).isCloseTo(12.228, within(0.002));
    }
}
