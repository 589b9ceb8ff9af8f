package readback.calc.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * Saturation from a printed R-410A pressure-temperature table (40 °F at 118.0 psig, 110 °F at 365.0 psig), which lies
 * up to 0.3 °F from the equation of state used here.
 */
class CoilDifferenceTest {

    private static final double TABLE = 0.3;

    private static final Readings BOTH = Readings.of(
            Reading.of(Quantity.SUCTION_PRESSURE, "118"),
            Reading.of(Quantity.LIQUID_PRESSURE, "365"),
            Reading.of(Quantity.OUTDOOR_TEMPERATURE, "85"),
            Reading.of(Quantity.RETURN_DRY_BULB, "76"));

    @Test
    void condensing_at_110_in_air_of_85_is_25_over_it() {
        assertThat(CoilDifference.condensingOverOutdoor(judged(BOTH), BOTH)
                        .orElseThrow()
                        .fahrenheit())
                .isCloseTo(25, within(TABLE));
    }

    @Test
    void evaporating_at_40_under_return_air_of_76_is_36_under_it() {
        assertThat(CoilDifference.evaporatingUnderReturn(judged(BOTH), BOTH)
                        .orElseThrow()
                        .fahrenheit())
                .isCloseTo(36, within(TABLE));
    }

    @Test
    void nothing_is_told_of_a_coil_whose_air_or_pressure_was_not_read() {
        for (Quantity missing : new Quantity[] {Quantity.LIQUID_PRESSURE, Quantity.OUTDOOR_TEMPERATURE}) {
            Readings readings = BOTH.without(missing);
            assertThat(CoilDifference.condensingOverOutdoor(judged(readings), readings))
                    .as("without " + missing)
                    .isEmpty();
        }
        for (Quantity missing : new Quantity[] {Quantity.SUCTION_PRESSURE, Quantity.RETURN_DRY_BULB}) {
            Readings readings = BOTH.without(missing);
            assertThat(CoilDifference.evaporatingUnderReturn(judged(readings), readings))
                    .as("without " + missing)
                    .isEmpty();
        }
    }

    @Test
    void twenty_five_degrees_over_the_air_are_usual_for_twelve_seer_and_too_much_for_sixteen() {
        assertThat(CoilDifference.condensing(judged(BOTH), BOTH, Optional.of(Efficiency.rated(12))))
                .contains(CoilDifference.Usual.WITHIN);
        assertThat(CoilDifference.condensing(judged(BOTH), BOTH, Optional.of(Efficiency.rated(16))))
                .contains(CoilDifference.Usual.ABOVE);
        Readings hot = BOTH.with(Reading.of(Quantity.OUTDOOR_TEMPERATURE, "92"));
        assertThat(CoilDifference.condensing(judged(hot), hot, Optional.of(Efficiency.rated(8))))
                .contains(CoilDifference.Usual.BELOW);
        assertThat(CoilDifference.condensing(judged(BOTH), BOTH, Optional.empty()))
                .isEmpty();
    }

    private static Judgement judged(Readings readings) {
        return new ChargeJudge().judge(PISTON, readings);
    }
}
