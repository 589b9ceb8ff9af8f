package readback.assistant.bench;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/** How the technician's words reach the dialogue. */
interface Speech {

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
    boolean calledOut();
}
