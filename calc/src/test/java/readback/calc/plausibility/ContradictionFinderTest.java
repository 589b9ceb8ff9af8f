package readback.calc.plausibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import org.junit.jupiter.api.Test;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Known;
import readback.calc.plausibility.Contradiction.Kind;
import readback.calc.quantity.Quantity;

/** Readings that cannot all be true. The reasons are physics; allowances are common practice. */
class ContradictionFinderTest {

    private final ChargeJudge judge = new ChargeJudge();

    @Test
    void a_suction_line_far_colder_than_the_boiling_liquid_is_named_and_not_computed_with() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(33));

        Contradiction contradiction = only(judgement, Kind.SUCTION_LINE_COLDER_THAN_EVAPORATING);
        assertThat(contradiction.between())
                .containsExactly(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE);
        assertThat(judgement.superheat()).isEmpty();
        assertThat(judgement.verdict())
                .isInstanceOfSatisfying(
                        Verdict.NoValidTest.class,
                        verdict -> assertThat(verdict.contradictions()).containsExactly(contradiction));
    }

    @Test
    void the_compressor_is_protected_even_when_the_readings_contradict_each_other() {
        assertThat(judge.judge(PISTON, pistonWithLineAt(33)).cautions())
                .extracting(Caution::rule)
                .contains(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    @Test
    void a_suction_line_colder_by_less_than_the_uncertainty_is_not_a_contradiction() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(38));

        assertThat(judgement.contradictions()).isEmpty();
        assertThat(judgement.superheat().orElseThrow().value().fahrenheit()).isCloseTo(-1.8, within(0.2));
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
    }

    @Test
    void a_liquid_line_warmer_than_the_condensing_vapour_is_named() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(114));

        assertThat(only(judgement, Kind.LIQUID_LINE_WARMER_THAN_CONDENSING).by())
                .isPresent();
        assertThat(judgement.subcooling()).isEmpty();
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    @Test
    void the_amount_is_what_uncertainty_does_not_explain() {
        Estimate subcooling =
                judge.judge(VALVE, valveWithLineAt(100)).subcooling().orElseThrow();
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(114));

        assertThat(judgement.contradictions().get(0).by().orElseThrow().fahrenheit())
                .isCloseTo(
                        114
                                - Known.CONDENSING_AT_365
                                - subcooling.expandedUncertainty().fahrenheit(),
                        within(0.01));
    }

    @Test
    void a_wet_bulb_above_the_dry_bulb_takes_the_target_away() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RETURN_DRY_BULB, 66.5)));

        assertThat(only(judgement, Kind.WET_BULB_ABOVE_DRY_BULB)
                        .by()
                        .orElseThrow()
                        .fahrenheit())
                .isCloseTo(0.5, within(1e-9));
        assertThat(judgement.target()).isEmpty();
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    @Test
    void saturated_return_air_is_no_contradiction() {
        assertThat(judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RETURN_DRY_BULB, 67)))
                        .contradictions())
                .isEmpty();
    }

    @Test
    void a_liquid_pressure_below_the_suction_pressure_is_named() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.LIQUID_PRESSURE, 117)));

        assertThat(judgement.contradictions())
                .extracting(Contradiction::kind)
                .contains(Kind.LIQUID_PRESSURE_BELOW_SUCTION);
        assertThat(judgement.superheat()).isEmpty();
    }

    @Test
    void supply_air_warmer_than_return_air_is_named_and_leaves_the_superheat_alone() {
        Judgement judgement = judge.judge(
                PISTON,
                pistonWithLineAt(52)
                        .with(reading(Quantity.RETURN_DRY_BULB, 75))
                        .with(reading(Quantity.SUPPLY_DRY_BULB, 76)));

        only(judgement, Kind.SUPPLY_WARMER_THAN_RETURN);
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    @Test
    void a_liquid_line_more_than_three_degrees_below_the_outdoor_air_is_named() {
        Judgement within = judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 103)));
        Judgement beyond = judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 103.5)));

        assertThat(within.contradictions()).isEmpty();
        only(beyond, Kind.LIQUID_LINE_COLDER_THAN_OUTDOOR);
    }

    @Test
    void a_condenser_colder_than_the_outdoor_air_is_named() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(109).with(reading(Quantity.OUTDOOR_TEMPERATURE, 111)));

        only(judgement, Kind.CONDENSING_BELOW_OUTDOOR);
    }

    @Test
    void an_evaporator_warmer_than_the_return_air_is_named() {
        Judgement judgement = judge.judge(
                PISTON,
                pistonWithLineAt(92)
                        .with(reading(Quantity.SUCTION_PRESSURE, 240))
                        .with(reading(Quantity.RETURN_DRY_BULB, 75)));

        only(judgement, Kind.EVAPORATING_ABOVE_RETURN_AIR);
    }

    @Test
    void a_pressure_above_the_critical_point_has_no_saturation_temperature() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.LIQUID_PRESSURE, 720)));

        only(judgement, Kind.PRESSURE_BEYOND_SATURATION);
        assertThat(judgement.condensingSaturation()).isEmpty();
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    @Test
    void a_vacuum_deeper_than_the_air_pressure_is_impossible() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.SUCTION_PRESSURE, -15)));

        only(judgement, Kind.IMPOSSIBLE_READING);
        assertThat(judgement.evaporatingSaturation()).isEmpty();
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
    }

    @Test
    void a_contradiction_of_the_air_leaves_the_subcooling_verdict_alone() {
        Judgement judgement = judge.judge(
                VALVE,
                valveWithLineAt(100)
                        .with(reading(Quantity.RETURN_WET_BULB, 80))
                        .with(reading(Quantity.RETURN_DRY_BULB, 75)));

        assertThat(judgement.contradictions()).hasSize(1);
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** A slip, or liquid on its way: while it may be liquid, a right subcooling makes nothing right. */
    @Test
    void a_suction_line_colder_than_boiling_is_never_a_right_charge() {
        Judgement judgement =
                judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 30)));

        assertThat(judgement.contradictions()).hasSize(1);
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.DO_NOT_CHARGE);
        assertThat(judgement.valveCheck()).isEmpty();
    }

    private static Contradiction only(Judgement judgement, Kind kind) {
        assertThat(judgement.contradictions()).extracting(Contradiction::kind).containsExactly(kind);
        return judgement.contradictions().get(0);
    }
}
