package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.name.ConstantName;
import readback.calc.procedure.FunctionalCheck;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * What a system that was charged by weight shows when it runs: information, no verdict.
 *
 * @param superheat tenths of a degree Fahrenheit, as the others
 * @param unusual what few systems show
 */
public record FunctionalFigures(
        Optional<Long> superheat, Optional<Long> subcooling, Optional<Long> split, List<FunctionalCheck.Aspect> unusual)
        implements JobOutcome {

    public FunctionalFigures {
        unusual = List.copyOf(unusual);
    }

    public static FunctionalFigures of(FunctionalCheck check) {
        return new FunctionalFigures(
                check.superheat().map(Tenths::of),
                check.subcooling().map(Tenths::of),
                check.split().map(Tenths::of),
                List.copyOf(check.unusual()));
    }

    @Override
    public Judged judged() {
        return Judged.FUNCTIONAL_CHECK;
    }

    @Override
    public String name() {
        boolean nothing = superheat.isEmpty() && subcooling.isEmpty() && split.isEmpty();
        return "functional-check " + (nothing ? "not-made" : unusual.isEmpty() ? "usual" : "unusual");
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        List<Figure> figures = new ArrayList<>();
        superheat.ifPresent(each -> figures.add(Tenths.figure("superheat", each, units)));
        subcooling.ifPresent(each -> figures.add(Tenths.figure("subcooling", each, units)));
        split.ifPresent(each -> figures.add(Tenths.figure("split", each, units)));
        return figures;
    }

    @Override
    public String line() {
        StringJoiner line = new StringJoiner(" ");
        line.add(name());
        superheat.ifPresent(each -> line.add("superheat=" + Tenths.shown(each)));
        subcooling.ifPresent(each -> line.add("subcooling=" + Tenths.shown(each)));
        split.ifPresent(each -> line.add("split=" + Tenths.shown(each)));
        unusual.forEach(each -> line.add("unusual=" + ConstantName.of(each)));
        return line.toString();
    }
}
