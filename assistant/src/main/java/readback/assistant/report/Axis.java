package readback.assistant.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * One direction of a plot: which value lies where.
 *
 * @param label with the unit
 * @param low value at {@code from}
 * @param high value at {@code to}
 * @param logarithmic equal ratios take equal lengths
 * @param from place of the low end in the drawing
 * @param to place of the high end in the drawing
 */
record Axis(String label, double low, double high, boolean logarithmic, double from, double to) {

    private static final int TICKS_WANTED = 6;
    private static final double[] STEPS = {1, 2, 2.5, 5, 10};
    private static final double[] LOGARITHMIC_STEPS = {1, 1.5, 2, 3, 4, 5, 6, 8};

    Axis {
        if (!(high > low) || (logarithmic && low <= 0)) {
            throw new IllegalArgumentException("an axis from " + low + " to " + high + " shows nothing");
        }
    }

    /** Where a value lies in the drawing; values beyond an end lie beyond it. */
    double place(double value) {
        double share = logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
        return from + share * (to - from);
    }

    /** Round values between the ends. */
    List<BigDecimal> ticks() {
        return logarithmic ? logarithmicTicks() : linearTicks();
    }

    private List<BigDecimal> linearTicks() {
        double raw = (high - low) / TICKS_WANTED;
        double decade = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = STEPS[STEPS.length - 1] * decade;
        for (double each : STEPS) {
            if (each * decade >= raw) {
                step = each * decade;
                break;
            }
        }
        List<BigDecimal> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(round(i * step));
        }
        return ticks;
    }

    private List<BigDecimal> logarithmicTicks() {
        List<BigDecimal> ticks = new ArrayList<>();
        for (double decade = Math.pow(10, Math.floor(Math.log10(low))); decade <= high; decade *= 10) {
            for (double each : LOGARITHMIC_STEPS) {
                double tick = each * decade;
                if (tick >= low && tick <= high) {
                    ticks.add(round(tick));
                }
            }
        }
        return ticks;
    }

    private static BigDecimal round(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
    }
}
