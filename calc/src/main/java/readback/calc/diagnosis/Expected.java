package readback.calc.diagnosis;

import readback.calc.numeric.Normal;

/** How a fault moves a symptom, and how likely a measured deviation is then. */
enum Expected {
    BELOW("-"),
    UNMOVED("0"),
    ABOVE("+"),
    BELOW_OR_UNMOVED("-0"),
    UNMOVED_OR_ABOVE("0+"),
    ANYTHING("?");

    /** A fault moves a symptom by anything up to so many standard uncertainties. Ours. */
    static final double REACH = 5;

    /** Share of readings that are simply wrong and say nothing. Ours. */
    private static final double ASTRAY = 0.05;

    private static final double UNIFORM = 1 / (2 * REACH);

    private final String sign;

    Expected(String sign) {
        this.sign = sign;
    }

    /** The expectation that a sign in fault-patterns.txt stands for. */
    static Expected of(String sign) {
        for (Expected expected : values()) {
            if (expected.sign.equals(sign)) {
                return expected;
            }
        }
        throw new IllegalStateException("no such sign in the fault patterns: " + sign);
    }

    /** Probability density of the deviation; a deviation beyond the reach counts as one at its end. */
    double density(double deviations) {
        double z = Math.max(-REACH, Math.min(REACH, deviations));
        return (1 - ASTRAY) * sound(z) + ASTRAY * UNIFORM;
    }

    private double sound(double z) {
        return switch (this) {
            case BELOW -> moved(-z);
            case UNMOVED -> unmoved(z);
            case ABOVE -> moved(z);
            case BELOW_OR_UNMOVED -> (moved(-z) + unmoved(z)) / 2;
            case UNMOVED_OR_ABOVE -> (moved(z) + unmoved(z)) / 2;
            case ANYTHING -> UNIFORM;
        };
    }

    private static double unmoved(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    /** Any shift from zero to the reach, blurred by the uncertainty of the measurement. */
    private static double moved(double z) {
        return (Normal.below(z) - Normal.below(z - REACH)) / REACH;
    }
}
