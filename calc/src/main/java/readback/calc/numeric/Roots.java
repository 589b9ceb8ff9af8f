package readback.calc.numeric;

import java.util.function.DoubleUnaryOperator;

/** Zeros of continuous functions of one variable inside a bracket. */
public final class Roots {

    private static final int MOST_STEPS = 200;

    private Roots() {}

    /**
     * A zero of the function between two points where its signs differ, by the Illinois variant of false position,
     * which never leaves the bracket (Dowell and Jarratt, BIT 11, 168 (1971), doi 10.1007/BF01934364), with bisection
     * whenever the bracket shrinks too slowly.
     *
     * @param relativeTolerance width of the final bracket, as a share of the zero
     * @throws IllegalArgumentException if the signs do not differ
     */
    public static double find(DoubleUnaryOperator function, double low, double high, double relativeTolerance) {
        double a = low;
        double b = high;
        double fa = function.applyAsDouble(a);
        double fb = function.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (Double.isNaN(fa) || Double.isNaN(fb) || fa < 0 == fb < 0) {
            throw new IllegalArgumentException(
                    "no change of sign between " + low + " (" + fa + ") and " + high + " (" + fb + ")");
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double width = Math.abs(b - a);
            double x = (a * fb - b * fa) / (fb - fa);
            if (step % 3 == 2 || x == a || x == b) {
                x = 0.5 * (a + b);
            }
            double fx = function.applyAsDouble(x);
            if (fx == 0 || width <= relativeTolerance * Math.abs(x)) {
                return x;
            }
            if (fx < 0 != fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            b = x;
            fb = fx;
        }
        return b;
    }
}
