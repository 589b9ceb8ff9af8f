package readback.calc.quantity;

/**
 * A distance between two temperatures: superheat, subcooling, a tolerance. One kelvin is 1.8 Fahrenheit degrees, with
 * no offset.
 *
 * @param kelvins any finite number
 */
public record TemperatureDifference(double kelvins) implements Comparable<TemperatureDifference> {

    /** @throws OutOfRangeException if not finite */
    public TemperatureDifference {
        if (!Double.isFinite(kelvins)) {
            throw new OutOfRangeException("temperature difference", kelvins, "K", "finite");
        }
    }

    public static TemperatureDifference kelvins(double kelvins) {
        return new TemperatureDifference(kelvins);
    }

    public static TemperatureDifference fahrenheit(double fahrenheitDegrees) {
        return new TemperatureDifference(Unit.FAHRENHEIT_DEGREES.toBase(fahrenheitDegrees));
    }

    /** This difference in Fahrenheit degrees. */
    public double fahrenheit() {
        return Unit.FAHRENHEIT_DEGREES.fromBase(kelvins);
    }

    public TemperatureDifference minus(TemperatureDifference other) {
        return new TemperatureDifference(kelvins - other.kelvins);
    }

    public TemperatureDifference negated() {
        return new TemperatureDifference(-kelvins);
    }

    @Override
    public int compareTo(TemperatureDifference other) {
        return Double.compare(kelvins, other.kelvins);
    }
}
