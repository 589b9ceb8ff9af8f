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
