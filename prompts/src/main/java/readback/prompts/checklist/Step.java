package readback.prompts.checklist;

import java.util.Optional;

/**
 * One step of a checklist.
 *
 * @param id unique in all checklists; texts are found under {@code step.<id>}
 * @param task what is to be done
 * @param when the step is passed over while this does not hold
 * @param again a value in the slot does not count while this holds, and is asked for again with the text
 *     {@code .repeat}
 * @param optional whether "skip" passes over the step without consequence
 * @param slot what the answer fills: the quantity's or choice set's name unless the checklist names another
 * @param conclusion what a yes or no tells about another slot
 */
public record Step(
        String id,
        Task task,
        StepCondition when,
        StepCondition again,
        boolean optional,
        Slot slot,
        Optional<Conclusion> conclusion) {

    /**
     * What the answer to a question tells about another slot.
     *
     * @param yes option that a yes fills in; empty for none
     * @param no option that a no fills in; empty for none
     */
    public record Conclusion(Slot slot, Optional<String> yes, Optional<String> no) {}
}
