package readback.assistant.measure;

import java.util.List;
import readback.assistant.ear.Utterance;
import readback.grammar.Decision;

/**
 * What came of a value that was said once: the dialogue does something at the first utterance that is not passed over.
 *
 * @param heard the utterances, the last of which was decided on unless nothing came of any
 * @param whole whether all words of the value were heard, and no other
 * @param cut whether an utterance ended before the last word was half said
 * @param seconds from the end of the last word to the decision; NaN where nothing was heard
 */
record Attempt(Outcome outcome, Decision decision, List<Utterance> heard, boolean whole, boolean cut, double seconds) {

    enum Outcome {
        AT_ONCE,
        ASKED,
        WRONG,
        NOTHING
    }
}
