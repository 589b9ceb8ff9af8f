package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** 98 psig of R-410A are below freezing: ice would show the same, so it is looked for before anything is done. */
    @Test
    void an_undercharge_that_cools_the_coil_below_freezing_is_acted_on_only_where_no_ice_was_found() {
        Readings low = running(98, 62, 300, 95);

        Advice before = advisor.advise(PISTON, low);
        Advice clear = advisor.advise(PISTON, low, Map.of(Finding.ICE_ON_COIL, false));
        Advice iced = advisor.advise(PISTON, low, Map.of(Finding.ICE_ON_COIL, true));

        assertThat(before.judgement().verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(before.due()).contains(new NextObservation.Look(Finding.ICE_ON_COIL));
        assertThat(clear.diagnosis().leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(clear.judgement().verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(iced.judgement().verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    /** High superheat with hardly any subcooling; Rossi and Braun 1997: too little charge, whatever the coil wears. */
    @Test
    void missing_charge_behind_the_ice_is_named_and_nothing_is_moved() {
        Readings empty = running(92, 78, 290, 93);

        Advice iced = advisor.advise(PISTON, empty, Map.of(Finding.ICE_ON_COIL, true));

        assertThat(iced.judgement().verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(iced.reservation().map(Suspect::fault)).contains(Fault.UNDERCHARGE);
    }

    /** Little superheat and much subcooling with ice: trade charts, from memory, name the air. */
    @Test
    void ice_for_want_of_air_is_not_called_missing_charge() {
        for (double line : new double[] {28, 34, 40}) {
            Advice iced = advisor.advise(PISTON, running(92, line, 330, 88), Map.of(Finding.ICE_ON_COIL, true));

            assertThat(iced.reservation().map(Suspect::fault))
                    .as("line %s", line)
                    .isNotEqualTo(Optional.of(Fault.UNDERCHARGE));
        }
    }

    /** Too little air makes a cold coil too, with little superheat and a large split: it never gets charge. */
    @Test
    void too_little_air_with_a_coil_below_freezing_gets_no_charge() {
        for (double line : new double[] {32, 36, 40, 50}) {
            Readings starved = running(95, line, 330, 98)
                    .with(reading(Quantity.RETURN_DRY_BULB, 80))
                    .with(reading(Quantity.SUPPLY_DRY_BULB, 56));
            for (Map<Finding, Boolean> findings : List.of(
                    Map.<Finding, Boolean>of(),
                    Map.of(Finding.ICE_ON_COIL, false),
                    Map.of(Finding.ICE_ON_COIL, false, Finding.FILTER_OR_INDOOR_COIL_DIRTY, false))) {
                assertThat(advisor.advise(PISTON, starved, findings)
                                .judgement()
                                .verdict()
                                .kind())
                        .as("line %s, %s", line, findings)
                        .isNotIn(Verdict.Kind.ADD, Verdict.Kind.RECOVER);
            }
        }
    }

    /**
     * A starving valve and a restriction hide each other: neither leads by far, together they are nearly certain.
     * Formerly the subcooling above target was answered with "recover".
     */
    @Test
    void two_rival_faults_that_are_not_the_charge_hold_back_a_move_together() {
        Readings starving = Known.valveWithSubcooling(15)
                .with(reading(Quantity.SUCTION_PRESSURE, 104))
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 64))
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, 90));

        Advice advice = advisor.advise(VALVE, starving);
        double other = advice.diagnosis().probability(Fault.VALVE_STARVING)
                + advice.diagnosis().probability(Fault.LIQUID_LINE_RESTRICTION);

        assertThat(advice.diagnosis().probability(Fault.VALVE_STARVING)).isLessThan(0.85);
        assertThat(other).isGreaterThan(0.9);
        assertThat(advice.judgement().verdict()).isEqualTo(OTHER_FAULT);
    }

    /** Trade charts, from memory: gas in the circuit looks like too much charge until the system rests. */
    @Test
    void before_refrigerant_is_recovered_gas_in_the_circuit_is_ruled_out() {
        Readings high = running(130, 50, 430, 104);

        Advice open = advisor.advise(PISTON, high);
        Advice gas = advisor.advise(PISTON, high, Map.of(Finding.RESTING_PRESSURE_ABOVE_SATURATION, true));

        assertThat(open.due()).isPresent();
        assertThat(gas.judgement().verdict()).isEqualTo(OTHER_FAULT);
    }

    @Test
    void what_the_technician_leaves_open_is_not_asked_again() {
        Readings low = pistonWithLineAt(62).with(reading(Quantity.SUCTION_PRESSURE, 104));
        NextObservation first = advisor.advise(PISTON, low).due().orElseThrow();
        Readings skipped = low;
        for (Quantity quantity : ((NextObservation.Measure) first).missing()) {
            skipped = skipped.withUnknown(quantity);
        }

        Advice second =
                advisor.advise(PISTON, skipped, Map.of(), EnumSet.allOf(Finding.class), Set.of(), Course.BEGINNING);

        assertThat(second.due()).isNotEqualTo(Optional.of(first));
        assertThat(second.due().filter(NextObservation.Look.class::isInstance)).isEmpty();
    }

    @Test
    void a_response_the_wrong_way_takes_the_move_back() {
        Readings low = running(102, 62, 300, 95);

        assertThat(kind(low)).isEqualTo(Verdict.Kind.ADD);
        assertThat(advisor.advise(PISTON, low, Map.of(), Set.of(), Set.of(), Course.CONTRARY)
                        .judgement()
                        .verdict())
                .isEqualTo(new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.CONTRARY_RESPONSE)));
    }

    /** Superheat 5 °F and a coil at 28 °F behind a valve whose subcooling is right. */
    @Test
    void a_right_charge_with_something_else_wrong_is_not_left_without_a_word() {
        Readings starved = valveWithLineAt(100)
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, 95))
                .with(reading(Quantity.SUCTION_PRESSURE, 103))
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 82));
        Advice advice = advisor.advise(VALVE, starved);
        Advice sound = advisor.advise(VALVE, valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 90)));

        assertThat(advice.judgement().verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(advice.reservation().orElseThrow().fault())
                .isIn(Fault.VALVE_STARVING, Fault.LIQUID_LINE_RESTRICTION);
        assertThat(advice.due()).isPresent();
        assertThat(sound.reservation()).isEmpty();
        assertThat(sound.due()).isEmpty();
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

    /** Little superheat from a starved coil is not too much charge, however much it floods. */
    @Test
    void a_flooding_compressor_alone_is_no_reason_to_recover() {
        Readings flooding = pistonWithLineAt(45)
                .with(reading(Quantity.SUCTION_PRESSURE, 102))
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 36));

        assertThat(kind(flooding)).isEqualTo(Verdict.Kind.DO_NOT_CHARGE);
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
     * Superheat 22.2 against 12.0 °F, with 1.37 °F (instruments) and 2.05 (target); split 80 − 60 against 18.3 °F, with
     * 1.8 √(2/3).
     */
    @Test
    void evidence_is_the_deviation_with_its_uncertainty() {
        Readings all = running(118, 62, 365, 100)
                .with(reading(Quantity.RETURN_DRY_BULB, 80))
                .with(reading(Quantity.SUPPLY_DRY_BULB, 60));
        Evidence superheat = evidence(PISTON, all, Symptom.SUPERHEAT);
        Evidence split = evidence(PISTON, all, Symptom.AIR_SPLIT);

        assertThat(superheat.deviation().fahrenheit()).isCloseTo(10.16, within(0.1));
        assertThat(superheat.uncertainty().fahrenheit()).isCloseTo(Math.hypot(1.37, 2.05), within(0.05));
        assertThat(split.deviation().fahrenheit()).isCloseTo(1.7, within(0.05));
        assertThat(split.uncertainty().fahrenheit()).isCloseTo(1.8 * Math.sqrt(2.0 / 3), within(0.01));
    }

    /** Subcooling 9.7 °F against a plate of 10, with 1.32 °F. */
    @Test
    void a_valve_system_is_held_against_its_plate() {
        Evidence subcooling = evidence(VALVE, valveWithLineAt(100), Symptom.SUBCOOLING);

        assertThat(subcooling.deviation().fahrenheit()).isCloseTo(-0.29, within(0.02));
        assertThat(subcooling.uncertainty().fahrenheit()).isCloseTo(1.32, within(0.02));
    }

    /** The error of one gauge moves the coil and the superheat against each other. */
    @Test
    void symptoms_share_the_error_of_their_gauge() {
        Readings readings = running(118, 62, 365, 100);
        Observed observed = EvidenceFinder.observed(PISTON, readings, new ChargeJudge().judge(PISTON, readings));
        int coil = Observed.index(Symptom.EVAPORATING_TEMPERATURE);
        int superheat = Observed.index(Symptom.SUPERHEAT);

        assertThat(observed.covariance()[coil][superheat]).isNegative();
        assertThat(observed.covariance()[superheat][coil]).isEqualTo(observed.covariance()[coil][superheat]);
    }

    /** The return air not read, the coil may be as it is for the weather. */
    @Test
    void weather_that_nobody_read_makes_expectations_uncertain() {
        Readings without = valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 90));
        Readings with = without.with(reading(Quantity.RETURN_WET_BULB, 67)).with(reading(Quantity.RETURN_DRY_BULB, 80));

        assertThat(evidence(VALVE, without, Symptom.EVAPORATING_TEMPERATURE).uncertainty())
                .isGreaterThan(
                        evidence(VALVE, with, Symptom.EVAPORATING_TEMPERATURE).uncertainty());
    }

    private static Evidence evidence(SystemUnderTest system, Readings readings, Symptom symptom) {
        return EvidenceFinder.observed(system, readings, new ChargeJudge().judge(system, readings)).evidence().stream()
                .filter(each -> each.symptom() == symptom)
                .findFirst()
                .orElseThrow();
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

    @Test
    void with_a_restrictor_no_fault_is_read_from_pressures_that_are_held_by_hand() {
        SystemUnderTest restricted = VALVE.withCondenserRestricted();
        Readings readings = Readings.of(
                reading(Quantity.OUTDOOR_TEMPERATURE, 45),
                reading(Quantity.LIQUID_PRESSURE, 318),
                reading(Quantity.LIQUID_LINE_TEMPERATURE, 99),
                reading(Quantity.PLATE_SUBCOOLING, 10),
                reading(Quantity.SUCTION_PRESSURE, 118),
                reading(Quantity.SUCTION_LINE_TEMPERATURE, 52));

        Advice advice = advisor.advise(restricted, readings);

        assertThat(advice.judgement().verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(advice.due()).isEmpty();
        assertThat(advice.reservation()).isEmpty();
        assertThat(advice.diagnosis().certainty()).isEqualTo(Diagnosis.Certainty.TOO_LITTLE_EVIDENCE);
    }
}
