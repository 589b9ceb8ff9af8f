package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.reading;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeJudge;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;

/** What the efficiency of the equipment tells of a condensing temperature. */
class EfficiencyEvidenceTest {

    /** R-410A condensing at 108 °F, 23 °F over the air outdoors. */
    private static final Readings READINGS = Readings.of(
            reading(Quantity.SUCTION_PRESSURE, 122),
            reading(Quantity.SUCTION_LINE_TEMPERATURE, 52),
            reading(Quantity.LIQUID_PRESSURE, 355),
            reading(Quantity.LIQUID_LINE_TEMPERATURE, 99),
            reading(Quantity.OUTDOOR_TEMPERATURE, 85),
            reading(Quantity.RETURN_WET_BULB, 64),
            reading(Quantity.RETURN_DRY_BULB, 76));

    @Test
    void the_same_condensing_temperature_is_less_of_a_sign_on_old_and_more_on_efficient_equipment() {
        double unknown = condenser(Optional.empty());

        assertThat(condenser(Optional.of(Efficiency.rated(8)))).isLessThan(unknown / 2);
        assertThat(condenser(Optional.of(Efficiency.rated(18)))).isGreaterThan(unknown);
    }

    @Test
    void an_age_alone_tells_next_to_nothing() {
        double unknown = condensing(Optional.empty());

        assertThat(condensing(Optional.of(Efficiency.builtIn(2010)))).isCloseTo(unknown, within(0.5));
        assertThat(condensing(Optional.of(Efficiency.rated(8)))).isLessThan(unknown - 4);
    }

    @Test
    void nothing_else_is_expected_otherwise() {
        Observed before = observed(Optional.empty());
        Observed after = observed(Optional.of(Efficiency.rated(8)));

        for (int i = 0; i < before.evidence().size(); i++) {
            Evidence each = before.evidence().get(i);
            if (each.symptom() != Symptom.CONDENSING_TEMPERATURE) {
                assertThat(after.evidence().get(i)).isEqualTo(each);
            }
        }
    }

    /** K from what a sound unit would show. */
    private static double condensing(Optional<Efficiency> efficiency) {
        return observed(efficiency).evidence().stream()
                .filter(each -> each.symptom() == Symptom.CONDENSING_TEMPERATURE)
                .findFirst()
                .orElseThrow()
                .deviation()
                .kelvins();
    }

    private static Observed observed(Optional<Efficiency> efficiency) {
        SystemUnderTest system = PISTON.ofEfficiency(efficiency);
        return EvidenceFinder.observed(system, READINGS, new ChargeJudge().judge(system, READINGS));
    }

    private static double condenser(Optional<Efficiency> efficiency) {
        return new Advisor()
                .advise(PISTON.ofEfficiency(efficiency), READINGS).diagnosis().suspects().stream()
                        .filter(suspect -> suspect.fault() == Fault.CONDENSER_AIR)
                        .mapToDouble(Suspect::probability)
                        .sum();
    }
}
