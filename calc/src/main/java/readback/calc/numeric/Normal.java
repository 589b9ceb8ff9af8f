package readback.calc.numeric;

/** The standard normal distribution. */
public final class Normal {

    private Normal() {}

    /**
     * The probability of a value below z standard deviations, to 7.5e-8: Abramowitz and Stegun, Handbook of
     * Mathematical Functions, 26.2.17.
     */
    public static double below(double z) {
        if (z < 0) {
            return 1 - below(-z);
        }
        double t = 1 / (1 + 0.2316419 * z);
        double polynomial =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return 1 - Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * polynomial;
    }
}
