package readback.calc.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.diagnosis.Deviations.deviation;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;
import static readback.calc.measurement.Known.valveWithSubcooling;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionRule;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Correction;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Known;
import readback.calc.measurement.Limits;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/** Statements every trade text makes about charge, superheat and subcooling. Common practice, no source. */
class TradeStatementsTest {

    private final ChargeJudge judge = new ChargeJudge();

    @Test
    void with_a_fixed_orifice_more_charge_lowers_superheat() {
        // too much superheat is answered by adding, too little by recovering
        assertThat(judge.judge(PISTON, pistonWithLineAt(65)).verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(judge.judge(PISTON, pistonWithLineAt(43)).verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
        // superheat that falls as charge goes in is the response expected, superheat that rises is not
        assertThat(afterAdding(ChargeMethod.TOTAL_SUPERHEAT, 20, 10).basis()).isEqualTo(Correction.Basis.RESPONSE);
        assertThat(afterAdding(ChargeMethod.TOTAL_SUPERHEAT, 10, 20).basis())
                .isEqualTo(Correction.Basis.CONTRARY_RESPONSE);
    }

    @Test
    void with_an_expansion_valve_subcooling_rises_with_charge() {
        assertThat(judge.judge(VALVE, valveWithSubcooling(4)).verdict().kind()).isEqualTo(Verdict.Kind.ADD);
        assertThat(judge.judge(VALVE, valveWithSubcooling(18)).verdict().kind()).isEqualTo(Verdict.Kind.RECOVER);
        assertThat(afterAdding(ChargeMethod.SUBCOOLING, -10, -5).basis()).isEqualTo(Correction.Basis.RESPONSE);
        assertThat(afterAdding(ChargeMethod.SUBCOOLING, -5, -10).basis()).isEqualTo(Correction.Basis.CONTRARY_RESPONSE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 8, 12, 18, 24})
    void with_an_expansion_valve_superheat_says_nothing_about_charge(double superheat) {
        Readings readings = valveWithLineAt(100)
                .with(reading(Quantity.SUCTION_LINE_TEMPERATURE, Known.EVAPORATING_AT_118 + superheat));

        assertThat(judge.judge(VALVE, readings).verdict())
                .isEqualTo(judge.judge(VALVE, valveWithLineAt(100)).verdict());
    }

    @Test
    void with_an_expansion_valve_over_and_undercharge_leave_the_superheat_alone() {
        Evidence normal = deviation(Symptom.SUPERHEAT, 0);
        Diagnosis low = valve(normal, deviation(Symptom.SUBCOOLING, -7));
        Diagnosis high = valve(normal, deviation(Symptom.SUBCOOLING, 7), deviation(Symptom.AIR_SPLIT, 0));

        assertThat(low.leader().fault()).isEqualTo(Fault.UNDERCHARGE);
        assertThat(high.leader().fault()).isEqualTo(Fault.OVERCHARGE);
        assertThat(high.leader().opposing()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3})
    void one_to_three_degrees_of_superheat_are_still_vapour_but_no_margin(double superheat) {
        Judgement judgement = judge.judge(PISTON, pistonWithLineAt(Known.EVAPORATING_AT_118 + superheat));

        assertThat(judgement.contradictions()).isEmpty();
        assertThat(judgement.superheat().orElseThrow().value().kelvins()).isPositive();
        assertThat(judgement.cautions()).extracting(Caution::rule).contains(CautionRule.LIQUID_AT_COMPRESSOR);
    }

    @Test
    void correct_superheat_implies_subcooled_liquid() {
        Readings right = pistonWithLineAt(52).with(reading(Quantity.LIQUID_PRESSURE, 365));
        Advice subcooled = new Advisor().advise(PISTON, right.with(reading(Quantity.LIQUID_LINE_TEMPERATURE, 100)));
        Advice flashing = new Advisor().advise(PISTON, right.with(reading(Quantity.LIQUID_LINE_TEMPERATURE, 109.5)));

        assertThat(subcooled.diagnosis().leader().fault()).isEqualTo(Fault.NONE);
        // with no subcooling at all, "nothing is wrong" has a clue against it
        assertThat(flashing.diagnosis().suspects().stream()
                        .filter(suspect -> suspect.fault() == Fault.NONE)
                        .flatMap(suspect -> suspect.opposing().stream())
                        .map(clue -> ((Suspect.Clue.Measured) clue).evidence().symptom()))
                .contains(Symptom.SUBCOOLING);
    }

    private static Correction afterAdding(ChargeMethod method, double before, double after) {
        return Correction.after(
                method,
                List.of(
                        new Correction.Step(Mass.NONE, TemperatureDifference.fahrenheit(before)),
                        new Correction.Step(Mass.ounces(4), TemperatureDifference.fahrenheit(after))),
                TemperatureDifference.fahrenheit(1),
                method == ChargeMethod.SUBCOOLING ? Limits.INSTALLER.subcooling() : Limits.INSTALLER.superheat(),
                Optional.empty());
    }

    private static Diagnosis valve(Evidence... evidence) {
        return new Diagnostician().diagnose(ChargeMethod.SUBCOOLING, List.of(evidence), Map.of());
    }
}
