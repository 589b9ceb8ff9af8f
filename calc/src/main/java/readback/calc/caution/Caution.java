package readback.calc.caution;

import java.util.List;

/**
 * One thing to say before any number.
 *
 * @param priority 1 is said first; unique to the rule, and graver signal words always come before lighter ones
 * @param needsAcknowledgement whether work waits until the technician says that it was understood
 * @param authorities who has the last word, the nearest first; never empty
 */
public record Caution(
        CautionRule rule, Signal signal, int priority, boolean needsAcknowledgement, List<Authority> authorities)
        implements Comparable<Caution> {

    public Caution {
        authorities = List.copyOf(authorities);
        if (authorities.isEmpty()) {
            throw new IllegalArgumentException(rule + " defers to nobody");
        }
    }

    @Override
    public int compareTo(Caution other) {
        return Integer.compare(priority, other.priority);
    }
}
