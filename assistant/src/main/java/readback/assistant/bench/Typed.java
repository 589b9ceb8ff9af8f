package readback.assistant.bench;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Event;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/**
 * Certain words.
 *
 * @param calledOut whether they are typed as they would be called out, so that nothing but the hearing differs; else
 *     with every figure that an instrument shows
 */
record Typed(boolean calledOut) implements Speech {

    @Override
    public Spoken say(String words, Expectation expectation, Listener listener) {
        listener.hears(List.of(Hypothesis.typed(words)));
        return new Spoken(words, false);
    }

    @Override
    public Optional<Spoken> aside(Expectation expectation, Runnable begins, Listener listener) {
        return Optional.empty();
    }

    @Override
    public Event.Source source() {
        return Event.Source.KEYS;
    }
}
