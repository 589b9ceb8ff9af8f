package readback.calc.procedure;

import java.util.List;
import java.util.OptionalInt;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/**
 * Leak rate as U.S. 40 CFR 82.152 and 84.102 define it (from memory; to be checked against the current text), and
 * whether the leak-repair rules apply at all.
 */
public final class LeakRate {

    private static final int DAYS_IN_YEAR = 365;

    /** 40 CFR 82.157(a). */
    private static final Mass OZONE_DEPLETING_FROM = Mass.pounds(50);

    /** 40 CFR 84.106, from memory; from 1 January 2026. */
    private static final Mass HYDROFLUOROCARBON_FROM = Mass.pounds(15);

    private static final double GWP_ABOVE = 53;

    private LeakRate() {}

    /** What the appliance is used for; it sets the rate above which a leak must be repaired. */
    public enum Use {
        /** Homes and small shops with ordinary split systems. */
        RESIDENTIAL_AND_LIGHT_COMMERCIAL_COOLING(0.10),
        /** Comfort cooling of larger buildings, and everything not named elsewhere. */
        COMFORT_COOLING(0.10),
        COMMERCIAL_REFRIGERATION(0.20),
        INDUSTRIAL_PROCESS(0.30);

        private final double trigger;

        Use(double trigger) {
            this.trigger = trigger;
        }

        /** Share of the full charge a year, 40 CFR 82.157(c)(2) and 84.106. */
        public double trigger() {
            return trigger;
        }
    }

    /** Which federal leak-repair rule applies to an appliance. */
    public enum Scope {
        /** 40 CFR 82.157: 50 lb or more of an ozone-depleting refrigerant. */
        OZONE_DEPLETING_RULE,
        /** 40 CFR 84.106: 15 lb or more of a substitute with a GWP above 53. */
        HYDROFLUOROCARBON_RULE,
        /** Outside 84.106(a)(3)(ii): residential and light commercial cooling. Records are good practice. */
        EXEMPT_RESIDENTIAL,
        /** Too little refrigerant, or one that neither rule names. */
        BELOW_THRESHOLD
    }

    /**
     * One addition of refrigerant.
     *
     * @param daysAgo days before now, zero or more
     */
    public record Addition(Mass amount, int daysAgo) {}

    /** The rule that applies. Most house systems are outside both. */
    public static Scope scope(Use use, Mass fullCharge, boolean ozoneDepleting, double globalWarmingPotential) {
        if (ozoneDepleting) {
            return fullCharge.compareTo(OZONE_DEPLETING_FROM) >= 0 ? Scope.OZONE_DEPLETING_RULE : Scope.BELOW_THRESHOLD;
        }
        if (use == Use.RESIDENTIAL_AND_LIGHT_COMMERCIAL_COOLING) {
            return Scope.EXEMPT_RESIDENTIAL;
        }
        return fullCharge.compareTo(HYDROFLUOROCARBON_FROM) >= 0 && globalWarmingPotential > GWP_ABOVE
                ? Scope.HYDROFLUOROCARBON_RULE
                : Scope.BELOW_THRESHOLD;
    }

    /**
     * Annualising method: share of the full charge a year, from one addition and the days since the one before, at most
     * 365.
     *
     * @throws OutOfRangeException for a full charge or a number of days not above zero, or a negative addition
     */
    public static double annualised(Mass added, Mass fullCharge, int daysSinceLastAddition) {
        requireCharge(fullCharge);
        refuseNegative(added);
        if (daysSinceLastAddition < 1) {
            throw new OutOfRangeException("days since the last addition", daysSinceLastAddition, "d", "1 or more");
        }
        return added.kilograms()
                / fullCharge.kilograms()
                * DAYS_IN_YEAR
                / Math.min(DAYS_IN_YEAR, daysSinceLastAddition);
    }

    /**
     * Rolling-average method: share of the full charge added in the last 365 days, or since the last successful
     * follow-up verification if that is sooner.
     *
     * @param daysSinceVerification empty when there was none
     * @throws OutOfRangeException for a full charge not above zero or a negative addition
     */
    public static double rolling(List<Addition> additions, Mass fullCharge, OptionalInt daysSinceVerification) {
        requireCharge(fullCharge);
        int window = Math.min(DAYS_IN_YEAR, daysSinceVerification.orElse(DAYS_IN_YEAR));
        double added = 0;
        for (Addition addition : additions) {
            refuseNegative(addition.amount());
            if (addition.daysAgo() <= window) {
                added += addition.amount().kilograms();
            }
        }
        return added / fullCharge.kilograms();
    }

    private static void requireCharge(Mass fullCharge) {
        if (!(fullCharge.kilograms() > 0)) {
            throw new OutOfRangeException("full charge", fullCharge.kilograms(), "kg", "above 0 kg");
        }
    }

    private static void refuseNegative(Mass added) {
        if (added.kilograms() < 0) {
            throw new OutOfRangeException("amount added", added.kilograms(), "kg", "0 kg or more");
        }
    }
}
