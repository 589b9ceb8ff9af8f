package readback.calc.procedure;

import readback.calc.quantity.Mass;

/**
 * The share of the full charge that a system lost in a year, judged by what had to be added. The two methods of 40 CFR
 * 82.152 and 84.102 (from memory): one method is to be used for all appliances of a place.
 */
public final class LeakRate {

    private static final double DAYS = 365;
    private static final double PERCENT = 100;

    private LeakRate() {}

    /**
     * The rolling average: what was added in the last 365 days.
     *
     * @param added in these days
     * @return percent of the full charge
     * @throws IllegalArgumentException without a full charge
     */
    public static double rolling(Mass added, Mass fullCharge) {
        return PERCENT * share(added, fullCharge);
    }

    /**
     * The latest addition, taken to go on at its pace for a year.
     *
     * @param added the latest time
     * @param days since the addition before; more than 365 count as 365
     * @return percent of the full charge in a year
     * @throws IllegalArgumentException without a full charge, or for less than a day
     */
    public static double annualized(Mass added, Mass fullCharge, long days) {
        if (days < 1) {
            throw new IllegalArgumentException("a rate needs a day at least, not " + days);
        }
        return PERCENT * share(added, fullCharge) * DAYS / Math.min(DAYS, (double) days);
    }

    private static double share(Mass added, Mass fullCharge) {
        if (fullCharge.kilograms() <= 0) {
            throw new IllegalArgumentException("no leak rate of a full charge of " + fullCharge);
        }
        return added.kilograms() / fullCharge.kilograms();
    }
}
