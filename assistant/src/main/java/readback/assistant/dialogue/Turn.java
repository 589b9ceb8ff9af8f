package readback.assistant.dialogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one event led to.
 *
 * @param state the state after it
 * @param effects what is to be done now, in order
 * @param outcome what is written beside the event
 */
public record Turn(State state, List<Effect> effects, Outcome outcome) {

    public Turn {
        effects = List.copyOf(effects);
    }

    /**
     * What the event was taken to mean and what it changed, in the form that is recorded and compared on replay.
     *
     * @param understood what the event was taken to mean
     * @param changes slots that changed, with their new content; empty content for a removed answer
     * @param verdict the verdict in force after the event
     * @param cautions cautions given in answer to the event
     */
    public record Outcome(
            Understood understood, Map<String, String> changes, Optional<String> verdict, List<String> cautions) {
        public Outcome {
            changes = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(changes));
            cautions = List.copyOf(cautions);
        }
    }
}
