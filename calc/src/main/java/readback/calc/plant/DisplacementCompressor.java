package readback.calc.plant;

/**
 * A compressor by its displacement, for refrigerants of which no published map is at hand: the vapour left in the
 * clearance expands again and takes room; the work is that of a polytrope over an efficiency (textbook relations, from
 * memory).
 *
 * @param displacement swept volume, m³/s
 * @param exponent with which the polytropic work equals the isentropic work by the equation of state at rating
 * @param efficiency isentropic efficiency of the whole compressor
 */
record DisplacementCompressor(FluidTable fluid, double displacement, double exponent, double efficiency)
        implements Compressor {

    /** Share of the swept volume; from memory. */
    private static final double CLEARANCE = 0.04;

    /** Exponent of the vapour that expands out of the clearance; from memory. */
    private static final double EXPANSION = 1.15;

    @Override
    public double flow(double evaporating, double condensing) {
        double filled = 1 - CLEARANCE * (Math.pow(ratio(evaporating, condensing), 1 / EXPANSION) - 1);
        return displacement * fluid.vapourDensity(evaporating, RATED_SUPERHEAT) * Math.max(0.05, filled);
    }

    @Override
    public double power(double evaporating, double condensing) {
        double n = (exponent - 1) / exponent;
        double work = fluid.dewPressure(evaporating)
                / fluid.vapourDensity(evaporating, RATED_SUPERHEAT)
                / n
                * (Math.pow(ratio(evaporating, condensing), n) - 1);
        return flow(evaporating, condensing) * work / efficiency;
    }

    @Override
    public Compressor times(double more) {
        return new DisplacementCompressor(fluid, displacement * more, exponent, efficiency);
    }

    private double ratio(double evaporating, double condensing) {
        return fluid.dewPressure(condensing) / fluid.dewPressure(evaporating);
    }
}
