package readback.calc.quantity;

/**
 * A point on the temperature scale. Not a difference: see {@link TemperatureDifference}.
 *
 * @param kelvin thermodynamic temperature, above 0 K
 */
public record Temperature(double kelvin) implements Comparable<Temperature> {

    /** @throws OutOfRangeException if not a number above absolute zero */
    public Temperature {
        if (!(kelvin > 0) || kelvin == Double.POSITIVE_INFINITY) {
            throw new OutOfRangeException("temperature", kelvin, "K", "above 0 K");
        }
    }

    public static Temperature kelvin(double kelvin) {
        return new Temperature(kelvin);
    }

    public static Temperature celsius(double celsius) {
        return new Temperature(Unit.CELSIUS.toBase(celsius));
    }

    public static Temperature fahrenheit(double fahrenheit) {
        return new Temperature(Unit.FAHRENHEIT.toBase(fahrenheit));
    }

    /** This temperature in degrees Fahrenheit. */
    public double fahrenheit() {
        return Unit.FAHRENHEIT.fromBase(kelvin);
    }

    /** This temperature in degrees Celsius. */
    public double celsius() {
        return Unit.CELSIUS.fromBase(kelvin);
    }

    /** How far this temperature lies above the other; negative when below. */
    public TemperatureDifference minus(Temperature other) {
        return TemperatureDifference.kelvins(kelvin - other.kelvin);
    }

    public Temperature plus(TemperatureDifference difference) {
        return new Temperature(kelvin + difference.kelvins());
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvin, other.kelvin);
    }
}
