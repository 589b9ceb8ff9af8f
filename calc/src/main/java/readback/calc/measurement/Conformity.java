package readback.calc.measurement;

import readback.calc.numeric.Normal;
import readback.calc.quantity.TemperatureDifference;

/**
 * How sure a comparison with limits is (JCGM 106:2012, 7): the probability that the true value lies on the side where
 * the measured one lies, for a normal distribution of the combined uncertainty.
 */
final class Conformity {

    /**
     * A comparison is firm when the probability is 90 % or more, that is when the one-sided 90 % interval (1.28
     * standard uncertainties) does not reach across the limit. The usual 95 % two-sided interval is what is reported;
     * as a rule of decision it would leave a third of a degree of the installer's subcooling band with ordinary
     * instruments, and every verdict would be borderline. Decision 0004.
     */
    static final double FIRM = 0.90;

    private Conformity() {}

    /**
     * The probability that the true value lies between the limits.
     *
     * @param uncertainty one standard deviation, K
     */
    static double within(TemperatureDifference value, double uncertainty, Band band) {
        return Math.max(0, atLeast(band.low(), value, uncertainty) - atLeast(band.high(), value, uncertainty));
    }

    /**
     * The probability that the true value lies above the limit.
     *
     * @param uncertainty one standard deviation, K
     */
    static double atLeast(TemperatureDifference limit, TemperatureDifference value, double uncertainty) {
        double distance = value.kelvins() - limit.kelvins();
        if (uncertainty <= 0) {
            return distance > 0 ? 1 : 0;
        }
        return Normal.below(distance / uncertainty);
    }
}
