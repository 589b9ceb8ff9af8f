package readback.calc.quantity;

/**
 * An amount of refrigerant, or a difference of two amounts.
 *
 * @param kilograms any finite number; negative means less than the other
 */
public record Mass(double kilograms) implements Comparable<Mass> {

    public static final Mass NONE = new Mass(0);

    /** @throws OutOfRangeException if not finite */
    public Mass {
        if (!Double.isFinite(kilograms)) {
            throw new OutOfRangeException("mass", kilograms, "kg", "finite");
        }
    }

    public static Mass kilograms(double kilograms) {
        return new Mass(kilograms);
    }

    public static Mass ounces(double ounces) {
        return new Mass(Unit.OUNCE.toBase(ounces));
    }

    public static Mass pounds(double pounds) {
        return new Mass(Unit.POUND.toBase(pounds));
    }

    /** This mass in avoirdupois ounces. */
    public double ounces() {
        return Unit.OUNCE.fromBase(kilograms);
    }

    /** This mass in pounds. */
    public double pounds() {
        return Unit.POUND.fromBase(kilograms);
    }

    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    public Mass minus(Mass other) {
        return new Mass(kilograms - other.kilograms);
    }

    public Mass times(double factor) {
        return new Mass(kilograms * factor);
    }

    /** This mass, or nothing if it is negative. */
    public Mass orNone() {
        return kilograms < 0 ? NONE : this;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
