package readback.calc.plant;

/** The larger of two values, with a rounded corner: Newton's method loses its way at sharp ones. */
final class Smooth {

    private Smooth() {}

    /** @param corner how far the result lies above the larger value where both are equal, times two */
    static double max(double a, double b, double corner) {
        return 0.5 * (a + b + Math.sqrt((a - b) * (a - b) + corner * corner));
    }
}
