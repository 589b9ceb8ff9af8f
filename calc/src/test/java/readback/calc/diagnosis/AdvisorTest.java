package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Verdict;
import readback.calc.measurement.Known;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;

/** Whole readings of a R-410A system; what they mean follows Rossi and Braun 1997 and trade charts (from memory). */
class AdvisorTest {

    private static final Verdict OTHER_FAULT =
            new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.OTHER_FAULT_LEADS));

    private final Advisor advisor = new Advisor();

    @Test
    void the_worked_verdicts_stand_when_nothing_else_is_known() {
        assertThat(kind(pistonWithLineAt(52))).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(kind(pistonWithLineAt(62))).isEqualTo(Verdict.Kind.ADD);
        assertThat(kind(pistonWithLineAt(45))).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(advisor.advise(VALVE, valveWithLineAt(100))
                        .judgement()
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    @Test
    void low_suction_high_superheat_and_low_subcooling_are_an_undercharge_and_adding_is_right() {
        Advice advice = advisor.advise(PISTON, running(102, 62, 300, 95));

        assertThat(advice.diagnosis().leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(advice.judgement().verdict().kind()).isEqualTo(Verdict.Kind.ADD);
    }

    /** 98 psig of R-410A are below freezing: ice would show the same, so the undercharge stays a suspicion. */
    @Test
    void an_undercharge_that_cools_the_coil_below_freezing_is_not_acted_on() {
        Advice advice = advisor.advise(PISTON, running(98, 62, 300, 95));

        assertThat(advice.diagnosis().leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(advice.judgement().verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    @Test
    void ice_that_was_seen_silences_every_move() {
        for (double line : new double[] {45, 52, 62, 75}) {
            Verdict.Kind kind = advisor.advise(PISTON, pistonWithLineAt(line), Map.of(Finding.ICE_ON_COIL, true))
                    .judgement()
                    .verdict()
                    .kind();

            assertThat(kind).as("line %s", line).isIn(Verdict.Kind.NO_VALID_TEST, Verdict.Kind.DO_NOT_CHARGE);
        }
    }

    /** Rossi and Braun 1997. */
    @Test
    void with_high_subcooling_the_same_low_side_is_a_restriction_and_add_is_withheld() {
        Advice advice = advisor.advise(PISTON, running(98, 62, 340, 84));

        assertThat(advice.diagnosis().leader().fault()).isEqualTo(Fault.LIQUID_LINE_RESTRICTION);
        assertThat(advice.judgement().verdict()).isEqualTo(OTHER_FAULT);
        assertThat(advice.judgement().superheat()).isPresent();
    }

    @Test
    void a_valve_system_short_of_subcooling_is_not_charged_while_the_compressor_is_suspected() {
        Readings weak = valveWithLineAt(85)
                .with(reading(Quantity.LIQUID_PRESSURE, 265))
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, 84))
                .with(reading(Quantity.SUCTION_PRESSURE, 160))
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 62));

        Advice advice = advisor.advise(VALVE, weak);

        assertThat(advice.diagnosis().leader().fault()).isEqualTo(Fault.WEAK_COMPRESSOR);
        assertThat(advice.judgement().verdict()).isEqualTo(OTHER_FAULT);
    }

    @Test
    void recover_gives_way_only_to_a_fault_that_stands_out() {
        Readings flooding = pistonWithLineAt(45)
                .with(reading(Quantity.SUCTION_PRESSURE, 102))
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 36));

        assertThat(kind(flooding)).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(advisor.advise(PISTON, flooding, Map.of(Finding.FILTER_OR_INDOOR_COIL_DIRTY, true))
                        .judgement()
                        .verdict())
                .isEqualTo(OTHER_FAULT);
    }

    @Test
    void a_right_charge_stays_right_whatever_else_is_found() {
        Advice advice = advisor.advise(VALVE, valveWithLineAt(100), Map.of(Finding.SUCTION_SWINGS, true));

        assertThat(advice.judgement().verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** Air on the condenser 95 °F, condensing at 137 °F: far above the usual 12 to 30 °F over it. */
    @Test
    void condensing_far_above_the_outdoor_air_with_little_subcooling_is_condenser_air() {
        Advice advice = advisor.advise(
                PISTON, running(145, 60, 520, 132).with(reading(Quantity.DISCHARGE_LINE_TEMPERATURE, 225)));

        assertThat(advice.diagnosis().leader().fault()).isEqualTo(Fault.CONDENSER_AIR);
    }

    @Test
    void contradictory_readings_are_no_evidence() {
        Advice clean = advisor.advise(PISTON, running(118, 52, 365, 100));
        Advice contradictory = advisor.advise(PISTON, running(118, 30, 365, 100));

        assertThat(evidence(clean)).contains(Symptom.SUPERHEAT, Symptom.EVAPORATING_TEMPERATURE);
        assertThat(evidence(contradictory)).doesNotContain(Symptom.SUPERHEAT, Symptom.EVAPORATING_TEMPERATURE);
    }

    @Test
    void every_symptom_that_the_readings_give_is_weighed() {
        Readings all = running(80, 80, 520, 90)
                .with(reading(Quantity.DISCHARGE_LINE_TEMPERATURE, 250))
                .with(reading(Quantity.RETURN_DRY_BULB, 80))
                .with(reading(Quantity.SUPPLY_DRY_BULB, 76));

        assertThat(evidence(advisor.advise(PISTON, all)))
                .containsExactlyInAnyOrder(
                        Symptom.EVAPORATING_TEMPERATURE,
                        Symptom.SUPERHEAT,
                        Symptom.CONDENSING_TEMPERATURE,
                        Symptom.SUBCOOLING,
                        Symptom.DISCHARGE_TEMPERATURE,
                        Symptom.AIR_SPLIT);
    }

    @Test
    void what_to_observe_next_is_told_from_the_first_reading() {
        assertThat(advisor.advise(PISTON, pistonWithLineAt(62)).diagnosis().next())
                .hasValueSatisfying(next -> assertThat(next).isInstanceOf(NextObservation.Measure.class));
    }

    /** Undercharge and restriction differ in subcooling first of all: Rossi and Braun 1997. */
    @Test
    void between_undercharge_and_restriction_the_subcooling_is_asked_for() {
        assertThat(advisor.advise(PISTON, pistonWithLineAt(62).with(reading(Quantity.SUCTION_PRESSURE, 98)))
                        .diagnosis()
                        .next())
                .contains(new NextObservation.Measure(Symptom.SUBCOOLING, Symptom.SUBCOOLING.quantities()));
    }

    @Test
    void only_readings_not_taken_yet_are_asked_for() {
        Readings withLiquidPressure = pistonWithLineAt(62)
                .with(reading(Quantity.SUCTION_PRESSURE, 98))
                .with(reading(Quantity.LIQUID_PRESSURE, 320));

        assertThat(advisor.advise(PISTON, withLiquidPressure).diagnosis().next())
                .contains(new NextObservation.Measure(
                        Symptom.SUBCOOLING, java.util.List.of(Quantity.LIQUID_LINE_TEMPERATURE)));
    }

    /** Water freezes at 32 °F. */
    @Test
    void a_coil_above_freezing_is_not_suspected_of_ice_unless_ice_is_seen() {
        Diagnosis warm = advisor.advise(PISTON, pistonWithLineAt(45)).diagnosis();
        Diagnosis seen = advisor.advise(PISTON, pistonWithLineAt(45), Map.of(Finding.ICE_ON_COIL, true))
                .diagnosis();
        Diagnosis cold = advisor.advise(PISTON, pistonWithLineAt(35).with(reading(Quantity.SUCTION_PRESSURE, 95)))
                .diagnosis();

        assertThat(warm.suspects()).extracting(Suspect::fault).doesNotContain(Fault.FROZEN_COIL);
        assertThat(seen.leader().fault()).isEqualTo(Fault.FROZEN_COIL);
        assertThat(cold.probability(Fault.FROZEN_COIL)).isPositive();
        assertThat(warm.probability(Fault.FROZEN_COIL)).isZero();
    }

    /**
     * Deviations by hand, °F: coil 39.8 against 80 − 35 with 3.5; superheat 22.2 against 12.0 with 1.49 (instruments)
     * and 2.05 (target); condensing 109.7 − 95 against 21 with 4.5; subcooling 9.7 against 11 with 1.44 and 2.5;
     * discharge 170 − 109.7 against 60 with 12; split 80 − 60 against 18.3 with 1.5 and 1.8 √(2/3).
     */
    @Test
    void evidence_is_the_deviation_in_units_of_its_uncertainty() {
        Readings all = running(118, 62, 365, 100)
                .with(reading(Quantity.DISCHARGE_LINE_TEMPERATURE, 170))
                .with(reading(Quantity.RETURN_DRY_BULB, 80))
                .with(reading(Quantity.SUPPLY_DRY_BULB, 60));
        Map<Symptom, Double> deviations = deviations(PISTON, all);

        assertThat(deviations.get(Symptom.EVAPORATING_TEMPERATURE)).isCloseTo(-5.16 / 3.5, within(0.02));
        assertThat(deviations.get(Symptom.SUPERHEAT)).isCloseTo(10.16 / Math.hypot(1.49, 2.05), within(0.1));
        assertThat(deviations.get(Symptom.CONDENSING_TEMPERATURE)).isCloseTo(-6.29 / 4.5, within(0.02));
        assertThat(deviations.get(Symptom.SUBCOOLING)).isCloseTo(-1.29 / Math.hypot(1.44, 2.5), within(0.02));
        assertThat(deviations.get(Symptom.DISCHARGE_TEMPERATURE)).isCloseTo(0.29 / 12, within(0.01));
        assertThat(deviations.get(Symptom.AIR_SPLIT))
                .isCloseTo(1.7 / Math.hypot(1.5, 1.8 * Math.sqrt(2.0 / 3)), within(0.03));
    }

    /**
     * Coil 39.8 against 32 + 10 with 3; superheat 8.2 against 10 with 1.37 and 3; subcooling 9.7 against 10 with 1.5.
     */
    @Test
    void a_valve_system_is_held_against_its_plate_and_the_usual_valve_superheat() {
        Map<Symptom, Double> deviations = deviations(VALVE, valveWithLineAt(100));

        assertThat(deviations.get(Symptom.EVAPORATING_TEMPERATURE)).isCloseTo(-2.16 / 3, within(0.02));
        assertThat(deviations.get(Symptom.SUPERHEAT)).isCloseTo(-1.84 / Math.hypot(1.37, 3), within(0.02));
        assertThat(deviations.get(Symptom.SUBCOOLING)).isCloseTo(-0.29 / Math.hypot(1.32, 1.5), within(0.02));
    }

    private static Map<Symptom, Double> deviations(SystemUnderTest system, Readings readings) {
        Map<Symptom, Double> deviations = new java.util.EnumMap<>(Symptom.class);
        for (Evidence evidence : EvidenceFinder.evidence(system, readings, new ChargeJudge().judge(system, readings))) {
            deviations.put(evidence.symptom(), evidence.deviations());
        }
        return deviations;
    }

    private Verdict.Kind kind(Readings readings) {
        return advisor.advise(PISTON, readings).judgement().verdict().kind();
    }

    private static Set<Symptom> evidence(Advice advice) {
        Set<Symptom> symptoms = java.util.EnumSet.noneOf(Symptom.class);
        for (Suspect suspect : advice.diagnosis().suspects()) {
            for (java.util.List<Suspect.Clue> clues : java.util.List.of(suspect.supporting(), suspect.opposing())) {
                for (Suspect.Clue clue : clues) {
                    if (clue instanceof Suspect.Clue.Measured measured) {
                        symptoms.add(measured.evidence().symptom());
                    }
                }
            }
        }
        return symptoms;
    }

    private static Readings running(double suction, double suctionLine, double liquid, double liquidLine) {
        return Known.pistonWithLineAt(suctionLine)
                .with(reading(Quantity.SUCTION_PRESSURE, suction))
                .with(reading(Quantity.LIQUID_PRESSURE, liquid))
                .with(reading(Quantity.LIQUID_LINE_TEMPERATURE, liquidLine))
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, Math.min(95, liquidLine)));
    }
}
