package readback.calc.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.measurement.Limits;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

class ConditionCheckTest {

    private final ChargeJudge judge = new ChargeJudge();

    /** California Energy Commission RA3.2.1 and RA1.2: winter set-up from 37 to 71 °F, variable metering only. */
    @Test
    void below_55_outdoors_a_valve_system_is_weighed_in_or_set_up_for_winter() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 52)));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        FailedCondition failed = only(judgement);
        assertThat(failed.condition()).isEqualTo(Condition.OUTDOOR_WARM_ENOUGH);
        assertThat(failed.measured()).contains(reading(Quantity.OUTDOOR_TEMPERATURE, 52));
        assertThat(failed.limit().orElseThrow().value()).isEqualByComparingTo("55");
        assertThat(failed.remedies())
                .containsExactly(Remedy.WEIGH_IN, Remedy.WINTER_SET_UP, Remedy.COME_BACK_WHEN_WARMER);
    }

    /** RA1.2.1: above 37 °F. */
    @Test
    void at_37_outdoors_winter_set_up_is_out_of_question() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 37)));

        assertThat(only(judgement).remedies()).containsExactly(Remedy.WEIGH_IN, Remedy.COME_BACK_WHEN_WARMER);
    }

    /** RA1.2.1: where the maker charges by subcooling. */
    @Test
    void below_55_outdoors_a_piston_system_can_only_be_weighed_in() {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.OUTDOOR_TEMPERATURE, 52)));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(only(judgement).remedies()).containsExactly(Remedy.WEIGH_IN, Remedy.COME_BACK_WHEN_WARMER);
    }

    /** RA1.2: above 37 and below 71 °F, both excluded, with the pressures of a warm day. */
    @ParameterizedTest(name = "restrictor on, {0} °F outdoors, suction {1} psig: {2}")
    @CsvSource({"45, VALID", "37.1, VALID", "37, OUTDOOR_WARM_ENOUGH", "70.9, VALID", "71, OUTDOOR_COOL_ENOUGH"})
    void a_restrictor_makes_a_cold_day_count(double outdoor, String expected) {
        SystemUnderTest restricted = VALVE.withCondenserRestricted();
        Readings readings = valveWithLineAt(92)
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, outdoor))
                .with(reading(Quantity.LIQUID_PRESSURE, 318))
                .with(reading(Quantity.SUCTION_PRESSURE, 118));

        Judgement judgement = judge.judge(restricted, readings);

        if (expected.equals("VALID")) {
            assertThat(judgement.verdict().comparison()).isPresent();
        } else {
            assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
            assertThat(only(judgement).condition()).isEqualTo(Condition.valueOf(expected));
        }
    }

    /** RA1.2: R-410A 160 to 220 psi between the gauges. */
    @ParameterizedTest(name = "liquid {0}, suction {1} psig: {2}")
    @CsvSource({"318, 118, true", "270, 118, false", "345, 118, false"})
    void with_a_restrictor_the_pressure_difference_has_to_be_held(double liquid, double suction, boolean held) {
        Judgement judgement = judge.judge(
                VALVE.withCondenserRestricted(),
                valveWithLineAt(85)
                        .with(reading(Quantity.OUTDOOR_TEMPERATURE, 45))
                        .with(reading(Quantity.LIQUID_PRESSURE, liquid))
                        .with(reading(Quantity.SUCTION_PRESSURE, suction)));

        assertThat(judgement.verdict().comparison().isPresent()).isEqualTo(held);
        if (!held) {
            assertThat(only(judgement).remedies()).containsExactly(Remedy.ADJUST_RESTRICTOR);
        }
    }

    @Test
    void with_a_restrictor_a_target_by_the_weather_outdoors_does_not_hold() {
        MakersTarget approach = new MakersTarget.Approach(TemperatureDifference.fahrenheit(6));
        MakersTarget cell = new MakersTarget.Cell(TemperatureDifference.fahrenheit(12), Optional.empty());

        assertThat(VALVE.aimedAt(Optional.of(approach))
                        .withCondenserRestricted()
                        .makersTarget())
                .isEmpty();
        assertThat(VALVE.aimedAt(Optional.of(cell)).withCondenserRestricted().makersTarget())
                .contains(cell);
    }

    /** RA3.2: the maker's own instructions come first; the floor belongs to the general targets. */
    @ParameterizedTest
    @CsvSource({"45, true", "40, true", "50, true", "39, false", "51, false"})
    void below_55_outdoors_the_makers_chart_decides_where_it_reaches_so_low(double outdoor, boolean compared) {
        MakersTarget cell =
                new MakersTarget.Cell(TemperatureDifference.fahrenheit(10), Optional.of(Temperature.fahrenheit(45)));

        Judgement judgement = judge.judge(
                VALVE.aimedAt(Optional.of(cell)),
                valveWithLineAt(100)
                        .with(reading(Quantity.LIQUID_LINE_TEMPERATURE, 100))
                        .with(reading(Quantity.OUTDOOR_TEMPERATURE, outdoor)));

        assertThat(judgement.verdict().comparison().isPresent()).isEqualTo(compared);
    }

    @Test
    void a_chart_figure_of_which_no_outdoor_temperature_was_told_and_an_approach_leave_the_floor_where_it_is() {
        for (MakersTarget target : List.of(
                new MakersTarget.Cell(TemperatureDifference.fahrenheit(10), Optional.empty()),
                new MakersTarget.Approach(TemperatureDifference.fahrenheit(6)))) {
            assertThat(judge.judge(
                                    VALVE.aimedAt(Optional.of(target)),
                                    valveWithLineAt(100).with(reading(Quantity.OUTDOOR_TEMPERATURE, 50)))
                            .verdict()
                            .kind())
                    .isEqualTo(Verdict.Kind.NO_VALID_TEST);
        }
    }

    /** RA3.2.1. */
    @Test
    void exactly_55_outdoors_is_warm_enough() {
        assertThat(judge.judge(
                                VALVE,
                                valveWithLineAt(100)
                                        .with(reading(Quantity.LIQUID_LINE_TEMPERATURE, 100))
                                        .with(reading(Quantity.OUTDOOR_TEMPERATURE, 55)))
                        .conditions())
                .isEmpty();
    }

    /** RA3.2.2.6.1, step 3, and the published charging grid: a dash. The closed form would claim 3.0 °F. */
    @Test
    void a_dash_in_the_table_is_no_valid_test_and_names_the_ways_out() {
        Judgement judgement = judge.judge(
                PISTON,
                pistonWithLineAt(52)
                        .with(reading(Quantity.OUTDOOR_TEMPERATURE, 100))
                        .with(reading(Quantity.RETURN_WET_BULB, 62)));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(judgement.target()).isEmpty();
        assertThat(only(judgement).condition()).isEqualTo(Condition.TARGET_USABLE);
        assertThat(only(judgement).remedies()).containsExactly(Remedy.LOAD_THE_HOUSE, Remedy.WEIGH_IN);
    }

    @Test
    void weather_beyond_the_table_names_the_limit_that_was_passed() {
        FailedCondition hot =
                only(judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.OUTDOOR_TEMPERATURE, 116))));
        FailedCondition dry =
                only(judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RETURN_WET_BULB, 49))));
        FailedCondition humid =
                only(judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RETURN_WET_BULB, 77))));

        assertThat(hot.condition()).isEqualTo(Condition.OUTDOOR_INSIDE_TABLE);
        assertThat(hot.limit().orElseThrow().value()).isEqualByComparingTo("115");
        assertThat(hot.remedies()).contains(Remedy.COME_BACK_WHEN_COOLER, Remedy.WEIGH_IN);
        assertThat(dry.condition()).isEqualTo(Condition.WET_BULB_INSIDE_TABLE);
        assertThat(dry.limit().orElseThrow().value()).isEqualByComparingTo("50");
        assertThat(dry.remedies()).startsWith(Remedy.LOAD_THE_HOUSE);
        assertThat(humid.limit().orElseThrow().value()).isEqualByComparingTo("76");
        assertThat(humid.remedies()).startsWith(Remedy.KEEP_RUNNING);
    }

    /** RA3.2.2.5: 15 minutes. */
    @Test
    void a_system_that_has_run_for_fourteen_minutes_is_not_judged_yet() {
        Judgement early = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RUN_TIME, 14)));
        Judgement due = judge.judge(PISTON, pistonWithLineAt(52).with(reading(Quantity.RUN_TIME, 15)));

        assertThat(early.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(only(early).condition()).isEqualTo(Condition.RUN_LONG_ENOUGH);
        assertThat(only(early).remedies()).containsExactly(Remedy.KEEP_RUNNING);
        assertThat(due.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** RA3.2.2.7 and the recalled table: 75/63 gives 18.6. */
    @Test
    void a_split_on_target_passes_the_airflow_gate() {
        assertThat(judge.judge(VALVE, withSplit(75, 63, 56)).conditions()).isEmpty();
    }

    /** RA3.2.2.7: more than 3 °F above the target, here 24 against 18.3. */
    @Test
    void a_split_far_above_its_target_means_low_airflow_and_stops_the_charge_test() {
        Judgement judgement = judge.judge(VALVE, withSplit(80, 67, 56));

        assertThat(judgement.verdict())
                .isEqualTo(new Verdict.DoNotCharge(java.util.Set.of(Verdict.DoNotCharge.Reason.AIRFLOW_TOO_LOW)));
        assertThat(only(judgement).condition()).isEqualTo(Condition.AIRFLOW_SUFFICIENT);
        assertThat(only(judgement).deviation().orElseThrow().fahrenheit())
                .isCloseTo(5.7, org.assertj.core.api.Assertions.within(0.06));
        assertThat(only(judgement).remedies()).startsWith(Remedy.RESTORE_AIRFLOW);
    }

    /** RA3.2.2.7: more than 3 °F below the target, here 14 against 19.8. */
    @Test
    void a_split_far_below_its_target_is_repeated_and_does_not_stop_the_charge_test() {
        Judgement judgement = judge.judge(VALVE, withSplit(76, 62, 62));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(only(judgement).condition()).isEqualTo(Condition.CAPACITY_PLAUSIBLE);
        assertThat(only(judgement).remedies()).containsExactly(Remedy.MEASURE_AGAIN, Remedy.CHECK_CAPACITY);
    }

    /** RA3.2.2.7: 3 °F for the installer, 4 °F for the verifier. Target 18.3 at 80/67. */
    @Test
    void the_verifier_allows_a_split_one_degree_further_off() {
        Readings readings = withSplit(80, 67, 80 - 18.3 - 3.5);

        assertThat(judge.judge(VALVE, readings).verdict().kind()).isEqualTo(Verdict.Kind.DO_NOT_CHARGE);
        assertThat(judge.judge(VALVE.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
    }

    /** RA3.3, table RA3.3-1: 300 cfm a ton. */
    @Test
    void a_measured_airflow_decides_where_there_is_one() {
        Readings highSplit = withSplit(80, 67, 56).with(reading(Quantity.CAPACITY, 3));
        Judgement enough = judge.judge(VALVE, highSplit.with(reading(Quantity.AIRFLOW, 900)));
        Judgement little = judge.judge(
                VALVE, valveWithLineAt(100).with(reading(Quantity.CAPACITY, 3)).with(reading(Quantity.AIRFLOW, 899)));

        assertThat(enough.verdict().kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(little.verdict().kind()).isEqualTo(Verdict.Kind.DO_NOT_CHARGE);
        assertThat(only(little).measured()).contains(reading(Quantity.AIRFLOW, 899));
    }

    /**
     * Common practice: water on the coil freezes below 32 °F, 100.8 psig for R-410A, and an iced coil falsifies every
     * reading; so whatever the superheat is, nothing is said about the charge.
     */
    @ParameterizedTest
    @ValueSource(doubles = {32, 40, 43, 50, 70})
    void a_coil_below_freezing_spoils_the_test(double line) {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(line).with(reading(Quantity.SUCTION_PRESSURE, 98)));

        assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
        assertThat(only(judgement).condition()).isEqualTo(Condition.COIL_ABOVE_FREEZING);
        assertThat(only(judgement).remedies()).startsWith(Remedy.LOOK_FOR_ICE);
    }

    @Test
    void what_the_technician_denies_spoils_the_test_whatever_the_readings_say() {
        for (Condition denied : new Condition[] {Condition.COIL_FREE_OF_ICE, Condition.RUN_LONG_ENOUGH}) {
            Judgement judgement = judge.judge(PISTON, pistonWithLineAt(62), Set.of(denied));

            assertThat(judgement.verdict().kind()).isEqualTo(Verdict.Kind.NO_VALID_TEST);
            assertThat(only(judgement).condition()).isEqualTo(denied);
            assertThat(only(judgement).remedies()).isNotEmpty();
        }
        assertThat(judge.judge(PISTON, pistonWithLineAt(62), Set.of(Condition.AIRFLOW_SUFFICIENT))
                        .verdict()
                        .kind())
                .isEqualTo(Verdict.Kind.DO_NOT_CHARGE);
    }

    @Test
    void every_condition_forbids_a_verdict_but_capacity_and_an_airflow_not_shown() {
        for (Condition condition : Condition.values()) {
            assertThat(condition.blocking())
                    .isEqualTo(condition != Condition.CAPACITY_PLAUSIBLE && condition != Condition.AIRFLOW_SHOWN);
        }
    }

    private static Readings withSplit(double returnDryBulb, double returnWetBulb, double supply) {
        return valveWithLineAt(100)
                .with(reading(Quantity.RETURN_DRY_BULB, returnDryBulb))
                .with(reading(Quantity.RETURN_WET_BULB, returnWetBulb))
                .with(reading(Quantity.SUPPLY_DRY_BULB, supply));
    }

    /** RA3.2.2.7: a charge is judged where the airflow was shown, by the split or by 300 cfm a ton. */
    @Test
    void nothing_is_moved_without_a_word_about_an_airflow_that_nobody_measured() {
        Readings low = pistonWithLineAt(62);
        Readings split = low.with(reading(Quantity.RETURN_DRY_BULB, 80)).with(reading(Quantity.SUPPLY_DRY_BULB, 61.7));
        Readings measured = low.with(reading(Quantity.AIRFLOW, 1200)).with(reading(Quantity.CAPACITY, 3));

        assertThat(conditions(PISTON, low)).containsExactly(Condition.AIRFLOW_SHOWN);
        assertThat(judge.judge(PISTON, low).verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(conditions(PISTON, split)).isEmpty();
        assertThat(conditions(PISTON, measured)).isEmpty();
        // airflow without a capacity says nothing
        assertThat(conditions(PISTON, measured.without(Quantity.CAPACITY))).containsExactly(Condition.AIRFLOW_SHOWN);
    }

    @Test
    void a_verifier_is_told_though_nothing_is_moved() {
        Readings right = pistonWithLineAt(52);

        assertThat(conditions(PISTON, right)).isEmpty();
        assertThat(conditions(PISTON.judgedBy(Limits.INDEPENDENT_VERIFIER), right))
                .containsExactly(Condition.AIRFLOW_SHOWN);
    }

    /** The table of target splits, RA3.2-3, begins at 70 °F. */
    @ParameterizedTest
    @CsvSource({"69.9, true", "70, false", "80, false"})
    void return_air_below_seventy_forbids_the_test(double dryBulb, boolean forbidden) {
        Readings readings = pistonWithLineAt(52)
                .with(reading(Quantity.RETURN_WET_BULB, 62))
                .with(reading(Quantity.OUTDOOR_TEMPERATURE, 75))
                .with(reading(Quantity.RETURN_DRY_BULB, dryBulb));
        Judgement judgement = judge.judge(PISTON, readings);

        assertThat(conditions(PISTON, readings).contains(Condition.RETURN_WARM_ENOUGH))
                .isEqualTo(forbidden);
        assertThat(judgement.verdict().kind() == Verdict.Kind.NO_VALID_TEST).isEqualTo(forbidden);
    }

    private java.util.List<Condition> conditions(SystemUnderTest system, Readings readings) {
        return judge.judge(system, readings).conditions().stream()
                .map(FailedCondition::condition)
                .toList();
    }

    private static FailedCondition only(Judgement judgement) {
        assertThat(judgement.conditions()).hasSize(1);
        return judgement.conditions().get(0);
    }
}
