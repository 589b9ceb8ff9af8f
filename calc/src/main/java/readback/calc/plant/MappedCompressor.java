package readback.calc.plant;

/**
 * A compressor by its published map: the ten-coefficient polynomials of AHRI Standard 540 in the dew temperatures of
 * suction and discharge in °F, flow in lb/h and power in W.
 */
record MappedCompressor(Map map, double factor) implements Compressor {

    private static final double POUND_AN_HOUR = 0.45359237 / 3_600;

    /** Published maps of R-410A. */
    enum Map {
        /** A 3-ton compressor: sample input of Purdue's open heat pump model (Bell, Braun), read in its source. */
        SCROLL(
                new double[] {
                    217.3163128,
                    5.094492028,
                    -0.593170311,
                    4.38e-2,
                    -2.14e-2,
                    1.04e-2,
                    7.90e-5,
                    -5.73e-5,
                    1.79e-4,
                    -8.08e-5
                },
                new double[] {
                    -561.3615705,
                    -15.62601841,
                    46.92506685,
                    -0.217949552,
                    0.435062616,
                    -0.442400826,
                    2.25e-4,
                    2.37e-3,
                    -3.32e-3,
                    2.50e-3
                }),
        /** A 3-ton reciprocating compressor: sample input of a public heat pump design model, read in its source. */
        RECIPROCATING(
                new double[] {
                    334.1972, 7.186994, -3.807002, .072211, -.037339, .031873, .000121, -.00027, .000208, -.000151
                },
                new double[] {
                    960.2755, 4.58648, -4.553715, -.092091, .143861, .240418, -.001901, -.000688, .003575, -.001548
                });

        @SuppressWarnings("ImmutableEnumChecker") // never handed out
        private final double[] flow;

        @SuppressWarnings("ImmutableEnumChecker") // never handed out
        private final double[] power;

        Map(double[] flow, double[] power) {
            this.flow = flow;
            this.power = power;
        }
    }

    @Override
    public double flow(double evaporating, double condensing) {
        return factor * POUND_AN_HOUR * polynomial(map.flow, evaporating, condensing);
    }

    @Override
    public double power(double evaporating, double condensing) {
        return factor * polynomial(map.power, evaporating, condensing);
    }

    @Override
    public Compressor times(double more) {
        return new MappedCompressor(map, factor * more);
    }

    private static double polynomial(double[] c, double evaporating, double condensing) {
        double s = evaporating * 1.8 - 459.67;
        double d = condensing * 1.8 - 459.67;
        return c[0]
                + s * (c[1] + s * (c[3] + s * c[6]))
                + d * (c[2] + d * (c[5] + d * c[9]))
                + s * d * (c[4] + c[7] * s + c[8] * d);
    }
}
