package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;
import static readback.calc.measurement.Known.valveWithSubcooling;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.fact.FactTable;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Known;
import readback.calc.measurement.Limits;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.TargetSource;

/**
 * Worked cases. Saturation from a printed R-410A pressure-temperature table (40 °F at 118.0 psig, 110 °F at 365.0
 * psig), which lies up to 0.3 °F from the equation of Lemmon 2003 used here; targets and limits from California Energy
 * Commission RA3.2.
 */
class ChargeJudgeTest {

    private static final double TABLE = 0.3;

    private final ChargeJudge judge = new ChargeJudge();

    /** RA3.2-2 (recalled) and the R-410A table; the published grid gives 10 at 66 and 14 at 68 °F wet bulb. */
    /** 118 psig is 40 °F, 130 psig 45 °F: from the first a hunting valve may take the coil down to freezing. Ours. */
    @ParameterizedTest
    @CsvSource({"118, true, true", "118, false, false", "130, true, false"})
    void a_coil_whose_pressure_swings_may_freeze_though_one_reading_does_not_show_it(
            double suction, boolean swings, boolean warned) {
        Judgement judgement = judge.judge(
                VALVE,
                valveWithLineAt(100).with(reading(Quantity.SUCTION_PRESSURE, suction)),
                Set.of(),
                new Seen(false, swings));

        assertThat(judgement.cautions().stream().anyMatch(each -> each.rule() == CautionRule.COIL_BELOW_FREEZING))
                .isEqualTo(warned);
    }

    @Test
    void twelve_degrees_of_superheat_for_a_target_of_twelve_is_in_tolerance() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52));

        assertThat(judgement.evaporatingSaturation().orElseThrow().fahrenheit()).isCloseTo(40.0, within(TABLE));
        assertThat(fahrenheit(judgement.superheat().orElseThrow())).isCloseTo(12.0, within(TABLE));
        assertThat(judgement.target().orElseThrow().value().fahrenheit()).isCloseTo(12.0, within(1e-6));
        assertThat(judgement.target().orElseThrow().source()).isEqualTo(TargetSource.CHARGING_TABLE);
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(judgement.verdict().borderline()).isFalse();
        assertThat(judgement.cautions()).isEmpty();
        assertThat(judgement.missing()).isEmpty();
    }

    /** RA3.2.2.6.1. */
    @Test
    void ten_degrees_above_the_target_means_add() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(62));

        assertThat(deviation(judgement)).isCloseTo(10.0, within(TABLE));
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(judgement.verdict().borderline()).isFalse();
    }

    /**
     * RA3.2.2.6.1. Five degrees and a little are left: no alarm yet. Two degrees beyond the limit are within what a wet
     * bulb good to 1.8 °F leaves open at 1.9 °F of target a degree; with it and the clamp good to half a degree it is
     * decided (JCGM 106, 90 %).
     */
    @Test
    void seven_degrees_below_the_target_means_recover() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(45));

        assertThat(deviation(judgement)).isCloseTo(-7.0, within(TABLE));
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(judgement.verdict().borderline()).isTrue();
        assertThat(judge.judge(
                                PISTON.measuredWith(InstrumentAccuracy.STANDARD
                                        .withWetBulbProbe(TemperatureDifference.fahrenheit(0.5))
                                        .withLineProbes(TemperatureDifference.fahrenheit(0.5))),
                                pistonWithLineAt(45))
                        .verdict()
                        .borderline())
                .isFalse();
        assertThat(judgement.cautions()).extracting(Caution::rule).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    /** 118 psig is known to 0.9 °F and the line to 1.04 °F: 1.4 °F in all over the floor of 5 °F is no alarm. */
    @Test
    void superheat_that_is_surely_enough_gives_no_alarm() {
        assertThat(judge.judge(PISTON, pistonWithLineAt(Known.EVAPORATING_AT_118 + 6.5))
                        .cautions())
                .isEmpty();
        assertThat(judge.judge(PISTON, pistonWithLineAt(Known.EVAPORATING_AT_118 + 6))
                        .cautions())
                .extracting(Caution::rule)
                .containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    /** The floor of 5 °F at the service port stands in equipment installation manuals; recovering raises superheat. */
    @Test
    void far_below_the_target_it_is_recover_and_an_alarm() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(44.5));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(judgement.cautions()).extracting(Caution::rule).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    /** 118 psig is 39.8 °F; wet bulb 67 and outdoor 106 °F make a target of 7 °F or so (RA3.2, recalled). */
    @Test
    void a_flooding_compressor_is_never_right_though_its_superheat_is_within_the_limits() {
        Readings hot = pistonWithLineAt(42).with(reading(Quantity.OUTDOOR_TEMPERATURE, 106));

        Judgement judgement = judge.judge(PISTON, hot);

        assertThat(fahrenheit(judgement.superheat().orElseThrow())
                        - judgement.target().orElseThrow().value().fahrenheit())
                .isBetween(-5.0, 0.0);
        assertThat(judgement.verdict())
                .isEqualTo(new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.LIQUID_AT_COMPRESSOR)));
        assertThat(judgement.cautions()).extracting(Caution::rule).containsExactly(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    /**
     * RA3.2.2.6.2, step 9: from 4 °F on a valve holds; below, and with a line colder than boiling, it does not. The
     * compressor is warned of as behind an orifice: below the floor of 5 °F, or so near to it that it may lie below.
     */
    @ParameterizedTest
    @CsvSource({"7, false, false", "4.9, false, true", "4.1, false, true", "3.8, true, true", "-12, true, true"})
    void a_valve_below_its_range_floods_and_the_alarm_begins_before(double superheat, boolean floods, boolean alarm) {
        for (double subcooling : new double[] {5, 10}) {
            Judgement judgement = judge.judge(
                    VALVE,
                    valveWithSubcooling(subcooling)
                            .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, Known.EVAPORATING_AT_118 + superheat)));

            assertThat(judgement.verdict().kind() == Verdict.Kind.DO_NOT_CHARGE).isEqualTo(floods);
            assertThat(judgement.cautions().stream()
                            .anyMatch(caution -> caution.rule() == CautionRule.LIQUID_AT_COMPRESSOR))
                    .isEqualTo(alarm);
        }
    }

    /** R-410A has no saturation above 0.985 of 344.5 K (Lemmon 2003), some 620 psig; the hose is no safer for that. */
    @Test
    void a_liquid_pressure_without_saturation_is_warned_of() {
        for (double psig : new double[] {610, 640, 700, 800}) {
            Judgement judgement =
                    judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.LIQUID_PRESSURE, psig)));

            assertThat(judgement.cautions())
                    .as("%s psig", psig)
                    .extracting(Caution::rule)
                    .contains(CautionRule.NEAR_HIGH_PRESSURE_CUT_OUT);
        }
    }

    @Test
    void a_suction_pressure_without_saturation_beside_a_cold_line_is_liquid() {
        assertThat(judge.judge(PISTON, pistonWithLineAt(60).with(reading(Quantity.SUCTION_PRESSURE, 700)))
                        .cautions())
                .extracting(Caution::rule)
                .contains(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    /** RA3.2.2.6.1: limits 5 and 6 °F. */
    @Test
    void a_superheat_five_and_a_half_above_the_target_fails_the_installer_and_passes_the_verifier() {
        Readings readings = pistonWithLineAt(Known.EVAPORATING_AT_118 + 17.5);

        assertThat(judge.judge(PISTON, readings).verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(judge.judge(PISTON.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** RA3.2.2.6.2. */
    @Test
    void ten_degrees_of_subcooling_for_a_plate_of_ten_is_right_and_the_valve_holds() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100));

        assertThat(judgement.condensingSaturation().orElseThrow().fahrenheit()).isCloseTo(110.0, within(TABLE));
        assertThat(fahrenheit(judgement.subcooling().orElseThrow())).isCloseTo(10.0, within(TABLE));
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(judgement.verdict().borderline()).isFalse();
        assertThat(judgement.valveCheck().orElseThrow().superheat().position()).isEqualTo(Comparison.Position.INSIDE);
        assertThat(judgement.cautions()).isEmpty();
    }

    /** RA3.2.2.6.2; the verifier's limit of 4 °F from memory. */
    @Test
    void subcooling_four_below_the_plate_fails_the_installer_and_just_passes_the_verifier() {
        Readings readings = valveWithSubcooling(6);

        assertThat(judge.judge(VALVE, readings).verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(judge.judge(VALVE, readings).verdict().borderline()).isTrue();
        assertThat(judge.judge(VALVE.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** RA3.2.2.6.2; the verifier's limit of 4 °F from memory. */
    @Test
    void subcooling_four_and_a_half_above_the_plate_fails_both() {
        Readings readings = valveWithSubcooling(14.5);

        assertThat(judge.judge(VALVE, readings).verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(judge.judge(VALVE.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.RECOVER);
    }

    /** RA3.2.2.6.2, step 9: 25 and 26 °F. */
    @Test
    void a_valve_with_28_degrees_of_superheat_fails_while_the_charge_passes() {
        Readings readings =
                valveWithLineAt(100).with(reading(Quantity.SUCTION_LINE_TEMPERATURE, Known.EVAPORATING_AT_118 + 28));

        Judgement judgement = judge.judge(VALVE.judgedBy(Limits.INDEPENDENT_VERIFIER), readings);

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(judgement.valveCheck().orElseThrow().superheat().position()).isEqualTo(Comparison.Position.ABOVE);
    }

    /** RA3.2.2.6.2, step 9: 4 °F for the installer, 3 °F for the verifier. */
    @Test
    void a_valve_with_three_and_a_half_degrees_fails_the_installer_and_passes_the_verifier() {
        Readings readings =
                valveWithLineAt(100).with(reading(Quantity.SUCTION_LINE_TEMPERATURE, Known.EVAPORATING_AT_118 + 3.5));

        assertThat(judge.judge(VALVE, readings)
                        .valveCheck()
                        .orElseThrow()
                        .superheat()
                        .position())
                .isEqualTo(Comparison.Position.BELOW);
        assertThat(judge.judge(VALVE.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                        .valveCheck()
                        .orElseThrow()
                        .superheat()
                        .position())
                .isEqualTo(Comparison.Position.INSIDE);
    }

    @Test
    void nothing_read_yet_names_what_is_missing() {
        Judgement judgement = judge.judge(PISTON, Readings.none());

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.INCOMPLETE);
        assertThat(judgement.missing())
                .containsExactly(
                        Quantity.SUCTION_PRESSURE,
                        Quantity.SUCTION_LINE_TEMPERATURE,
                        Quantity.OUTDOOR_TEMPERATURE,
                        Quantity.RETURN_WET_BULB);
    }

    @Test
    void only_a_comparison_can_be_borderline() {
        assertThat(judge.judge(PISTON, Readings.none()).verdict().borderline()).isFalse();
        assertThat(new Verdict.DoNotCharge(java.util.Set.of()).borderline()).isFalse();
    }

    @Test
    void another_verdict_leaves_everything_else_as_it_was() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(62));
        Verdict other = new Verdict.DoNotCharge(java.util.Set.of(Verdict.DoNotCharge.Reason.OTHER_FAULT_LEADS));

        assertThat(judgement.withVerdict(other).verdict()).isEqualTo(other);
        assertThat(judgement.withVerdict(other).withVerdict(judgement.verdict()))
                .isEqualTo(judgement);
    }

    @Test
    void a_fact_file_that_is_not_there_is_a_broken_build() {
        org.assertj.core.api.Assertions.assertThatIllegalStateException()
                .isThrownBy(() -> FactTable.lines(ChargeJudgeTest.class, "nothing.txt"))
                .withMessageContaining("nothing.txt");
    }

    private static double fahrenheit(Estimate estimate) {
        return estimate.value().fahrenheit();
    }

    private static double deviation(Judgement judgement) {
        TemperatureDifference deviation =
                ((Verdict.Compared) judgement.verdict()).deviation().value();
        return deviation.fahrenheit();
    }
}
