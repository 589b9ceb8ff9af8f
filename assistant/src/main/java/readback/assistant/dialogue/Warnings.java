package readback.assistant.dialogue;

import java.util.Set;
import java.util.TreeSet;

/**
 * Cautions given. Immutable.
 *
 * @param given since their cause arose, so that none is repeated like a nag; forgotten when the cause is gone
 * @param unheeded those that wait for the technician's word that they were understood
 */
public record Warnings(Set<String> given, Set<String> unheeded) {

    static final Warnings NONE = new Warnings(Set.of(), Set.of());

    public Warnings {
        given = Set.copyOf(given);
        unheeded = Set.copyOf(unheeded);
    }

    Warnings giving(String caution, boolean needsAcknowledgement) {
        Set<String> more = new TreeSet<>(given);
        more.add(caution);
        Set<String> waiting = new TreeSet<>(unheeded);
        if (needsAcknowledgement) {
            waiting.add(caution);
        }
        return new Warnings(more, waiting);
    }

    /** Only cautions whose cause is still there count as given. */
    Warnings whileActive(Set<String> active) {
        Set<String> still = new TreeSet<>(given);
        still.retainAll(active);
        return new Warnings(still, unheeded);
    }

    Warnings heeded() {
        return new Warnings(given, Set.of());
    }
}
