package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.grammar.Meaning;
import readback.prompts.text.Message;

/**
 * A cry for help. It is answered before everything else, at any moment: on hold, before the cautions, while a value is
 * in doubt. What to do is said at once and nothing is asked until "carry on".
 */
public enum Emergency {
    GAS,
    FIRE,
    LEAK,
    BURN,
    FROSTBITE,
    EYE,
    SHOCK,
    SPARKS,
    BREATH,
    HURT;

    /** The choice set of what is cried. */
    static final String CHOICE = "emergency";

    /** The emergency that the words are about; empty where they are about none. */
    static Optional<Emergency> in(Meaning meaning) {
        return meaning instanceof Meaning.Choice choice && choice.choice().equals(CHOICE)
                ? ConstantName.find(Emergency.class, choice.option())
                : Optional.empty();
    }

    /** The emergency of which it is asked what to do; empty where none is asked about. */
    static Optional<Emergency> askedIn(Meaning meaning) {
        return meaning instanceof Meaning.Mentioned mentioned ? in(mentioned.of()) : Optional.empty();
    }

    /** What to do, in an emergency or where it is asked about. */
    Message told() {
        return Message.of("emergency." + ConstantName.of(this));
    }
}
