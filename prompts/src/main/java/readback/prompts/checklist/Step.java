package readback.prompts.checklist;

import readback.calc.quantity.Quantity;

/**
 * One step of a checklist.
 *
 * @param id unique in all checklists; texts are found under {@code step.<id>}
 * @param task what is to be done
 * @param when the step is passed over while this does not hold
 * @param optional whether "skip" passes over the step without consequence
 */
public record Step(String id, Task task, Condition when, boolean optional) {

    /** The slot that the answer fills: the quantity's or choice set's name, else the step's own. */
    public String slot() {
        if (task instanceof Task.Measure measure) {
            return slotOf(measure.quantity());
        }
        if (task instanceof Task.Choose choose) {
            return choose.choice();
        }
        return id;
    }

    /** The slot that readings of a quantity fill. */
    public static String slotOf(Quantity quantity) {
        return quantity.name();
    }
}
