package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.diagnosis.Deviations.deviation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeLevel;
import readback.calc.charge.Verdict;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.TemperatureDifference;

class DiagnosticianTest {

    private final Diagnostician diagnostician = new Diagnostician();

    /** Rossi and Braun 1997: the sign of subcooling separates a restriction from an undercharge. */
    @Test
    void high_superheat_with_high_subcooling_and_low_suction_is_a_restriction_and_not_an_undercharge() {
        Diagnosis diagnosis = fixedOrifice(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -7),
                deviation(Symptom.SUPERHEAT, 15),
                deviation(Symptom.SUBCOOLING, 4));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.LIQUID_LINE_RESTRICTION);
        assertThat(diagnosis.probability(Fault.UNDERCHARGE)).isLessThan(0.1);
    }

    /** The two symptoms are coupled: an undercharge loses its subcooling as its superheat rises. */
    @Test
    void superheat_far_above_the_target_with_usual_subcooling_is_no_undercharge() {
        for (double superheat : new double[] {15, 20, 25}) {
            for (double subcooling : new double[] {-1, 0, 2}) {
                Diagnosis diagnosis = fixedOrifice(
                        deviation(Symptom.EVAPORATING_TEMPERATURE, -superheat / 2),
                        deviation(Symptom.SUPERHEAT, superheat),
                        deviation(Symptom.SUBCOOLING, subcooling));

                assertThat(diagnosis.probability(Fault.UNDERCHARGE))
                        .as("superheat %s, subcooling %s", superheat, subcooling)
                        .isLessThan(0.4);
                assertThat(diagnosis.leader().fault()).isIn(Fault.LIQUID_LINE_RESTRICTION, Fault.UNDERSIZED_ORIFICE);
            }
        }
    }

    /** Rossi and Braun 1997: low indoor air is the only fault that raises the air split. */
    @Test
    void low_superheat_with_low_suction_and_high_split_is_low_airflow() {
        Diagnosis diagnosis = fixedOrifice(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -7),
                deviation(Symptom.SUPERHEAT, -7),
                deviation(Symptom.AIR_SPLIT, 5));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.LOW_INDOOR_AIRFLOW);
    }

    /** Rossi and Braun 1997: a leaking compressor is the only fault with suction up and condensing down. */
    @Test
    void high_suction_with_low_head_is_a_weak_compressor() {
        for (ChargeMethod method : ChargeMethod.values()) {
            Diagnosis diagnosis = diagnostician.diagnose(
                    method,
                    List.of(
                            deviation(Symptom.EVAPORATING_TEMPERATURE, 8),
                            deviation(Symptom.CONDENSING_TEMPERATURE, -8)),
                    Map.of());

            assertThat(diagnosis.leader().fault()).as("%s", method).isEqualTo(Fault.WEAK_COMPRESSOR);
        }
    }

    /** Trade charts, from memory: the resting-pressure test decides between these two. */
    @Test
    void overcharge_and_air_in_a_valve_system_look_alike_until_it_rests() {
        List<Evidence> evidence = List.of(
                deviation(Symptom.EVAPORATING_TEMPERATURE, 2),
                deviation(Symptom.SUPERHEAT, 0),
                deviation(Symptom.CONDENSING_TEMPERATURE, 9),
                deviation(Symptom.SUBCOOLING, 8),
                deviation(Symptom.DISCHARGE_TEMPERATURE, 3),
                deviation(Symptom.AIR_SPLIT, 0));

        Diagnosis running = diagnostician.diagnose(ChargeMethod.SUBCOOLING, evidence, Map.of());
        Diagnosis rested = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING, evidence, Map.of(Finding.RESTING_PRESSURE_ABOVE_SATURATION, true));

        assertThat(running.certainty()).isEqualTo(Diagnosis.Certainty.AMBIGUOUS);
        assertThat(running.suspects().subList(0, 2))
                .extracting(Suspect::fault)
                .containsExactlyInAnyOrder(Fault.OVERCHARGE, Fault.NON_CONDENSABLES);
        assertThat(running.next()).contains(new NextObservation.Look(Finding.RESTING_PRESSURE_ABOVE_SATURATION));
        assertThat(rested.leader().fault()).isEqualTo(Fault.NON_CONDENSABLES);
        assertThat(rested.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    /** Trade charts, from memory: only where the temperature drops tells them apart. */
    @Test
    void a_starving_valve_and_a_restriction_are_told_apart_by_looking() {
        List<Evidence> evidence = List.of(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -9),
                deviation(Symptom.SUPERHEAT, 14),
                deviation(Symptom.CONDENSING_TEMPERATURE, -3),
                deviation(Symptom.SUBCOOLING, 4));

        Diagnosis open = diagnostician.diagnose(ChargeMethod.SUBCOOLING, evidence, Map.of());
        Diagnosis dropFound = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING, evidence, Map.of(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE, true));
        Diagnosis bulbDead = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING,
                evidence,
                Map.of(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE, false, Finding.VALVE_ANSWERS_TO_BULB, false));

        assertThat(open.certainty()).isEqualTo(Diagnosis.Certainty.AMBIGUOUS);
        assertThat(open.next().orElseThrow())
                .isIn(
                        new NextObservation.Look(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE),
                        new NextObservation.Look(Finding.VALVE_ANSWERS_TO_BULB));
        assertThat(dropFound.leader().fault()).isEqualTo(Fault.LIQUID_LINE_RESTRICTION);
        assertThat(bulbDead.leader().fault()).isEqualTo(Fault.VALVE_STARVING);
    }

    /** A small restriction has no cold spot: the liquid does not boil behind it. */
    @Test
    void no_cold_spot_speaks_less_against_a_small_restriction_than_against_a_large_one() {
        double small = withoutColdSpot(4, 8);
        double large = withoutColdSpot(12, 28);

        assertThat(small).isBetween(0.4, 1.0);
        assertThat(large).isLessThan(small);
    }

    /** What remains of the probability of a restriction when no cold spot is found, as a share. */
    private double withoutColdSpot(double colder, double superheat) {
        List<Evidence> evidence = List.of(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -colder),
                deviation(Symptom.SUPERHEAT, superheat),
                deviation(Symptom.SUBCOOLING, 3));
        double before = diagnostician
                .diagnose(ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of())
                .probability(Fault.LIQUID_LINE_RESTRICTION);
        return diagnostician
                        .diagnose(
                                ChargeMethod.TOTAL_SUPERHEAT,
                                evidence,
                                Map.of(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE, false))
                        .probability(Fault.LIQUID_LINE_RESTRICTION)
                / before;
    }

    /** Trade charts, from memory. */
    @Test
    void a_valve_that_floods_with_high_suction_is_stuck_open() {
        Diagnosis diagnosis = valve(
                deviation(Symptom.EVAPORATING_TEMPERATURE, 5),
                deviation(Symptom.SUPERHEAT, -10),
                deviation(Symptom.CONDENSING_TEMPERATURE, 1),
                deviation(Symptom.SUBCOOLING, -3));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.VALVE_STUCK_OPEN);
    }

    /** ASHRAE RP-1173, as an ORNL literature survey tells it: the valve hides the loss until it is wide open. */
    @Test
    void an_undercharged_valve_system_shows_low_subcooling_first_and_high_superheat_later() {
        Diagnosis moderate = valve(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -1),
                deviation(Symptom.SUPERHEAT, 0.5),
                deviation(Symptom.SUBCOOLING, -6),
                deviation(Symptom.CONDENSING_TEMPERATURE, -4));
        Diagnosis severe = valve(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -12),
                deviation(Symptom.SUPERHEAT, 15),
                deviation(Symptom.SUBCOOLING, -9),
                deviation(Symptom.CONDENSING_TEMPERATURE, -7));

        assertThat(moderate.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(severe.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(severe.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    @Test
    void an_oversized_orifice_is_suspected_and_settled_by_a_look() {
        List<Evidence> evidence = List.of(
                deviation(Symptom.EVAPORATING_TEMPERATURE, 6),
                deviation(Symptom.SUPERHEAT, -12),
                deviation(Symptom.CONDENSING_TEMPERATURE, -1),
                deviation(Symptom.SUBCOOLING, -5));

        Diagnosis seen = diagnostician.diagnose(
                ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of(Finding.ORIFICE_DIFFERS_FROM_PLATE, true));

        assertThat(fixedOrifice(evidence.toArray(new Evidence[0])).suspects().subList(0, 3))
                .extracting(Suspect::fault)
                .contains(Fault.WRONG_OR_UNSEATED_ORIFICE);
        assertThat(seen.leader().fault()).isEqualTo(Fault.WRONG_OR_UNSEATED_ORIFICE);
        assertThat(seen.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    /** A plugged orifice starves the coil as a restriction does; only the orifice itself tells. */
    @Test
    void an_undersized_orifice_has_a_hypothesis_of_its_own() {
        List<Evidence> evidence = List.of(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -8),
                deviation(Symptom.SUPERHEAT, 15),
                deviation(Symptom.SUBCOOLING, 3));

        Diagnosis seen = diagnostician.diagnose(
                ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of(Finding.ORIFICE_DIFFERS_FROM_PLATE, true));

        assertThat(seen.leader().fault()).isEqualTo(Fault.UNDERSIZED_ORIFICE);
    }

    @Test
    void everything_as_expected_means_nothing_is_wrong() {
        for (ChargeMethod method : ChargeMethod.values()) {
            List<Evidence> evidence = new ArrayList<>();
            for (Symptom symptom : Symptom.values()) {
                evidence.add(deviation(symptom, 0.3));
            }

            Diagnosis diagnosis = diagnostician.diagnose(
                    method,
                    evidence,
                    method == ChargeMethod.SUBCOOLING ? Map.of(Finding.SUCTION_SWINGS, false) : Map.of());

            assertThat(diagnosis.leader().fault()).as("%s", method).isEqualTo(Fault.NONE);
            assertThat(diagnosis.probability(Fault.NONE))
                    .isGreaterThan(3 * diagnosis.leadingFault().probability());
        }
    }

    @Test
    void a_swinging_suction_with_normal_means_is_a_hunting_valve() {
        Diagnosis diagnosis = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING,
                List.of(
                        deviation(Symptom.EVAPORATING_TEMPERATURE, 0.2),
                        deviation(Symptom.SUPERHEAT, 1.5),
                        deviation(Symptom.SUBCOOLING, 0)),
                Map.of(Finding.SUCTION_SWINGS, true));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.HUNTING);
    }

    @Test
    void one_piece_of_evidence_is_too_little() {
        assertThat(fixedOrifice(deviation(Symptom.SUPERHEAT, 15)).certainty())
                .isEqualTo(Diagnosis.Certainty.TOO_LITTLE_EVIDENCE);
        assertThat(fixedOrifice().certainty()).isEqualTo(Diagnosis.Certainty.TOO_LITTLE_EVIDENCE);
    }

    @Test
    void probabilities_sum_to_one_over_every_fault_of_the_metering_family() {
        Diagnosis diagnosis = valve(deviation(Symptom.SUPERHEAT, 5), deviation(Symptom.SUBCOOLING, -5));

        assertThat(diagnosis.suspects().stream()
                        .mapToDouble(Suspect::probability)
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(diagnosis.suspects())
                .extracting(Suspect::fault)
                .doesNotHaveDuplicates()
                .contains(Fault.VALVE_STARVING, Fault.VALVE_STUCK_OPEN, Fault.HUNTING)
                .doesNotContain(Fault.WRONG_OR_UNSEATED_ORIFICE, Fault.UNDERSIZED_ORIFICE);
    }

    @Test
    void evidence_for_and_against_each_suspect_is_told_the_strongest_first() {
        Diagnosis diagnosis = fixedOrifice(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -7),
                deviation(Symptom.SUPERHEAT, 15),
                deviation(Symptom.SUBCOOLING, 4));
        Suspect undercharge = diagnosis.suspects().stream()
                .filter(suspect -> suspect.fault() == Fault.UNDERCHARGE)
                .findFirst()
                .orElseThrow();

        assertThat(undercharge.opposing())
                .hasSize(1)
                .allSatisfy(clue -> assertThat(
                                ((Suspect.Clue.Measured) clue).evidence().symptom())
                        .isEqualTo(Symptom.SUBCOOLING));
        assertThat(undercharge.supporting()).hasSize(2);
        for (Suspect suspect : diagnosis.suspects()) {
            assertThat(suspect.supporting())
                    .isSortedAccordingTo((a, b) -> Double.compare(b.weight(), a.weight()))
                    .allSatisfy(clue -> assertThat(clue.weight()).isPositive());
            assertThat(suspect.opposing())
                    .isSortedAccordingTo((a, b) -> Double.compare(a.weight(), b.weight()))
                    .allSatisfy(clue -> assertThat(clue.weight()).isNegative());
        }
    }

    /** Bayes' rule by hand: the odds of two causes that show nothing else change by the ratio of the rates of yes. */
    @Test
    void a_finding_changes_the_odds_by_how_much_likelier_it_is() {
        List<Evidence> evidence = List.of(deviation(Symptom.SUPERHEAT, -4));
        Diagnosis before = diagnostician.diagnose(ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of());
        Diagnosis after = diagnostician.diagnose(
                ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of(Finding.FILTER_OR_INDOOR_COIL_DIRTY, true));

        double oddsBefore = before.probability(Fault.LOW_INDOOR_AIRFLOW) / before.probability(Fault.OVERCHARGE);
        double oddsAfter = after.probability(Fault.LOW_INDOOR_AIRFLOW) / after.probability(Fault.OVERCHARGE);
        assertThat(oddsAfter / oddsBefore).isCloseTo(0.80 / 0.15, within(1e-6));
    }

    /** What is expected of a question is less after it was half answered by another. */
    @Test
    void what_is_known_is_not_asked_again() {
        Evidence low = deviation(Symptom.EVAPORATING_TEMPERATURE, -7);
        Evidence high = deviation(Symptom.SUPERHEAT, 12);

        assertThat(fixedOrifice(low, high).observations())
                .extracting(Diagnosis.Worth::observation)
                .contains(new NextObservation.Measure(Symptom.SUBCOOLING, Symptom.SUBCOOLING.quantities()))
                .doesNotContain(new NextObservation.Measure(Symptom.SUPERHEAT, Symptom.SUPERHEAT.quantities()));
        assertThat(fixedOrifice(low, high, deviation(Symptom.SUBCOOLING, -7)).observations())
                .extracting(Diagnosis.Worth::observation)
                .doesNotContain(new NextObservation.Measure(Symptom.SUBCOOLING, Symptom.SUBCOOLING.quantities()));
    }

    @Test
    void the_charge_that_is_left_is_narrowed_by_the_readings() {
        assertThat(fixedOrifice().charge(Verdict.Kind.ADD)).isEmpty();
        ChargeLevel little = fixedOrifice(deviation(Symptom.EVAPORATING_TEMPERATURE, -7))
                .charge(Verdict.Kind.ADD)
                .orElseThrow();
        Diagnosis low = fixedOrifice(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -7),
                deviation(Symptom.SUPERHEAT, 15),
                deviation(Symptom.SUBCOOLING, -7));
        ChargeLevel left = low.charge(Verdict.Kind.ADD).orElseThrow();

        assertThat(left.share() + 2 * left.standardUncertainty()).isLessThan(1);
        assertThat(left.standardUncertainty()).isLessThan(little.standardUncertainty());
        assertThat(low.charge(Verdict.Kind.RECOVER).orElseThrow().share()).isGreaterThan(1);
        assertThat(low.charge(Verdict.Kind.IN_TOLERANCE)).isEmpty();
    }

    @Test
    void an_uncertainty_below_zero_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Evidence(
                        Symptom.SUPERHEAT, TemperatureDifference.kelvins(1), TemperatureDifference.kelvins(-1)));
    }

    @Test
    void one_wild_reading_cannot_outvote_all_others() {
        Diagnosis diagnosis = fixedOrifice(
                deviation(Symptom.EVAPORATING_TEMPERATURE, -7),
                deviation(Symptom.SUPERHEAT, 13),
                deviation(Symptom.CONDENSING_TEMPERATURE, -7),
                deviation(Symptom.SUBCOOLING, -7),
                deviation(Symptom.DISCHARGE_TEMPERATURE, -150));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
    }

    private Diagnosis fixedOrifice(Evidence... evidence) {
        return diagnostician.diagnose(ChargeMethod.TOTAL_SUPERHEAT, List.of(evidence), Map.of());
    }

    private Diagnosis valve(Evidence... evidence) {
        return diagnostician.diagnose(ChargeMethod.SUBCOOLING, List.of(evidence), Map.of());
    }
}
