package readback.calc.quantity;

/**
 * A pressure above a perfect vacuum: what equations of state take. Not what a manifold gauge shows: see
 * {@link GaugePressure}.
 *
 * @param pascals above zero
 */
public record AbsolutePressure(double pascals) implements Comparable<AbsolutePressure> {

    /** @throws OutOfRangeException if not a number above zero */
    public AbsolutePressure {
        if (!(pascals > 0) || pascals == Double.POSITIVE_INFINITY) {
            throw new OutOfRangeException("absolute pressure", pascals, "Pa", "above 0 Pa");
        }
    }

    public static AbsolutePressure pascals(double pascals) {
        return new AbsolutePressure(pascals);
    }

    public static AbsolutePressure psia(double psia) {
        return new AbsolutePressure(Unit.PSIA.toBase(psia));
    }

    /** A deep vacuum in microns of mercury, thousandths of a millimetre. */
    public static AbsolutePressure microns(double microns) {
        return new AbsolutePressure(Unit.MICRON.toBase(microns));
    }

    /** This pressure in pounds-force per square inch absolute. */
    public double psia() {
        return Unit.PSIA.fromBase(pascals);
    }

    /** What a gauge would show in air of this pressure. */
    public GaugePressure gaugeIn(AbsolutePressure atmosphere) {
        return GaugePressure.pascals(pascals - atmosphere.pascals);
    }

    @Override
    public int compareTo(AbsolutePressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
