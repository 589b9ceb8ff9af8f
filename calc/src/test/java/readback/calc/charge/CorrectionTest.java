package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import readback.calc.charge.Correction.Basis;
import readback.calc.charge.Correction.Step;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Known;
import readback.calc.measurement.Limits;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/** Steps: common practice, no source. The arithmetic: straight-line least squares and JCGM 100. */
class CorrectionTest {

    private static final TemperatureDifference ONE = TemperatureDifference.fahrenheit(1);
    /** A twentieth of it is 10 oz, more than any step. */
    private static final Optional<Mass> PLATE = Optional.of(Mass.ounces(200));

    @Test
    void without_history_far_from_the_limits_the_first_step_is_four_ounces() {
        assertThat(superheat(PLATE, step(0, 12)).next().ounces()).isCloseTo(4, within(1e-9));
        assertThat(superheat(PLATE, step(0, -12)).next().ounces()).isCloseTo(-4, within(1e-9));
        assertThat(superheat(PLATE, step(0, 12)).basis()).isEqualTo(Basis.FIRST_STEP);
    }

    @Test
    void without_history_near_the_limits_the_first_step_is_two_ounces() {
        assertThat(superheat(PLATE, step(0, 7)).next().ounces()).isCloseTo(2, within(1e-9));
        assertThat(subcooling(step(0, -4)).next().ounces()).isCloseTo(2, within(1e-9));
        assertThat(subcooling(step(0, 4)).next().ounces()).isCloseTo(-2, within(1e-9));
    }

    @Test
    void inside_the_limits_nothing_is_moved() {
        Correction correction = superheat(PLATE, step(0, 7.5), step(4, 2.5));

        assertThat(correction.basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
        assertThat(correction.next()).isEqualTo(Mass.NONE);
        assertThat(correction.response().orElseThrow().fahrenheitPerOunce()).isCloseTo(-1.25, within(1e-9));
        assertThat(superheat(PLATE, step(0, 4.9)).basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
    }

    @Test
    void a_charge_brought_just_within_its_limits_is_trimmed_to_the_target() {
        // 4 oz took 5 °F off: 1.25 °F an ounce, so 5 °F more take 4 oz
        Correction adding = superheat(PLATE, step(0, 10), step(4, 5));
        assertThat(adding.basis()).isEqualTo(Basis.TRIM);
        assertThat(adding.next().ounces()).isCloseTo(4, within(1e-9));

        // 4 oz too much were taken out of 2: 3 °F an ounce too far, so one goes back
        Correction back = subcooling(step(0, 9), step(-4, -3));
        assertThat(back.basis()).isEqualTo(Basis.TRIM);
        assertThat(back.next().ounces()).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_trim_stays_within_the_bound_of_a_step() {
        Correction trim = superheat(Optional.of(Mass.ounces(40)), step(0, 10), step(4, 5));

        assertThat(trim.basis()).isEqualTo(Basis.TRIM);
        assertThat(trim.next().ounces()).isCloseTo(2, within(1e-9));
    }

    @Test
    void a_charge_is_trimmed_once_and_by_a_clear_response_the_right_way_only() {
        assertThat(superheat(PLATE, step(0, 10), step(4, 5), step(2, 4)).basis())
                .isEqualTo(Basis.NOTHING_TO_CORRECT);
        // the response is 0.2 ± 0.35 °F an ounce
        assertThat(superheat(PLATE, step(0, 5.2), step(4, 4.4)).basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
        // superheat below target rose while charge went in
        assertThat(superheat(PLATE, step(0, -10), step(4, -4)).basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
    }

    @Test
    void less_than_a_scale_can_meter_is_no_trim() {
        // 4 oz took 30 °F off: the 3 °F left are 0.4 oz
        assertThat(superheat(PLATE, step(0, 33), step(4, 3)).basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
    }

    @Test
    void the_response_so_far_tells_how_much_is_still_to_be_moved() {
        // 4 oz took 8 °F off: 2 °F an ounce, so 8 °F more take 4 oz
        Correction correction = superheat(PLATE, step(0, 16), step(4, 8));

        assertThat(correction.basis()).isEqualTo(Basis.RESPONSE);
        assertThat(correction.response().orElseThrow().fahrenheitPerOunce()).isCloseTo(-2, within(1e-9));
        assertThat(correction.total().orElseThrow().ounces()).isCloseTo(4, within(1e-9));
        // the slope of two points 4 oz apart is uncertain by √2/4 °F an ounce
        double steepest = 2 + 1.96 * Math.sqrt(2) / 4;
        double flattest = 2 - 1.96 * Math.sqrt(2) / 4;
        assertThat(correction.next().ounces()).isCloseTo(8 / steepest, within(1e-9));
        assertThat(correction.least().orElseThrow().ounces()).isCloseTo((8 - 1.96) / steepest, within(1e-9));
        assertThat(correction.most().orElseThrow().ounces()).isCloseTo((8 + 1.96) / flattest, within(1e-9));
    }

    @Test
    void recovering_is_predicted_with_the_opposite_sign() {
        Correction correction = subcooling(step(0, 12), step(-4, 6));

        assertThat(correction.total().orElseThrow().ounces()).isCloseTo(-4, within(1e-9));
        assertThat(correction.next().ounces()).isNegative().isGreaterThan(-4);
        assertThat(correction.response().orElseThrow().fahrenheitPerOunce()).isCloseTo(1.5, within(1e-9));
    }

    /** Common practice: if superheat rises while charge goes in, the charge is not what is wrong. */
    @Test
    void a_response_the_wrong_way_stops_the_correction() {
        Correction correction = superheat(PLATE, step(0, 10), step(4, 18));

        assertThat(correction.basis()).isEqualTo(Basis.CONTRARY_RESPONSE);
        assertThat(correction.next()).isEqualTo(Mass.NONE);
        assertThat(correction.total()).isEmpty();
    }

    @Test
    void a_response_lost_in_the_uncertainty_allows_only_a_plain_step() {
        Correction correction = superheat(PLATE, step(0, 12), step(4, 11));

        assertThat(correction.basis()).isEqualTo(Basis.NO_CLEAR_RESPONSE);
        assertThat(correction.next().ounces()).isCloseTo(4, within(1e-9));
        assertThat(correction.most()).isEmpty();
    }

    @Test
    void measuring_again_without_moving_refrigerant_is_no_response() {
        assertThat(superheat(PLATE, step(0, 12), step(0, 11)).basis()).isEqualTo(Basis.FIRST_STEP);
    }

    @Test
    void no_step_is_larger_than_eight_ounces_or_a_twentieth_of_the_nameplate() {
        Step[] slow = {step(0, 40), step(8, 30)};

        assertThat(superheat(PLATE, slow).next().ounces()).isCloseTo(8, within(1e-9));
        assertThat(superheat(Optional.of(Mass.ounces(100)), slow).next().ounces())
                .isCloseTo(5, within(1e-9));
        assertThat(superheat(Optional.of(Mass.ounces(40)), step(0, 30)).next().ounces())
                .isCloseTo(2, within(1e-9));
    }

    /** A made-up system that answers in a straight line, measured with errors; seeded. */
    @Test
    void following_the_advice_reaches_the_tolerance_without_overshooting_it() {
        long seed = 7;
        SplittableRandom random = new SplittableRandom(seed);
        for (int system = 0; system < 200; system++) {
            double perOunce = random.nextDouble(0.5, 3);
            double deviation = random.nextDouble(6, 30);
            List<Step> steps = new ArrayList<>();
            double moved = 0;
            int rounds = 0;
            while (deviation > 5 && rounds++ < 40) {
                steps.add(step(moved, deviation + random.nextDouble(-0.5, 0.5)));
                moved = superheat(PLATE, steps.toArray(new Step[0])).next().ounces();
                deviation -= perOunce * moved;
                assertThat(deviation).as("seed %s, system %s", seed, system).isGreaterThan(-5);
            }
            assertThat(deviation).as("seed %s, system %s", seed, system).isBetween(-5.0, 5.5);
        }
    }

    /** Three measurements: least squares by hand. Deviations 20, 14, 12 °F at 0, 2, 6 oz: slope −1.214 °F an ounce. */
    @Test
    void the_response_is_a_straight_line_through_all_measurements() {
        Correction correction = superheat(PLATE, step(99, 20), step(2, 14), step(4, 12));

        double mean = 8.0 / 3;
        double squares = mean * mean + (2 - mean) * (2 - mean) + (6 - mean) * (6 - mean);
        double products = -mean * (20 - 46.0 / 3) + (2 - mean) * (14 - 46.0 / 3) + (6 - mean) * (12 - 46.0 / 3);
        Correction.Response response = correction.response().orElseThrow();
        assertThat(response.fahrenheitPerOunce()).isCloseTo(products / squares, within(1e-9));
        assertThat(response.standardUncertainty() / response.perKilogram())
                .isCloseTo(1 / Math.sqrt(squares) / (products / squares), within(1e-9));
        assertThat(correction.basis()).isEqualTo(Basis.RESPONSE);
    }

    @Test
    void the_near_end_of_the_interval_never_lies_beyond_nothing() {
        Correction correction = Correction.after(
                ChargeMethod.SUBCOOLING,
                List.of(step(0, -20), step(8, -3.1)),
                TemperatureDifference.fahrenheit(2),
                Limits.INSTALLER.subcooling(),
                PLATE);

        assertThat(correction.basis()).isEqualTo(Basis.RESPONSE);
        assertThat(correction.least().orElseThrow()).isEqualTo(Mass.NONE);
    }

    @Test
    void twice_the_limit_is_where_small_steps_begin() {
        assertThat(superheat(PLATE, step(0, 10)).next().ounces()).isCloseTo(2, within(1e-9));
        assertThat(superheat(PLATE, step(0, 10.1)).next().ounces()).isCloseTo(4, within(1e-9));
        assertThat(subcooling(step(0, -6.1)).next().ounces()).isCloseTo(4, within(1e-9));
    }

    @Test
    void a_judgement_is_a_measurement_and_brings_its_own_limits_and_uncertainty() {
        Judgement judgement = new ChargeJudge().judge(Known.VALVE, Known.valveWithSubcooling(4));
        Step step = Step.of(Mass.NONE, judgement).orElseThrow();

        Correction correction = Correction.after(List.of(step), judgement, PLATE, Optional.empty(), 1)
                .orElseThrow();

        assertThat(step.deviation().fahrenheit()).isCloseTo(-6, within(1e-6));
        assertThat(correction).isEqualTo(subcooling(step));
        assertThat(correction.next().ounces()).isCloseTo(2, within(1e-9));
    }

    @Test
    void without_a_comparison_nothing_is_moved() {
        Judgement incomplete = new ChargeJudge().judge(Known.VALVE, Readings.none());

        assertThat(Step.of(Mass.NONE, incomplete)).isEmpty();
        assertThat(Correction.after(List.of(step(0, -6)), incomplete, PLATE, Optional.empty(), 1))
                .isEmpty();
    }

    @Test
    void a_careful_step_and_its_bound_are_a_share_of_the_usual_ones() {
        Judgement judgement = new ChargeJudge().judge(Known.VALVE, Known.valveWithSubcooling(4));
        List<Step> steps = List.of(Step.of(Mass.NONE, judgement).orElseThrow());

        assertThat(Correction.after(steps, judgement, Optional.of(Mass.ounces(160)), Optional.empty(), 0.5)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(1, within(1e-9));
        assertThat(Correction.after(steps, judgement, Optional.of(Mass.ounces(160)), surely(0.9), 0.5)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(4, within(1e-9));
        assertThat(Correction.after(steps, judgement, Optional.empty(), Optional.empty(), 0.5)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(0.8, within(1e-9));
    }

    @Test
    void a_verdict_and_its_correction_agree_on_what_is_inside() {
        for (int tenths = 60; tenths <= 140; tenths++) {
            Judgement judgement = new ChargeJudge().judge(Known.VALVE, Known.valveWithSubcooling(tenths / 10.0));
            Correction correction = Correction.after(
                            List.of(Step.of(Mass.NONE, judgement).orElseThrow()), judgement, PLATE, Optional.empty(), 1)
                    .orElseThrow();

            assertThat(correction.basis() == Basis.NOTHING_TO_CORRECT)
                    .isEqualTo(judgement.verdict().kind() == Verdict.Kind.IN_TOLERANCE);
        }
    }

    /** A plain step is 4 oz; where 10 % of 160 oz are missing by all likelihood it is as large as a step may be. */
    @Test
    void what_is_off_by_all_likelihood_makes_the_first_step_larger_but_never_beyond_its_bound() {
        Judgement judgement = new ChargeJudge().judge(Known.VALVE, Known.valveWithSubcooling(2));
        List<Step> steps = List.of(Step.of(Mass.NONE, judgement).orElseThrow());
        Optional<Mass> large = Optional.of(Mass.ounces(160));

        assertThat(Correction.after(steps, judgement, large, Optional.empty(), 1)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(4, within(1e-9));
        assertThat(Correction.after(steps, judgement, large, surely(0.96), 1)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(6.4, within(1e-9));
        assertThat(Correction.after(steps, judgement, large, surely(0.9), 1)
                        .orElseThrow()
                        .next()
                        .ounces())
                .isCloseTo(8, within(1e-9));
    }

    @Test
    void what_all_readings_showed_and_the_target_count_by_how_sure_they_are() {
        Optional<Mass> plate = Optional.of(Mass.ounces(160));
        Step step = step(0, 7.5);
        // by the target 7.5 / 1.1 = 6.8 %; its uncertainty is 2 % of target, 0.9 % of reading, 2.0 % of response
        double byTarget = 7.5 / 110;
        double variance = 0.02 * 0.02 + Math.pow(1 / 110.0, 2) + Math.pow(0.3 * byTarget, 2);
        double levelVariance = 0.03 * 0.03;
        double share = (byTarget * levelVariance + 0.02 * variance) / (variance + levelVariance);

        Correction correction = superheat(plate, new ChargeLevel(0.98, 0.03), step);

        assertThat(correction.next().ounces()).isCloseTo(160 * share, within(1e-6));
        assertThat(correction.basis()).isEqualTo(Basis.FIRST_STEP);
    }

    /**
     * 10 % are missing by the level and 5 % were added: superheat that did not answer is no reason for a small step.
     */
    @Test
    void a_value_that_does_not_answer_yet_takes_no_small_step_while_the_charge_is_surely_off() {
        Optional<Mass> plate = Optional.of(Mass.ounces(100));

        Correction blind = superheat(plate, step(0, -9), step(-5, -8.8));
        Correction seeing = superheat(plate, new ChargeLevel(1.2, 0.02), step(0, -9), step(-5, -8.8));

        assertThat(blind.basis()).isEqualTo(Basis.NO_CLEAR_RESPONSE);
        assertThat(blind.next().ounces()).isCloseTo(-2, within(1e-9));
        assertThat(seeing.basis()).isEqualTo(Basis.NO_CLEAR_RESPONSE);
        assertThat(seeing.next().ounces()).isCloseTo(-5, within(1e-9));
    }

    @Test
    void a_charge_within_its_limits_is_trimmed_by_what_is_usual_where_its_own_response_is_not_clear() {
        Optional<Mass> plate = Optional.of(Mass.ounces(100));
        Step[] steps = {step(0, 5.2), step(3, 4.4)};

        assertThat(superheat(plate, steps).basis()).isEqualTo(Basis.NOTHING_TO_CORRECT);
        Correction trim = superheat(plate, new ChargeLevel(0.96, 0.02), steps);
        assertThat(trim.basis()).isEqualTo(Basis.TRIM);
        assertThat(trim.next().ounces()).isBetween(3.0, 5.0);
        // what all readings showed says that nothing is missing
        assertThat(superheat(plate, new ChargeLevel(1.02, 0.005), steps).basis())
                .isEqualTo(Basis.NOTHING_TO_CORRECT);
    }

    @Test
    void a_level_against_the_target_never_turns_a_step_round() {
        Correction correction = superheat(PLATE, new ChargeLevel(1.2, 0.01), step(0, 8));

        assertThat(correction.next().ounces()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void a_level_moves_with_what_is_weighed_in_and_keeps_its_uncertainty() {
        assertThat(new ChargeLevel(0.9, 0.03).after(Mass.ounces(5), Mass.ounces(100)))
                .isEqualTo(new ChargeLevel(0.9 + 0.05, 0.03));
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new ChargeLevel(1, -0.1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("uncertainty of the charge");
    }

    /** Five per cent of 2 lb, the smallest charge that gauges may judge: 1.6 oz. Ours. */
    @Test
    void without_the_plate_a_step_is_one_that_the_smallest_system_would_bear() {
        Correction unknown = superheat(Optional.empty(), step(0, 30));

        assertThat(unknown.next().ounces()).isCloseTo(1.6, within(1e-9));
        assertThat(unknown.bound()).isEqualTo(Correction.Bound.SMALLEST_SYSTEM);
        assertThat(superheat(PLATE, step(0, 30)).bound()).isEqualTo(Correction.Bound.NAMEPLATE);
    }

    @Test
    void a_small_system_is_charged_by_weight_alone() {
        Readings low = Known.valveWithSubcooling(2);
        Judgement small =
                new ChargeJudge().judge(Known.VALVE, low.with(Known.reading(Quantity.NAMEPLATE_CHARGE, 31.9)));
        Judgement large = new ChargeJudge().judge(Known.VALVE, low.with(Known.reading(Quantity.NAMEPLATE_CHARGE, 32)));

        Correction correction = Correction.after(
                        List.of(Step.of(Mass.NONE, small).orElseThrow()),
                        small,
                        Optional.of(Mass.ounces(31.9)),
                        Optional.empty(),
                        1)
                .orElseThrow();

        assertThat(small.verdict().kind()).isEqualTo(Verdict.Kind.WEIGH_IN);
        assertThat(correction.basis()).isEqualTo(Basis.BY_WEIGHT);
        assertThat(correction.next()).isEqualTo(Mass.NONE);
        assertThat(large.verdict().kind()).isEqualTo(Verdict.Kind.ADD);
    }

    /** R-290 is A3 (ISO 817). Subcooling far below and far above the target, with a large plate and with none. */
    @Test
    void a_refrigerant_that_burns_readily_is_never_topped_up_by_the_gauges() {
        Refrigerant propane = ((Lookup.Found) Catalogue.standard().find("R-290")).refrigerant();
        SystemUnderTest system = SystemUnderTest.of(propane, MeteringDevice.THERMOSTATIC_EXPANSION_VALVE);
        for (double line : new double[] {60, 100}) {
            Readings readings = Readings.none()
                    .with(Known.reading(Quantity.LIQUID_PRESSURE, 200))
                    .with(Known.reading(Quantity.LIQUID_LINE_TEMPERATURE, line))
                    .with(Known.reading(Quantity.PLATE_SUBCOOLING, 15));

            assertThat(new ChargeJudge().judge(system, readings).verdict().kind())
                    .as("line at %s °F", line)
                    .isEqualTo(Verdict.Kind.WEIGH_IN);
            assertThat(new ChargeJudge()
                            .judge(system, readings.with(Known.reading(Quantity.NAMEPLATE_CHARGE, 100)))
                            .verdict()
                            .kind())
                    .isEqualTo(Verdict.Kind.WEIGH_IN);
        }
    }

    @Test
    void a_correction_without_a_measurement_is_refused() {
        org.assertj.core.api.Assertions.assertThatIllegalArgumentException().isThrownBy(() -> superheat(PLATE));
    }

    private static Step step(double ouncesBefore, double fahrenheit) {
        return new Step(Mass.ounces(ouncesBefore), TemperatureDifference.fahrenheit(fahrenheit));
    }

    private static Correction superheat(Optional<Mass> nameplate, Step... steps) {
        return Correction.after(
                ChargeMethod.TOTAL_SUPERHEAT, List.of(steps), ONE, Limits.INSTALLER.superheat(), nameplate);
    }

    private static Correction superheat(Optional<Mass> nameplate, ChargeLevel level, Step... steps) {
        return Correction.after(
                ChargeMethod.TOTAL_SUPERHEAT,
                List.of(steps),
                ONE,
                Limits.INSTALLER.superheat(),
                nameplate,
                Optional.of(level),
                1);
    }

    private static Optional<ChargeLevel> surely(double share) {
        return Optional.of(new ChargeLevel(share, 0));
    }

    private static Correction subcooling(Step... steps) {
        return Correction.after(ChargeMethod.SUBCOOLING, List.of(steps), ONE, Limits.INSTALLER.subcooling(), PLATE);
    }
}
