package readback.prompts.text;

import java.util.Map;
import java.util.TreeMap;

/**
 * Something to say: the key of a catalogue text and the facts that fill it. Two messages are equal when they would be
 * worded the same.
 *
 * @param key as in "step.refrigerant.ask"
 * @param facts by the name of their place in the text
 */
public record Message(String key, Map<String, Fact> facts) {

    public Message {
        facts = Map.copyOf(facts);
    }

    public static Message of(String key) {
        return new Message(key, Map.of());
    }

    /** The same message with one more fact. */
    public Message with(String name, Fact fact) {
        Map<String, Fact> more = new TreeMap<>(facts);
        more.put(name, fact);
        return new Message(key, more);
    }
}
