package readback.assistant.bench;

import java.util.List;
import readback.assistant.dialogue.Event;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/** How the technician's words reach the dialogue. */
interface Speech {

    /** Typed: certain words. */
    Speech TYPED = new Speech() {
        @Override
        public List<List<Hypothesis>> heard(String words, Expectation expectation) {
            return List.of(List.of(Hypothesis.typed(words)));
        }

        @Override
        public Event.Source source() {
            return Event.Source.KEYS;
        }
    };

    /** What is heard of the words, utterance by utterance; none where nothing was heard. */
    List<List<Hypothesis>> heard(String words, Expectation expectation);

    /** Where the words come from. */
    Event.Source source();
}
