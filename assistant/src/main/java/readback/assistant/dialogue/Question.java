package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.grammar.Meaning;

/** What a technician may ask at any moment. An answer fills nothing; {@link Answers} gives it. */
public enum Question {
    SUPERHEAT,
    SUBCOOLING,
    TARGET_SUPERHEAT,
    TARGET_SUBCOOLING,
    TARGET,
    SATURATION,
    SPLIT,
    CHARGE_MOVED,
    VERDICT,
    LEFT,
    TIME_LEFT,
    UNIT,
    REFRIGERANT,
    ALTITUDE,
    REASONS,
    CAUTIONS;

    /** Whether the answer is worked out from readings, as who is examined should do himself. */
    boolean workedOut() {
        return switch (this) {
            case SUPERHEAT, SUBCOOLING, TARGET_SUPERHEAT, TARGET_SUBCOOLING, TARGET, SATURATION, SPLIT -> true;
            case CHARGE_MOVED, VERDICT, LEFT, TIME_LEFT, UNIT, REFRIGERANT, ALTITUDE, REASONS, CAUTIONS -> false;
        };
    }

    /** The choice set of what is asked. */
    static final String CHOICE = "question";

    /** What is asked; empty where the choice is of another set. */
    static Optional<Question> in(Meaning.Choice choice) {
        return choice.choice().equals(CHOICE) ? ConstantName.find(Question.class, choice.option()) : Optional.empty();
    }
}
