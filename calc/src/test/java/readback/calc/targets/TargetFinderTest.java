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
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Known;
import readback.calc.measurement.MakersRanges;
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
    void the_makers_tolerance_comes_before_the_general_limits() {
        SystemUnderTest narrow = VALVE.with(new MakersRanges(Optional.of(Band.fahrenheit(-1, 2)), Optional.empty()));

        assertThat(judge.judge(VALVE, valveWithSubcooling(8.5)).verdict().kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(judge.judge(narrow, valveWithSubcooling(8.5)).verdict().kind())
                .isEqualTo(Verdict.Kind.ADD);
    }

    @Test
    void the_makers_valve_superheat_comes_before_the_general_limits() {
        SystemUnderTest ranged = VALVE.with(new MakersRanges(Optional.empty(), Optional.of(Band.fahrenheit(10, 14))));
        Readings eight = valveWithLineAt(100);

        ValveCheck general = judge.judge(VALVE, eight).valveCheck().orElseThrow();
        ValveCheck byRange = judge.judge(ranged, eight).valveCheck().orElseThrow();
        ValveCheck byPlate = judge.judge(VALVE, eight.with(reading(Quantity.PLATE_SUPERHEAT, 14)))
                .valveCheck()
                .orElseThrow();

        assertThat(general.source()).isEqualTo(ValveCheck.Source.GENERAL_LIMITS);
        assertThat(general.superheat().position()).isEqualTo(Comparison.Position.INSIDE);
        assertThat(byRange.source()).isEqualTo(ValveCheck.Source.MAKER);
        assertThat(byRange.superheat().position()).isEqualTo(Comparison.Position.BELOW);
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
}
