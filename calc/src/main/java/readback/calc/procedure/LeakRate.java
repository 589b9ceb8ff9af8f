package readback.calc.procedure;

import readback.calc.quantity.Mass;

/**
 * The share of the full charge that a system lost in a year, judged by what had to be added: the rolling average, one
 * of the two methods of 40 CFR 82.152 and 84.102 (from memory).
 */
public final class LeakRate {

    private static final double PERCENT = 100;

    private LeakRate() {}

    /**
     * What was added in the last 365 days, of the full charge.
     *
     * @param added in these days
     * @return percent
     * @throws IllegalArgumentException without a full charge
     */
    public static double rolling(Mass added, Mass fullCharge) {
        if (fullCharge.kilograms() <= 0) {
            throw new IllegalArgumentException("no leak rate of a full charge of " + fullCharge);
        }
        return PERCENT * (added.kilograms() / fullCharge.kilograms());
    }
}
