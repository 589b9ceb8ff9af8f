package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.air.MoistAir;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;

class HumidityTest {

    private final Rehearsal rehearsal =
            new Rehearsal().says("four ten a", "piston", "understood", "yes", "yes", "outdoor ninety five");

    private double wetBulb() {
        return rehearsal
                .assessment()
                .readings()
                .temperature(Quantity.RETURN_WET_BULB)
                .orElseThrow()
                .fahrenheit();
    }

    /** Worked states of the ASHRAE Handbook of Fundamentals, chapter 1 (from memory). */
    @ParameterizedTest
    @CsvSource({"80, 51.1, 67", "75, 51.6, 63", "80, 68.3, 72", "70, 50.2, 58.5", "80, 29.8, 60", "72, 49.7, 60"})
    void the_wet_bulb_follows_from_dry_bulb_and_humidity(String dryBulb, String humidity, double wetBulb) {
        rehearsal.says("return air " + dryBulb, "humidity " + humidity + " percent");

        assertThat(wetBulb()).isCloseTo(wetBulb, within(0.15));
    }

    @Test
    void it_follows_a_correction_of_either() {
        rehearsal.says("return air 80", "humidity 51.1 percent", "correction, return air 75");
        double corrected = wetBulb();

        assertThat(corrected).isBetween(62.0, 64.0);
    }

    @Test
    void a_wet_bulb_that_is_said_counts_and_stays_until_the_air_is_read_anew() {
        rehearsal.says("return air 80", "wet bulb 66");

        assertThat(wetBulb()).isCloseTo(66, within(1e-9));
        assertThat(rehearsal.keys()).doesNotContain("humidity.wet-bulb");
    }

    @Test
    void humidity_alone_says_what_is_missing() {
        rehearsal.says("humidity fifty percent");

        assertThat(rehearsal.keys()).contains("humidity.needs-dry-bulb");
        assertThat(rehearsal.assessment().readings().has(Quantity.RETURN_WET_BULB))
                .isFalse();
    }

    /** A hygrometer good to 3 %: common practice, no source. Limits combine as JCGM 100:2008, 5.1.2, has it. */
    @Test
    void a_wet_bulb_worked_out_is_off_by_a_tenth_of_a_degree_more_than_one_that_is_read_at_most() {
        double probe = InstrumentAccuracy.STANDARD.airProbe().fahrenheit();
        for (int dryBulb = 70; dryBulb <= 84; dryBulb += 2) {
            for (int humidity = 30; humidity <= 70; humidity += 5) {
                double byHumidity = (wetBulb(dryBulb, humidity + 3) - wetBulb(dryBulb, humidity - 3)) / 2;
                double byDryBulb = (wetBulb(dryBulb + probe, humidity) - wetBulb(dryBulb - probe, humidity)) / 2;

                assertThat(Math.hypot(byHumidity, byDryBulb))
                        .as("%d °F and %d %%", dryBulb, humidity)
                        .isLessThanOrEqualTo(
                                InstrumentAccuracy.STANDARD.wetBulbProbe().fahrenheit() + 0.1);
            }
        }
    }

    private static double wetBulb(double dryBulb, double percent) {
        return MoistAir.fromRelativeHumidity(Temperature.fahrenheit(dryBulb), percent / 100, Atmosphere.SEA_LEVEL)
                .wetBulb()
                .fahrenheit();
    }
}
