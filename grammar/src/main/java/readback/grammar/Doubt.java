package readback.grammar;

import java.util.List;

/** Whether what a recogniser heard at a step leaves doubt. Safe for any thread. */
@FunctionalInterface
public interface Doubt {

    /** Where phrases belong to no step, nobody asks about what was heard. */
    Doubt NONE = hypotheses -> false;

    /**
     * Whether something would be asked, or the utterance passed over, whatever the state of the system.
     *
     * @param hypotheses the alternatives of one utterance, best first
     */
    boolean left(List<Hypothesis> hypotheses);
}
