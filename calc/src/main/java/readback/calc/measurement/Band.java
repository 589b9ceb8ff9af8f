package readback.calc.measurement;

import readback.calc.quantity.TemperatureDifference;

/**
 * An allowed stretch of temperature difference, both ends allowed.
 *
 * @param low not above high
 */
public record Band(TemperatureDifference low, TemperatureDifference high) {

    public Band {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("a band from " + low + " up to " + high + " holds nothing");
        }
    }

    /** A band stated in Fahrenheit degrees. */
    public static Band fahrenheit(double low, double high) {
        return new Band(TemperatureDifference.fahrenheit(low), TemperatureDifference.fahrenheit(high));
    }

    /** Whether a value lies in the band; both ends do. */
    public boolean contains(TemperatureDifference value) {
        return value.compareTo(low) >= 0 && value.compareTo(high) <= 0;
    }

    /** The middle of the band. */
    public TemperatureDifference middle() {
        return TemperatureDifference.kelvins((low.kelvins() + high.kelvins()) / 2);
    }
}
