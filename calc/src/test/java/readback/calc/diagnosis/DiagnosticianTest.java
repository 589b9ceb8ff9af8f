package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.ChargeMethod;

class DiagnosticianTest {

    private static final List<Symptom> COLUMNS = List.of(
            Symptom.EVAPORATING_TEMPERATURE,
            Symptom.SUPERHEAT,
            Symptom.CONDENSING_TEMPERATURE,
            Symptom.SUBCOOLING,
            Symptom.DISCHARGE_TEMPERATURE,
            Symptom.CONDENSER_AIR_RISE,
            Symptom.AIR_SPLIT);

    private final Diagnostician diagnostician = new Diagnostician();

    /**
     * Rossi and Braun, A statistical, rule-based fault detection and diagnostic method for vapor compression air
     * conditioners, HVAC&R Research 3(1), 1997: the sign table for a fixed-orifice unit.
     */
    @ParameterizedTest
    @CsvSource({
        "UNDERCHARGE,             -, +, -, -, +, -, -",
        "WEAK_COMPRESSOR,         +, -, -, -, -, -, -",
        "LIQUID_LINE_RESTRICTION, -, +, -, +, +, -, -",
        "CONDENSER_AIR,           +, -, +, -, +, +, -",
        "LOW_INDOOR_AIRFLOW,      -, -, -, -, -, -, +",
    })
    void each_pattern_of_the_sign_table_ranks_its_own_fault_first(
            Fault fault,
            String evaporating,
            String superheat,
            String condensing,
            String subcooling,
            String discharge,
            String condenserAir,
            String split) {
        String[] signs = {evaporating, superheat, condensing, subcooling, discharge, condenserAir, split};
        for (double size : new double[] {1.5, 2, 3, 4.5}) {
            List<Evidence> evidence = new ArrayList<>();
            for (int i = 0; i < signs.length; i++) {
                evidence.add(new Evidence(COLUMNS.get(i), signs[i].equals("+") ? size : -size));
            }

            Diagnosis diagnosis = diagnostician.diagnose(ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of());

            assertThat(diagnosis.leader().fault()).as("size %s", size).isEqualTo(fault);
            if (size >= 2) {
                assertThat(diagnosis.certainty()).as("size %s", size).isEqualTo(Diagnosis.Certainty.CLEAR);
            }
        }
    }

    /** Rossi and Braun 1997: the sign of subcooling separates a restriction from an undercharge. */
    @Test
    void high_superheat_with_high_subcooling_and_low_suction_is_a_restriction_and_not_an_undercharge() {
        Diagnosis diagnosis = fixedOrifice(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -3),
                new Evidence(Symptom.SUPERHEAT, 3),
                new Evidence(Symptom.SUBCOOLING, 3));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.LIQUID_LINE_RESTRICTION);
        assertThat(diagnosis.probability(Fault.UNDERCHARGE)).isLessThan(0.1);
    }

    /** Rossi and Braun 1997: low indoor air is the only fault that raises the air split. */
    @Test
    void low_superheat_with_low_suction_and_high_split_is_low_airflow() {
        Diagnosis diagnosis = fixedOrifice(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -3),
                new Evidence(Symptom.SUPERHEAT, -3),
                new Evidence(Symptom.AIR_SPLIT, 3));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.LOW_INDOOR_AIRFLOW);
        assertThat(diagnosis.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    /** Rossi and Braun 1997: a leaking compressor is the only fault with suction up and condensing down. */
    @Test
    void high_suction_with_low_head_is_a_weak_compressor() {
        for (ChargeMethod method : ChargeMethod.values()) {
            Diagnosis diagnosis = diagnostician.diagnose(
                    method,
                    List.of(
                            new Evidence(Symptom.EVAPORATING_TEMPERATURE, 3),
                            new Evidence(Symptom.CONDENSING_TEMPERATURE, -3)),
                    Map.of());

            assertThat(diagnosis.leader().fault()).as("%s", method).isEqualTo(Fault.WEAK_COMPRESSOR);
        }
    }

    /** Trade charts, from memory: the resting-pressure test decides between these two. */
    @Test
    void overcharge_and_air_in_a_valve_system_look_alike_until_it_rests() {
        List<Evidence> evidence = List.of(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, 0.5),
                new Evidence(Symptom.SUPERHEAT, 0),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, 3),
                new Evidence(Symptom.SUBCOOLING, 3),
                new Evidence(Symptom.DISCHARGE_TEMPERATURE, 2),
                new Evidence(Symptom.AIR_SPLIT, -0.5));

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
    void a_starving_valve_and_a_restriction_are_told_apart_by_the_liquid_line() {
        List<Evidence> evidence = List.of(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -3),
                new Evidence(Symptom.SUPERHEAT, 3),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, -1),
                new Evidence(Symptom.SUBCOOLING, 3));

        Diagnosis open = diagnostician.diagnose(ChargeMethod.SUBCOOLING, evidence, Map.of());
        Diagnosis dropFound = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING, evidence, Map.of(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE, true));
        Diagnosis bulbDead = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING,
                evidence,
                Map.of(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE, false, Finding.VALVE_ANSWERS_TO_BULB, false));

        assertThat(open.certainty()).isEqualTo(Diagnosis.Certainty.AMBIGUOUS);
        assertThat(open.next()).contains(new NextObservation.Look(Finding.TEMPERATURE_DROP_IN_LIQUID_LINE));
        assertThat(dropFound.leader().fault()).isEqualTo(Fault.LIQUID_LINE_RESTRICTION);
        assertThat(bulbDead.leader().fault()).isEqualTo(Fault.VALVE_STARVING);
    }

    /** Trade charts, from memory. */
    @Test
    void a_valve_that_floods_with_high_suction_is_stuck_open() {
        Diagnosis diagnosis = valve(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, 2.5),
                new Evidence(Symptom.SUPERHEAT, -3),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, 1),
                new Evidence(Symptom.SUBCOOLING, -0.5));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.VALVE_STUCK_OPEN);
    }

    /** ASHRAE RP-1173, as an ORNL literature survey tells it: the valve hides the loss until it is wide open. */
    @Test
    void an_undercharged_valve_system_shows_low_subcooling_first_and_high_superheat_later() {
        Diagnosis moderate = valve(
                new Evidence(Symptom.SUPERHEAT, 0.2),
                new Evidence(Symptom.SUBCOOLING, -3),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, -1.5));
        Diagnosis severe = valve(
                new Evidence(Symptom.SUPERHEAT, 4),
                new Evidence(Symptom.SUBCOOLING, -4),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, -2));

        assertThat(moderate.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(severe.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(severe.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    @Test
    void an_oversized_orifice_is_suspected_with_the_weak_compressor_and_settled_by_a_look() {
        List<Evidence> evidence = List.of(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, 3),
                new Evidence(Symptom.SUPERHEAT, -3),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, -0.5),
                new Evidence(Symptom.SUBCOOLING, -2));

        Diagnosis seen = diagnostician.diagnose(
                ChargeMethod.TOTAL_SUPERHEAT, evidence, Map.of(Finding.ORIFICE_DIFFERS_FROM_PLATE, true));

        assertThat(fixedOrifice(evidence.toArray(new Evidence[0])).suspects().subList(0, 3))
                .extracting(Suspect::fault)
                .contains(Fault.WRONG_OR_UNSEATED_ORIFICE, Fault.WEAK_COMPRESSOR);
        assertThat(seen.leader().fault()).isEqualTo(Fault.WRONG_OR_UNSEATED_ORIFICE);
        assertThat(seen.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
    }

    @Test
    void everything_as_expected_means_nothing_is_wrong() {
        for (ChargeMethod method : ChargeMethod.values()) {
            List<Evidence> evidence = new ArrayList<>();
            for (Symptom symptom : Symptom.values()) {
                evidence.add(new Evidence(symptom, 0.3));
            }

            Diagnosis diagnosis = diagnostician.diagnose(
                    method,
                    evidence,
                    method == ChargeMethod.SUBCOOLING ? Map.of(Finding.SUCTION_SWINGS, false) : Map.of());

            assertThat(diagnosis.leader().fault()).as("%s", method).isEqualTo(Fault.NONE);
            assertThat(diagnosis.certainty()).isEqualTo(Diagnosis.Certainty.CLEAR);
        }
    }

    @Test
    void a_swinging_suction_with_normal_means_is_a_hunting_valve() {
        Diagnosis diagnosis = diagnostician.diagnose(
                ChargeMethod.SUBCOOLING,
                List.of(
                        new Evidence(Symptom.EVAPORATING_TEMPERATURE, 0.2),
                        new Evidence(Symptom.SUPERHEAT, 1.5),
                        new Evidence(Symptom.SUBCOOLING, 0)),
                Map.of(Finding.SUCTION_SWINGS, true));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.HUNTING);
    }

    @Test
    void ice_on_the_coil_leads_to_thawing_before_anything_else() {
        for (ChargeMethod method : ChargeMethod.values()) {
            Diagnosis diagnosis = diagnostician.diagnose(
                    method,
                    List.of(new Evidence(Symptom.EVAPORATING_TEMPERATURE, -4), new Evidence(Symptom.SUPERHEAT, -2)),
                    Map.of(Finding.ICE_ON_COIL, true));

            assertThat(diagnosis.leader().fault()).as("%s", method).isEqualTo(Fault.FROZEN_COIL);
        }
    }

    @Test
    void one_piece_of_evidence_is_too_little() {
        assertThat(fixedOrifice(new Evidence(Symptom.SUPERHEAT, 5)).certainty())
                .isEqualTo(Diagnosis.Certainty.TOO_LITTLE_EVIDENCE);
        assertThat(fixedOrifice().certainty()).isEqualTo(Diagnosis.Certainty.TOO_LITTLE_EVIDENCE);
    }

    @Test
    void probabilities_sum_to_one_over_every_fault_of_the_metering_family() {
        Diagnosis diagnosis = valve(new Evidence(Symptom.SUPERHEAT, 2), new Evidence(Symptom.SUBCOOLING, -2));

        assertThat(diagnosis.suspects().stream()
                        .mapToDouble(Suspect::probability)
                        .sum())
                .isCloseTo(1, within(1e-12));
        assertThat(diagnosis.suspects())
                .extracting(Suspect::fault)
                .doesNotHaveDuplicates()
                .contains(Fault.VALVE_STARVING, Fault.VALVE_STUCK_OPEN, Fault.HUNTING)
                .doesNotContain(Fault.WRONG_OR_UNSEATED_ORIFICE);
    }

    @Test
    void evidence_for_and_against_each_suspect_is_told_the_strongest_first() {
        Diagnosis diagnosis = fixedOrifice(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -3),
                new Evidence(Symptom.SUPERHEAT, 3),
                new Evidence(Symptom.SUBCOOLING, 3));
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
        assertThat(diagnosis.leader().supporting())
                .hasSize(3)
                .isSortedAccordingTo((a, b) -> Double.compare(b.weight(), a.weight()));
        assertThat(diagnosis.leader().opposing()).isEmpty();
    }

    /** Bayes' rule by hand: percent yes of the finding, doubled against an even chance. */
    @Test
    void a_finding_weighs_by_how_much_likelier_it_is_with_the_fault() {
        Diagnosis diagnosis = diagnostician.diagnose(
                ChargeMethod.TOTAL_SUPERHEAT,
                List.of(new Evidence(Symptom.SUPERHEAT, -2)),
                Map.of(Finding.FILTER_OR_INDOOR_COIL_DIRTY, true));
        Suspect airflow = diagnosis.leader();
        Suspect overcharge = diagnosis.suspects().stream()
                .filter(suspect -> suspect.fault() == Fault.OVERCHARGE)
                .findFirst()
                .orElseThrow();

        assertThat(airflow.fault()).isEqualTo(Fault.LOW_INDOOR_AIRFLOW);
        assertThat(airflow.supporting())
                .filteredOn(Suspect.Clue.Seen.class::isInstance)
                .singleElement()
                .satisfies(clue -> assertThat(clue.weight()).isCloseTo(Math.log(2 * 0.8), within(1e-12)));
        assertThat(overcharge.opposing())
                .filteredOn(Suspect.Clue.Seen.class::isInstance)
                .singleElement()
                .satisfies(clue -> assertThat(clue.weight()).isCloseTo(Math.log(2 * 0.15), within(1e-12)));
    }

    @Test
    void clues_are_told_in_the_order_of_their_weight() {
        Diagnosis diagnosis = fixedOrifice(
                new Evidence(Symptom.CONDENSING_TEMPERATURE, 0.5),
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -1),
                new Evidence(Symptom.SUPERHEAT, -4),
                new Evidence(Symptom.SUBCOOLING, 2),
                new Evidence(Symptom.AIR_SPLIT, 3));
        for (Suspect suspect : diagnosis.suspects()) {
            assertThat(suspect.supporting()).isSortedAccordingTo((a, b) -> Double.compare(b.weight(), a.weight()));
            assertThat(suspect.opposing()).isSortedAccordingTo((a, b) -> Double.compare(a.weight(), b.weight()));
            assertThat(suspect.supporting())
                    .allSatisfy(clue -> assertThat(clue.weight()).isPositive());
            assertThat(suspect.opposing())
                    .allSatisfy(clue -> assertThat(clue.weight()).isNegative());
        }
    }

    @Test
    void evidence_that_is_no_number_is_refused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException()
                .isThrownBy(() -> new Evidence(Symptom.SUPERHEAT, Double.NaN));
    }

    @Test
    void a_sign_that_the_patterns_do_not_know_is_a_broken_build() {
        org.assertj.core.api.Assertions.assertThatIllegalStateException().isThrownBy(() -> Expected.of("x"));
        assertThat(Expected.of("-0")).isEqualTo(Expected.BELOW_OR_UNMOVED);
    }

    /** A probability density has the area one; beyond the reach it stays level. */
    @Test
    void every_expectation_is_a_density() {
        for (Expected expected : Expected.values()) {
            double area = 0;
            for (int i = 0; i < 2000; i++) {
                area += expected.density(-Expected.REACH + (i + 0.5) * Expected.REACH / 1000) * Expected.REACH / 1000;
            }
            // the tail of a fault as large as the reach is cut off
            assertThat(area).as("%s", expected).isBetween(0.89, 1.0001);
            assertThat(expected.density(40)).isEqualTo(expected.density(Expected.REACH));
            assertThat(expected.density(-40)).isEqualTo(expected.density(-Expected.REACH));
        }
    }

    @Test
    void one_wild_reading_cannot_outvote_all_others() {
        Diagnosis diagnosis = fixedOrifice(
                new Evidence(Symptom.EVAPORATING_TEMPERATURE, -3),
                new Evidence(Symptom.SUPERHEAT, 3),
                new Evidence(Symptom.CONDENSING_TEMPERATURE, -3),
                new Evidence(Symptom.SUBCOOLING, -3),
                new Evidence(Symptom.DISCHARGE_TEMPERATURE, -40));

        assertThat(diagnosis.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
    }

    private Diagnosis fixedOrifice(Evidence... evidence) {
        return diagnostician.diagnose(ChargeMethod.TOTAL_SUPERHEAT, List.of(evidence), Map.of());
    }

    private Diagnosis valve(Evidence... evidence) {
        return diagnostician.diagnose(ChargeMethod.SUBCOOLING, List.of(evidence), Map.of());
    }
}
