package readback.assistant.dialogue;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import readback.calc.procedure.CylinderScale;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Slot;

/** The cylinder's weight before and after charging: its fall counts as the amount added while none is said. */
public final class ScaleSlots {

    static final Set<Slot> BOTH = Set.of(Slots.SCALE_BEFORE, Slots.SCALE_AFTER);

    private ScaleSlots() {}

    /** What went in, from the readings that the slots hold; empty while one is missing or the scale has not fallen. */
    public static Optional<Reading> wentIn(Function<Slot, Optional<Reading>> held) {
        return held.apply(Slots.SCALE_BEFORE)
                .flatMap(before -> held.apply(Slots.SCALE_AFTER).flatMap(after -> CylinderScale.wentIn(before, after)));
    }

    /** Whether a value for a slot would leave a scale that did not fall. */
    static boolean wouldNotFall(Assessment assessment, Slot slot, Reading reading) {
        Function<Slot, Optional<Reading>> held =
                each -> each.equals(slot) ? Optional.of(reading) : assessment.reading(each);
        return reading.quantity() == Quantity.CYLINDER_WEIGHT
                && held.apply(Slots.SCALE_BEFORE).isPresent()
                && held.apply(Slots.SCALE_AFTER).isPresent()
                && wentIn(held).isEmpty();
    }
}
