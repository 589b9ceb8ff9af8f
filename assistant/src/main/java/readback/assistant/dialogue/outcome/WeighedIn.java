package readback.assistant.dialogue.outcome;

import java.util.List;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Mass;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * What was weighed in.
 *
 * @param comparison with the charge that was to go in; empty where there was no figure for it
 */
public record WeighedIn(Optional<Weighed> comparison) implements JobOutcome {

    /** How the amount compares, in grams. */
    public record Weighed(WeighIn.Outcome outcome, long grams, long targetGrams) {}

    public static WeighedIn of(WeighIn.Outcome outcome, Mass in, Mass target) {
        return new WeighedIn(Optional.of(new Weighed(outcome, JobOutcome.grams(in), JobOutcome.grams(target))));
    }

    @Override
    public Judged judged() {
        return Judged.WEIGHED_IN;
    }

    @Override
    public String name() {
        return "weighed-in "
                + comparison.map(each -> ConstantName.of(each.outcome())).orElse("nothing");
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return comparison
                .map(each -> List.of(
                        Figure.mass("weighed-in", each.grams(), units),
                        Figure.mass("to-weigh-in", each.targetGrams(), units)))
                .orElse(List.of());
    }

    @Override
    public String line() {
        return comparison
                .map(each -> name() + " " + each.grams() + "g target=" + each.targetGrams() + "g")
                .orElseGet(this::name);
    }
}
