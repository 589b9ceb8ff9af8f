package readback.prompts.checklist;

import java.util.Optional;
import java.util.Set;
import readback.prompts.text.Message;

/**
 * One step of a checklist.
 *
 * @param id unique in all checklists
 * @param texts the name of the texts that ask and explain the step: its id, unless it shares them with steps of other
 *     jobs that ask for the same
 * @param task what is to be done
 * @param when the step is passed over while this does not hold
 * @param again a value in the slot does not count while this holds, and is asked for again with the text
 *     {@code .repeat}
 * @param optional whether "skip" passes over the step without consequence
 * @param slot what the answer fills: the quantity's or choice set's name unless the checklist names another
 * @param conclusion what a yes or no tells about another slot
 * @param readingsAnew whether its answer changes what is measured, so that what was read before no longer counts: the
 *     checklists of the job that repeat are gone through again
 */
public record Step(
        String id,
        String texts,
        Task task,
        StepCondition when,
        StepCondition again,
        boolean optional,
        Slot slot,
        Optional<Conclusion> conclusion,
        boolean readingsAnew) {

    /** What is asked and how it is found out is the same in every job; why it matters is not. */
    private static final Set<String> SHARED = Set.of(".ask", ".again", ".how");

    /**
     * One of the step's texts.
     *
     * @param ending as in ".ask" or ".why"
     */
    public Message text(String ending) {
        return Message.of("step." + (SHARED.contains(ending) ? texts : id) + ending);
    }

    /**
     * What the answer to a question tells about another slot.
     *
     * @param yes option that a yes fills in; empty for none
     * @param no option that a no fills in; empty for none
     */
    public record Conclusion(Slot slot, Optional<String> yes, Optional<String> no) {}
}
