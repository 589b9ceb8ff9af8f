package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;

/** The height of the site: a number, or "sea level". */
final class Altitudes {

    /** The choice set of what is said instead of a number. */
    static final String CHOICE = "altitude";

    private static final Slot SLOT = Slot.of(Quantity.ALTITUDE);

    private Altitudes() {}

    /** The height that was said in words; empty where the choice is of something else. */
    static Optional<Reading> said(Meaning.Choice choice) {
        return choice.choice().equals(CHOICE) ? Optional.of(SessionSettings.SEA_LEVEL) : Optional.empty();
    }

    /** What may be said in words at a step. */
    static Optional<String> choice(Step step) {
        return step.task().measured().filter(Quantity.ALTITUDE::equals).map(any -> CHOICE);
    }

    /** Whether skipping the step leaves the height to be assumed. */
    static boolean asked(Step step) {
        return step.slot().equals(SLOT);
    }

    /** A reading said back; a height of nothing in words. */
    static Fact stated(Reading reading) {
        return reading.quantity() == Quantity.ALTITUDE && reading.value().signum() == 0
                ? new Fact.Term("altitude.sea-level")
                : new Fact.Stated(reading);
    }
}
