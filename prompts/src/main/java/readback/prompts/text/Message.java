package readback.prompts.text;

import java.util.Map;
import java.util.TreeMap;

/**
 * Something to tell: the key of a catalogue text and the facts that fill it. Two messages are equal when they would be
 * worded the same, for the ear and for the eye.
 *
 * @param key as in "step.refrigerant.ask"
 * @param facts by the name of their place in the text
 * @param aloud whether it is spoken; everything is shown
 */
public record Message(String key, Map<String, Fact> facts, boolean aloud) {

    public Message {
        facts = Map.copyOf(facts);
    }

    public static Message of(String key) {
        return new Message(key, Map.of(), true);
    }

    /** The same message with one more fact. */
    public Message with(String name, Fact fact) {
        Map<String, Fact> more = new TreeMap<>(facts);
        more.put(name, fact);
        return new Message(key, more, aloud);
    }

    /** The same message for the eye alone. */
    public Message quietly() {
        return new Message(key, facts, false);
    }

    /** The same message for the ear too. */
    public Message outLoud() {
        return new Message(key, facts, true);
    }
}
