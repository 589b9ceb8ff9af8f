package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.caution.CautionRule;
import readback.prompts.checklist.Slot;

/**
 * What one event led to.
 *
 * @param state the state after it
 * @param effects what is to be done now, in order
 * @param outcome what is written beside the event
 */
public record Turn(State state, List<Effect> effects, Outcome outcome) {

    public Turn {
        effects = List.copyOf(effects);
    }

    /**
     * What the event was taken to mean and what it changed, as it is recorded and compared on replay.
     *
     * @param understood what the event was taken to mean
     * @param changes what it did to the slots, each named once
     * @param standing what was announced and not withdrawn, the charge first
     * @param cautions cautions given in answer to the event
     */
    public record Outcome(
            Understood understood, List<Change> changes, List<JobOutcome> standing, List<CautionRule> cautions) {
        public Outcome {
            changes = List.copyOf(changes);
            standing = List.copyOf(standing);
            cautions = List.copyOf(cautions);
        }

        /** What the event did to a slot; empty where it left it alone. */
        public Optional<Change> change(Slot slot) {
            return changes.stream().filter(each -> each.slot().equals(slot)).findFirst();
        }

        /** Everything that stands in one line for a reader; empty while nothing does. */
        public String line() {
            return JobOutcome.line(standing);
        }
    }
}
