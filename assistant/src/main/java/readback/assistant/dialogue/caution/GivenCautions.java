package readback.assistant.dialogue.caution;

import java.util.Set;
import java.util.TreeSet;
import readback.calc.caution.CautionRule;

/**
 * Cautions given. Immutable.
 *
 * @param given since their cause arose, so that none is repeated like a nag; forgotten when the cause is gone
 * @param unheeded those that wait for the technician's word that they were understood
 * @param told those given before an activity began; once a session is enough
 */
public record GivenCautions(Set<CautionRule> given, Set<CautionRule> unheeded, Set<CautionRule> told) {

    public static final GivenCautions NONE = new GivenCautions(Set.of(), Set.of(), Set.of());

    public GivenCautions {
        given = Set.copyOf(given);
        unheeded = Set.copyOf(unheeded);
        told = Set.copyOf(told);
    }

    GivenCautions telling(CautionRule caution) {
        Set<CautionRule> more = new TreeSet<>(told);
        more.add(caution);
        return new GivenCautions(given, unheeded, more);
    }

    GivenCautions giving(CautionRule caution, boolean needsAcknowledgement) {
        Set<CautionRule> more = new TreeSet<>(given);
        more.add(caution);
        Set<CautionRule> waiting = new TreeSet<>(unheeded);
        if (needsAcknowledgement) {
            waiting.add(caution);
        }
        return new GivenCautions(more, waiting, told);
    }

    /** Only cautions whose cause is still there count as given. */
    GivenCautions whileActive(Set<CautionRule> active) {
        Set<CautionRule> still = new TreeSet<>(given);
        still.retainAll(active);
        return new GivenCautions(still, unheeded, told);
    }

    public GivenCautions heeded() {
        return new GivenCautions(given, Set.of(), told);
    }
}
