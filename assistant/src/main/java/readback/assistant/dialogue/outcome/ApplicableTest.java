package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.applicability.ChargeTest;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** Which check of the charge applies. */
public record ApplicableTest(ChargeTest test) implements JobOutcome {

    @Override
    public Judged judged() {
        return Judged.APPLICABLE_TEST;
    }

    @Override
    public String name() {
        return "applicable-test " + ConstantName.of(test);
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return List.of();
    }

    @Override
    public String line() {
        return name();
    }
}
