package readback.calc.measurement;

import readback.calc.quantity.TemperatureDifference;

/**
 * A measured value held against limits: on which side it lies, and how sure that is.
 *
 * @param value to a tenth of a Fahrenheit degree, the resolution of the published tables
 * @param probability that the true value lies on that side too, 0 to 1
 */
public record Comparison(TemperatureDifference value, Band limits, Position position, double probability) {

    /** Where a value lies. Both limits belong to the inside. */
    public enum Position {
        BELOW,
        INSIDE,
        ABOVE
    }

    /** Holds a value against limits. */
    public static Comparison of(Estimate measured, Band limits) {
        return of(measured.value(), measured.standardUncertainty(), limits);
    }

    /** Holds a value of the given standard uncertainty against limits. */
    public static Comparison of(TemperatureDifference measured, TemperatureDifference uncertainty, Band limits) {
        TemperatureDifference value = tenth(measured);
        if (value.compareTo(tenth(limits.low())) < 0) {
            return new Comparison(
                    value, limits, Position.BELOW, 1 - Conformity.atLeast(limits.low(), value, uncertainty));
        }
        if (value.compareTo(tenth(limits.high())) > 0) {
            return new Comparison(value, limits, Position.ABOVE, Conformity.atLeast(limits.high(), value, uncertainty));
        }
        return new Comparison(value, limits, Position.INSIDE, Conformity.within(value, uncertainty, limits));
    }

    /** Whether the true value may well lie on the other side of a limit: less than 90 % sure. */
    public boolean borderline() {
        return probability < Conformity.FIRM;
    }

    /** The value to a tenth of a Fahrenheit degree. */
    public static TemperatureDifference tenth(TemperatureDifference difference) {
        return TemperatureDifference.fahrenheit(Math.round(difference.fahrenheit() * 10) / 10.0);
    }
}
