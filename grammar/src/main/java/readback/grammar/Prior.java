package readback.grammar;

import readback.calc.quantity.Reading;

/**
 * What physics and experience say about a value before anyone has heard it: for this refrigerant, step and weather.
 * Pure: the same reading always gets the same grade within one decision.
 */
@FunctionalInterface
public interface Prior {

    /** How a value stands to what is known. */
    enum Grade {
        /** As it usually is. */
        TYPICAL,
        /** It can be, and is rarely seen: taken only after an explicit yes. */
        UNUSUAL,
        /** It cannot be. */
        IMPOSSIBLE
    }

    Grade of(Reading reading);

    /** Whether the value stands already: who corrects a value does not mean the same one again. */
    default boolean stands(Reading reading) {
        return false;
    }

    /** Knows nothing: every value is typical. Values that cannot be at all are still refused by the grammar itself. */
    static Prior indifferent() {
        return reading -> Grade.TYPICAL;
    }
}
