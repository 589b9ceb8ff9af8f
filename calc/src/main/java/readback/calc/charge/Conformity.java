package readback.calc.charge;

import readback.calc.quantity.TemperatureDifference;

/**
 * How sure a comparison with limits is (JCGM 106:2012, 7): the probability that the true value lies on the side where the
 * measured one lies, for a normal distribution of the combined uncertainty.
 */
final class Conformity {

    /**
     * A comparison is firm when the probability is 90 % or more, that is when the one-sided 90 % interval (1.28 standard
     * uncertainties) does not reach across the limit. The usual 95 % two-sided interval is what is reported; as a rule of
     * decision it would leave a third of a degree of the installer's subcooling band with ordinary instruments, and every
     * verdict would be borderline.
     */
    static final double FIRM = 0.90;

    private Conformity() {}

    /** The probability that the true value lies between the limits. */
    static double within(TemperatureDifference value, TemperatureDifference uncertainty, Band band) {
        return Math.max(0, atLeast(band.low(), value, uncertainty) - atLeast(band.high(), value, uncertainty));
    }

    /** The probability that the true value lies above the limit. */
    static double atLeast(TemperatureDifference limit, TemperatureDifference value, TemperatureDifference uncertainty) {
        double distance = value.kelvins() - limit.kelvins();
        if (uncertainty.kelvins() <= 0) {
            return distance > 0 ? 1 : 0;
        }
        return normal(distance / uncertainty.kelvins());
    }

    /**
     * The standard normal distribution function to 7.5e-8: Abramowitz and Stegun, Handbook of Mathematical Functions,
     * 26.2.17.
     */
    static double normal(double z) {
        if (z < 0) {
            return 1 - normal(-z);
        }
        double t = 1 / (1 + 0.2316419 * z);
        double polynomial =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return 1 - Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * polynomial;
    }
}
