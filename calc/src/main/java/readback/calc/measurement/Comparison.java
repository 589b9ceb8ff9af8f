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
        long tenths = tenths(measured);
        TemperatureDifference value = ofTenths(tenths);
        Position position = position(tenths, limits);
        return new Comparison(value, limits, position, probability(position, value, limits, uncertainty.kelvins()));
    }

    private static Position position(long tenths, Band limits) {
        if (tenths < tenths(limits.low())) {
            return Position.BELOW;
        }
        return tenths > tenths(limits.high()) ? Position.ABOVE : Position.INSIDE;
    }

    private static double probability(Position position, TemperatureDifference value, Band limits, double kelvins) {
        return switch (position) {
            case BELOW -> 1 - Conformity.atLeast(limits.low(), value, kelvins);
            case ABOVE -> Conformity.atLeast(limits.high(), value, kelvins);
            case INSIDE -> Conformity.within(value, kelvins, limits);
        };
    }

    /** Whether the true value may well lie on the other side of a limit: less than 90 % sure. */
    public boolean borderline() {
        return probability < Conformity.FIRM;
    }

    /**
     * How much surer than needed it would be with another standard uncertainty; negative where it would be borderline.
     *
     * @param kelvins the standard uncertainty, zero or more
     */
    double firmness(double kelvins) {
        return probability(position, value, limits, kelvins) - Conformity.FIRM;
    }

    /** The value to a tenth of a Fahrenheit degree. */
    public static TemperatureDifference tenth(TemperatureDifference difference) {
        return ofTenths(tenths(difference));
    }

    private static long tenths(TemperatureDifference difference) {
        return Math.round(difference.fahrenheit() * 10);
    }

    private static TemperatureDifference ofTenths(long tenths) {
        return TemperatureDifference.fahrenheit(tenths / 10.0);
    }
}
