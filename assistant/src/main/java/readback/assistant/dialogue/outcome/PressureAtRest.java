package readback.assistant.dialogue.outcome;

import java.util.List;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RestingPressure;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** The pressure at rest. */
public record PressureAtRest(Optional<Against> comparison) implements JobOutcome {

    /** How it compares with saturation; the excess in whole pascals. */
    public record Against(RestingPressure.Outcome outcome, long excessPascals) {}

    public static PressureAtRest of(RestingPressure.Result result) {
        return new PressureAtRest(Optional.of(
                new Against(result.outcome(), Math.round(result.excess().pascals()))));
    }

    @Override
    public Judged judged() {
        return Judged.RESTING_PRESSURE;
    }

    @Override
    public String name() {
        return "resting-pressure "
                + comparison.map(each -> ConstantName.of(each.outcome())).orElse("no-saturation");
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return comparison
                .map(each -> List.of(Figure.pressureDifference("excess", (double) each.excessPascals(), units)))
                .orElse(List.of());
    }

    @Override
    public String line() {
        return comparison
                .map(each -> name() + " excess=" + each.excessPascals() + "Pa")
                .orElseGet(this::name);
    }
}
