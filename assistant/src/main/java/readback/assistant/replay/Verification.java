package readback.assistant.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.record.RecordFault;
import readback.assistant.record.RecordedSession;
import readback.assistant.session.Line;
import readback.prompts.text.Wording;

/**
 * Whether a record is what it claims to be: its chain is whole, and the same dialogue reaches the same readings,
 * verdicts and cautions from its events.
 *
 * @param events compared
 * @param fault in the chain
 * @param difference the first one; what was said counts only where the texts are those of then
 * @param madeWith the version that made the record, as its header names it
 * @param otherParts parts that are not those of then, by name, as "recorded -> now": they explain a difference
 */
public record Verification(
        int events,
        Optional<RecordFault> fault,
        Optional<Difference> difference,
        String madeWith,
        Map<String, String> otherParts) {

    private static final String NOT_NAMED = "–";

    public Verification {
        otherParts = java.util.Collections.unmodifiableMap(new TreeMap<>(otherParts));
    }

    /**
     * Replays a session and compares.
     *
     * @param parts the fingerprints of what this program understands and says with
     */
    public static Verification of(
            Dialogue dialogue, Wording wording, Map<String, String> parts, RecordedSession session) {
        Map<String, String> others = new TreeMap<>();
        parts.forEach((name, now) -> {
            String then = session.header().parts().getOrDefault(name, NOT_NAMED);
            if (!then.equals(now)) {
                others.put(name, then + " -> " + now);
            }
        });
        boolean sameWords =
                Objects.equals(parts.get("texts"), session.header().parts().get("texts"));
        AtomicInteger events = new AtomicInteger();
        List<Difference> differences = new ArrayList<>();
        Replay.through(dialogue, session.entries(), scene -> {
            events.incrementAndGet();
            Difference.between(scene.entry(), scene.turn())
                    .or(() -> sameWords ? inWords(scene, wording) : Optional.empty())
                    .ifPresent(differences::add);
            return differences.isEmpty();
        });
        if (differences.isEmpty() && events.get() < session.entries().size()) {
            differences.add(Difference.outOfOrder(session.entries().get(events.get())));
        }
        return new Verification(
                events.get(),
                session.fault(),
                differences.stream().findFirst(),
                session.header().program(),
                others);
    }

    private static Optional<Difference> inWords(Scene scene, Wording wording) {
        return Difference.inWords(scene.entry(), Line.shown(scene.turn(), wording));
    }

    /** Whether another version made the record, so that a difference says nothing about the record. */
    public boolean byAnotherVersion() {
        return !otherParts.isEmpty();
    }

    public boolean identical() {
        return fault.isEmpty() && difference.isEmpty();
    }
}
