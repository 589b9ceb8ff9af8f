package readback.assistant.bench;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/** How the technician's words reach the dialogue. */
interface Speech {

    /** Typed, with every figure that an instrument shows. */
    Speech TYPED = new Typed(false);

    /** Typed as it would be called out, so that nothing but the hearing differs. */
    Speech TYPED_AS_CALLED_OUT = new Typed(true);

    /** Certain words. */
    record Typed(boolean calledOut) implements Speech {
        @Override
        public Spoken heard(String words, Expectation expectation) {
            return new Spoken(words, false, List.of(List.of(Hypothesis.typed(words))));
        }

        @Override
        public Optional<Spoken> aside(Expectation expectation) {
            return Optional.empty();
        }

        @Override
        public Event.Source source() {
            return Event.Source.KEYS;
        }
    }

    /**
     * What was said and what was heard of it.
     *
     * @param words as they were said, with a comma at each pause
     * @param slips whether they hold a slip of the tongue and its correction
     * @param utterances the alternatives of each; none where nothing was heard
     */
    record Spoken(String words, boolean slips, List<List<Hypothesis>> utterances) {
        public Spoken {
            utterances = List.copyOf(utterances);
        }
    }

    /** The words as they are said and heard. */
    Spoken heard(String words, Expectation expectation);

    /** Now and then something that is said to somebody else before the answer. */
    Optional<Spoken> aside(Expectation expectation);

    /** Where the words come from. */
    Event.Source source();

    /** Whether values are read as people call them out, who listen to what is read back. */
    default boolean calledOut() {
        return true;
    }
}
