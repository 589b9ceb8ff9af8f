package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.text.Message;

/** A question of the dialogue's own that comes before the checklist goes on. */
public sealed interface Pending {

    /** The question, for asking again. */
    Message question();

    /** The quantity that is in doubt, if one is. */
    default Optional<Quantity> inDoubt() {
        return Optional.empty();
    }

    /**
     * A value that needs an explicit yes.
     *
     * @param waiting further values of the same utterance that need one, in turn
     */
    record Confirm(Reading reading, Message question, List<Confirm> waiting) implements Pending {
        public Confirm {
            waiting = List.copyOf(waiting);
        }

        @Override
        public Optional<Quantity> inDoubt() {
            return Optional.of(reading.quantity());
        }
    }

    /** Two values sound alike: one of them is meant. */
    record Between(List<Reading> candidates, Message question) implements Pending {
        public Between {
            candidates = List.copyOf(candidates);
        }

        @Override
        public Optional<Quantity> inDoubt() {
            return Optional.of(candidates.get(0).quantity());
        }
    }

    /** The session was to be finished before it reached a verdict. */
    record Leave(Message question) implements Pending {}
}
