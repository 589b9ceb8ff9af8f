package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.name.ConstantName;
import readback.calc.procedure.VacuumDecay;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** The decay of a vacuum: its slope in whole microns a minute, and the limit that it must stay below in microns. */
public record Evacuation(VacuumDecay.Outcome outcome, long slopeMicronsPerMinute, long limitMicrons)
        implements JobOutcome {

    @Override
    public Judged judged() {
        return Judged.EVACUATION;
    }

    @Override
    public String name() {
        return "evacuation " + ConstantName.of(outcome);
    }

    @Override
    public boolean showsLeak() {
        return outcome == VacuumDecay.Outcome.LEAK;
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return List.of(Figure.micronsPerMinute("slope", slopeMicronsPerMinute), Figure.microns("limit", limitMicrons));
    }

    @Override
    public String line() {
        return name() + " slope=" + slopeMicronsPerMinute + "micron/min limit=" + limitMicrons + "micron";
    }
}
