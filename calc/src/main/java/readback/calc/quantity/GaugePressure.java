package readback.calc.quantity;

/**
 * A pressure relative to the local air, as manifold gauges show it; negative is a vacuum.
 *
 * @param pascals any finite number
 */
public record GaugePressure(double pascals) implements Comparable<GaugePressure> {

    /** @throws OutOfRangeException if not finite */
    public GaugePressure {
        if (!Double.isFinite(pascals)) {
            throw new OutOfRangeException("gauge pressure", pascals, "Pa", "finite");
        }
    }

    public static GaugePressure pascals(double pascals) {
        return new GaugePressure(pascals);
    }

    public static GaugePressure psig(double psig) {
        return new GaugePressure(Unit.PSIG.toBase(psig));
    }

    /** How far below the local air this pressure lies, in inches of mercury; negative above it. */
    public double inchesOfMercuryVacuum() {
        return Unit.INCH_MERCURY_VACUUM.fromBase(pascals);
    }

    /** This pressure in pounds-force per square inch gauge. */
    public double psig() {
        return Unit.PSIG.fromBase(pascals);
    }

    /**
     * The same pressure above a perfect vacuum.
     *
     * @throws OutOfRangeException if the gauge claims a vacuum deeper than the atmosphere
     */
    public AbsolutePressure absoluteIn(AbsolutePressure atmosphere) {
        return AbsolutePressure.pascals(pascals + atmosphere.pascals());
    }

    @Override
    public int compareTo(GaugePressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
