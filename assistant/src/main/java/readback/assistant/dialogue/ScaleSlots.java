package readback.assistant.dialogue;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import readback.calc.procedure.CylinderScale;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** The cylinder's weight before and after charging: its fall counts as the amount added while none is said. */
public final class ScaleSlots {

    public static final String BEFORE = "scale-before";
    public static final String AFTER = "scale-after";

    static final Set<String> BOTH = Set.of(BEFORE, AFTER);

    private ScaleSlots() {}

    /** What went in, from the readings that the slots hold; empty while one is missing or the scale has not fallen. */
    public static Optional<Reading> wentIn(Function<String, Optional<Reading>> held) {
        return held.apply(BEFORE)
                .flatMap(before -> held.apply(AFTER).flatMap(after -> CylinderScale.wentIn(before, after)));
    }

    /** Whether a value for a slot would leave a scale that did not fall. */
    static boolean wouldNotFall(Assessment assessment, String slot, Reading reading) {
        Function<String, Optional<Reading>> held =
                each -> each.equals(slot) ? Optional.of(reading) : assessment.reading(each);
        return reading.quantity() == Quantity.CYLINDER_WEIGHT
                && held.apply(BEFORE).isPresent()
                && held.apply(AFTER).isPresent()
                && wentIn(held).isEmpty();
    }
}
