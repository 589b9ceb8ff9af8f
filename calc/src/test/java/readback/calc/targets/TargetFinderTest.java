package readback.calc.targets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;
import static readback.calc.measurement.Known.valveWithSubcooling;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.ValveCheck;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Instrument;
import readback.calc.measurement.Known;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;

class TargetFinderTest {

    private final ChargeJudge judge = new ChargeJudge();

    @Test
    void a_missing_plate_value_is_asked_for() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100).without(Quantity.PLATE_SUBCOOLING));

        assertThat(judgement.missing()).containsExactly(Quantity.PLATE_SUBCOOLING);
        assertThat(judgement.target()).isEmpty();
        assertThat(judgement.verdict()).isEqualTo(new Verdict.Incomplete(judgement.missing()));
    }

    /** 8 to 14 °F: common practice, no source. */
    @Test
    void a_plate_that_cannot_be_read_gives_way_to_common_practice_and_says_so() {
        Judgement low = judge.judge(VALVE, valveWithSubcooling(7.8).withUnknown(Quantity.PLATE_SUBCOOLING));
        Judgement right = judge.judge(VALVE, valveWithSubcooling(8.1).withUnknown(Quantity.PLATE_SUBCOOLING));
        Judgement high = judge.judge(VALVE, valveWithSubcooling(14.2).withUnknown(Quantity.PLATE_SUBCOOLING));

        assertThat(right.target().orElseThrow().source()).isEqualTo(TargetSource.COMMON_PRACTICE);
        assertThat(low.verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(right.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(high.verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
    }

    /** California Energy Commission RA3.2: the maker's own instructions come first. */
    @Test
    void the_makers_superheat_comes_before_the_table() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.PLATE_SUPERHEAT, 18)));

        assertThat(judgement.target().orElseThrow().source()).isEqualTo(TargetSource.RATING_PLATE);
        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
    }

    @Test
    void the_makers_superheat_needs_no_weather() {
        Judgement judgement = judge.judge(
                PISTON,
                pistonWithLineAt(52)
                        .with(reading(Quantity.PLATE_SUPERHEAT, 12))
                        .without(Quantity.RETURN_WET_BULB)
                        .without(Quantity.OUTDOOR_TEMPERATURE));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    @Test
    void the_makers_valve_superheat_comes_before_the_general_limits() {
        Readings eight = valveWithLineAt(100);

        ValveCheck general = judge.judge(VALVE, eight).valveCheck().orElseThrow();
        ValveCheck byPlate = judge.judge(VALVE, eight.with(reading(Quantity.PLATE_SUPERHEAT, 14)))
                .valveCheck()
                .orElseThrow();

        assertThat(general.source()).isEqualTo(ValveCheck.Source.GENERAL_LIMITS);
        assertThat(general.superheat().position()).isEqualTo(Comparison.Position.INSIDE);
        assertThat(byPlate.source()).isEqualTo(ValveCheck.Source.MAKER);
        assertThat(byPlate.superheat().limits()).isEqualTo(Band.fahrenheit(9, 19));
        assertThat(byPlate.superheat().position()).isEqualTo(Comparison.Position.BELOW);
    }

    /** JCGM 100: 1.8/√3 °F of wet bulb at 1.95 °F a degree and of outdoor air at 0.55 °F a degree around 67/95. */
    @Test
    void a_table_target_carries_the_uncertainty_of_the_weather_it_was_read_with() {
        Target table = judge.judge(PISTON, pistonWithLineAt(52)).target().orElseThrow();
        Target plate = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.PLATE_SUPERHEAT, 12)))
                .target()
                .orElseThrow();

        double probe = 1.8 / Math.sqrt(3);
        assertThat(table.standardUncertainty().fahrenheit())
                .isCloseTo(Math.hypot(1.9 * probe, 0.5 * probe), within(0.15));
        assertThat(plate.standardUncertainty().kelvins()).isZero();
    }

    @Test
    void an_expansion_valve_is_never_judged_by_superheat_nor_an_orifice_by_subcooling() {
        for (MeteringDevice device : MeteringDevice.values()) {
            ChargeMethod method = judge.judge(SystemUnderTest.of(Known.R410A, device), Readings.none())
                    .method();
            boolean orifice = device == MeteringDevice.PISTON || device == MeteringDevice.CAPILLARY_TUBE;
            assertThat(method).isEqualTo(orifice ? ChargeMethod.TOTAL_SUPERHEAT : ChargeMethod.SUBCOOLING);
        }
    }

    /** A cell of the maker's chart is for this weather: it comes before the figure of the plate. RA3.2: maker first. */
    @Test
    void a_cell_of_the_makers_chart_comes_before_the_plate_and_the_table() {
        Optional<MakersTarget> cell =
                MakersTarget.of(Readings.of(reading(Quantity.CHART_TARGET, 14)), Optional.empty());

        Target valve =
                judge.judge(VALVE.aimedAt(cell), valveWithLineAt(100)).target().orElseThrow();
        Target piston =
                judge.judge(PISTON.aimedAt(cell), pistonWithLineAt(52)).target().orElseThrow();

        assertThat(valve.source()).isEqualTo(TargetSource.MAKERS_CHART);
        assertThat(valve.value().fahrenheit()).isCloseTo(14, within(1e-9));
        assertThat(piston.source()).isEqualTo(TargetSource.MAKERS_CHART);
        assertThat(piston.value().fahrenheit()).isCloseTo(14, within(1e-9));
        assertThat(piston.standardUncertainty().kelvins()).isZero();
    }

    /**
     * A published charging chart (two equipment manuals agree): at 68 °F wet bulb 16 °F for 90 and 14 °F for 95 °F
     * outdoors. Between them by hand: 14.8 °F for 93 °F.
     */
    @Test
    void between_two_chart_points_the_target_is_on_a_straight_line() {
        Readings at93 = pistonWithLineAt(52).with(reading(Quantity.OUTDOOR_TEMPERATURE, 93));

        Target target = judge.judge(PISTON.aimedAt(points(95, 14, 90, 16)), at93)
                .target()
                .orElseThrow();

        assertThat(target.source()).isEqualTo(TargetSource.MAKERS_CHART);
        assertThat(target.value().fahrenheit()).isCloseTo(14.8, within(1e-6));
        // 1.8/√3 °F of outdoor air at 0.4 °F a degree: JCGM 100
        assertThat(target.standardUncertainty().fahrenheit()).isCloseTo(0.4 * 1.8 / Math.sqrt(3), within(0.2));
    }

    /** A chart is not straight beyond its points, so nothing is made up there. */
    @Test
    void outside_two_chart_points_there_is_no_test() {
        Judgement judgement = judge.judge(PISTON.aimedAt(points(80, 18, 90, 15)), pistonWithLineAt(52));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(judgement.conditions().stream().map(each -> each.condition()))
                .contains(Condition.OUTDOOR_BETWEEN_CHART_POINTS);
    }

    @Test
    void chart_points_need_the_outdoor_temperature() {
        Judgement judgement = judge.judge(
                VALVE.aimedAt(points(85, 12, 95, 10)), valveWithLineAt(100).without(Quantity.OUTDOOR_TEMPERATURE));

        assertThat(judgement.missing()).containsExactly(Quantity.OUTDOOR_TEMPERATURE);
    }

    /**
     * An equipment manual: approach is liquid line less outdoor air; add to lower it, recover to raise it. With 95 °F
     * outdoors and an approach of 6 °F the line belongs at 101 °F.
     */
    @Test
    void more_charge_lowers_the_approach() {
        SystemUnderTest byApproach =
                VALVE.aimedAt(MakersTarget.of(Readings.of(reading(Quantity.PLATE_APPROACH, 6)), Optional.empty()));

        assertThat(kind(byApproach, 101)).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(kind(byApproach, 105)).isEqualTo(Verdict.Kind.ADD);
        assertThat(kind(byApproach, 97)).isEqualTo(Verdict.Kind.RECOVER);
    }

    /** An approach needs no gauge: only line clamp and outdoor probe are in its uncertainty (JCGM 100). */
    @Test
    void the_gauge_drops_out_of_an_approach() {
        SystemUnderTest byApproach =
                VALVE.aimedAt(MakersTarget.of(Readings.of(reading(Quantity.PLATE_APPROACH, 6)), Optional.empty()));
        Judgement judgement = judge.judge(byApproach, valveIn95(101));

        Estimate deviation = judgement
                .target()
                .orElseThrow()
                .deviation(judgement.subcooling().orElseThrow());

        assertThat(deviation.value().fahrenheit()).isCloseTo(0, within(1e-6));
        assertThat(deviation.contributions().stream().map(Estimate.Contribution::instrument))
                .containsOnly(Instrument.LIQUID_LINE_PROBE, Instrument.OUTDOOR_PROBE);
    }

    /** The approach is that of the liquid; a fixed orifice is charged by superheat. */
    @Test
    void an_approach_is_no_target_for_a_fixed_orifice() {
        SystemUnderTest byApproach =
                PISTON.aimedAt(MakersTarget.of(Readings.of(reading(Quantity.PLATE_APPROACH, 6)), Optional.empty()));

        assertThat(judge.judge(byApproach, pistonWithLineAt(52))
                        .target()
                        .orElseThrow()
                        .source())
                .isEqualTo(TargetSource.CHARGING_TABLE);
    }

    /** Two points at one temperature give no slope: the first is taken as the cell for this weather. */
    @Test
    void two_points_at_one_temperature_are_one_cell() {
        assertThat(points(95, 12, 95, 15).orElseThrow()).isInstanceOf(MakersTarget.Cell.class);
    }

    private Verdict.Kind kind(SystemUnderTest system, double lineFahrenheit) {
        return judge.judge(system, valveIn95(lineFahrenheit)).verdict().kind();
    }

    private static Readings valveIn95(double lineFahrenheit) {
        return valveWithLineAt(lineFahrenheit)
                .without(Quantity.PLATE_SUBCOOLING)
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, 95));
    }

    private static Optional<MakersTarget> points(double outdoor, double target, double other, double otherTarget) {
        return MakersTarget.of(
                Readings.of(
                        reading(Quantity.CHART_OUTDOOR_TEMPERATURE, outdoor), reading(Quantity.CHART_TARGET, target)),
                Optional.of(new MakersTarget.Point(
                        reading(Quantity.CHART_OUTDOOR_TEMPERATURE, other).temperature(),
                        reading(Quantity.CHART_TARGET, otherTarget).temperatureDifference())));
    }
}
