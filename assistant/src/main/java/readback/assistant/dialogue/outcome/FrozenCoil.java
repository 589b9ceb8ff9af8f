package readback.assistant.dialogue.outcome;

import java.time.Duration;
import java.util.List;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * A coil that was iced and is free of ice.
 *
 * @param early what was missing of the time to thaw when it was cut short; zero for none
 */
public record FrozenCoil(Duration early) implements JobOutcome {

    @Override
    public Judged judged() {
        return Judged.FROZEN_COIL;
    }

    @Override
    public String name() {
        return "frozen-coil thawed";
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return early.isZero() ? List.of() : List.of(Figure.minutes("early", early));
    }

    @Override
    public String line() {
        return early.isZero() ? name() : name() + " early=" + early;
    }
}
