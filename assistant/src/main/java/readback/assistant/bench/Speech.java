package readback.assistant.bench;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/** How the technician's words reach the dialogue. */
interface Speech {

    /**
     * What was said.
     *
     * @param words as they were said, with a comma at each pause
     * @param slips whether they hold a slip of the tongue and its correction
     */
    record Spoken(String words, boolean slips) {}

    /** Whoever the words are said to. */
    interface Listener {

        /** Takes the alternatives of an utterance and tells what is expected after it; nothing once nobody listens. */
        Optional<Expectation> hears(List<Hypothesis> alternatives);
    }

    /**
     * Says the words; each utterance that is heard of them reaches the listener before the next one is listened for.
     */
    Spoken say(String words, Expectation expectation, Listener listener);

    /**
     * Now and then something that is said to somebody else before the answer.
     *
     * @param begins runs before it, if it is said
     */
    Optional<Spoken> aside(Expectation expectation, Runnable begins, Listener listener);

    /** Where the words come from. */
    Event.Source source();

    /** Whether values are read as people call them out, who listen to what is read back. */
    boolean calledOut();
}
