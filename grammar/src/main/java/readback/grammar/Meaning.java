package readback.grammar;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** What an utterance asks the dialogue to do. */
public sealed interface Meaning {

    /** One or more values, in the order they were said. */
    record Values(List<Reading> readings) implements Meaning {
        public Values {
            readings = List.copyOf(readings);
        }
    }

    /** Values that replace earlier ones: "correction, one one zero". */
    record Correction(List<Reading> readings) implements Meaning {
        public Correction {
            readings = List.copyOf(readings);
        }
    }

    /**
     * An option of a set of choices: the refrigerant, the metering device, a checklist to switch to.
     *
     * @param choice the name of the set, as in "metering-device"
     * @param option the name of the option, as in "piston"
     */
    record Choice(String choice, String option) implements Meaning {}

    /**
     * A command, perhaps about one quantity: "why", "scratch the suction pressure".
     *
     * @param about empty when the command names nothing
     */
    record Ordered(Command command, Optional<Quantity> about) implements Meaning {
        public Ordered(Command command) {
            this(command, Optional.empty());
        }
    }

    /** A remark to keep in the record, in the words heard. */
    record Note(String words) implements Meaning {}

    /** "What is saturation at one eighteen": answered, nothing is filled. */
    record SaturationQuestion(Reading pressure) implements Meaning {}

    /**
     * Words that mean nothing here.
     *
     * @param where the words that could not be placed
     * @param why what was wrong
     */
    record NotUnderstood(String where, Reason why) implements Meaning {

        /** A reason that is about no words in particular. */
        public static NotUnderstood of(Reason.Kind why) {
            return new NotUnderstood("", Reason.of(why));
        }
    }
}
