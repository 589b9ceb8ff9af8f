package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.name.ConstantName;
import readback.calc.procedure.StandingPressure;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** The standing pressure test, with the loss in whole pascals. */
public record PressureHold(StandingPressure.Outcome outcome, long lossPascals) implements JobOutcome {

    public static PressureHold of(StandingPressure.Result result) {
        return new PressureHold(result.outcome(), Math.round(result.loss().pascals()));
    }

    @Override
    public Judged judged() {
        return Judged.PRESSURE_TEST;
    }

    @Override
    public String name() {
        return "pressure-test " + ConstantName.of(outcome);
    }

    @Override
    public boolean showsLeak() {
        return outcome == StandingPressure.Outcome.LEAKING;
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return List.of(Figure.pressureDifference("loss", (double) lossPascals, units));
    }

    @Override
    public String line() {
        return name() + " loss=" + lossPascals + "Pa";
    }
}
