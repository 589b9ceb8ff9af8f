package readback.calc.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A value exactly as it was stated: "suction, 118.5 psig". Digits are kept, so the read-back and the record show what
 * was said and nothing that arithmetic added.
 *
 * @param quantity what the value is of
 * @param value the stated number, any sign, unlimited decimals
 * @param unit a unit of the quantity's dimension
 */
public record Reading(Quantity quantity, BigDecimal value, Unit unit) {

    /** A sixteenth of a decimal is a decimal again, so pounds hold every ounce exactly. NIST SP 811 (2008). */
    private static final BigDecimal OUNCES_IN_A_POUND = BigDecimal.valueOf(16);

    /** @throws IllegalArgumentException if the unit does not measure the quantity */
    public Reading {
        if (unit.dimension() != quantity.dimension()) {
            throw new IllegalArgumentException(
                    quantity + " is a " + quantity.dimension() + ", but " + unit + " measures " + unit.dimension());
        }
    }

    /** A reading in the quantity's usual unit, as in {@code Reading.of(SUCTION_PRESSURE, "118")}. */
    public static Reading of(Quantity quantity, String value) {
        return new Reading(quantity, new BigDecimal(value), quantity.usualUnit());
    }

    /** A mass said in pounds and ounces, from its ounces in all: 116 for "seven pounds four ounces". */
    public static Reading poundsAndOunces(Quantity quantity, BigDecimal ounces) {
        return new Reading(quantity, plain(ounces.divide(OUNCES_IN_A_POUND)), Unit.POUND_AND_OUNCES);
    }

    /** The same reading as a plain number of one unit: what was said in pounds and ounces is given in ounces. */
    public Reading inOneUnit() {
        return unit == Unit.POUND_AND_OUNCES
                ? new Reading(quantity, plain(value.multiply(OUNCES_IN_A_POUND)), Unit.OUNCE)
                : this;
    }

    /**
     * Another value of the quantity in this unit, to the hundredth; to the hundredth of an ounce where this one was
     * said in pounds and ounces.
     *
     * @param base in the SI base unit of the quantity's dimension
     */
    public Reading withBase(double base) {
        Reading one = inOneUnit();
        BigDecimal hundredths =
                plain(BigDecimal.valueOf(one.unit.fromBase(base)).setScale(2, RoundingMode.HALF_UP));
        return unit == Unit.POUND_AND_OUNCES
                ? poundsAndOunces(quantity, hundredths)
                : new Reading(quantity, hundredths, unit);
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }

    /** The value in the SI base unit of the quantity's dimension. */
    public double base() {
        return unit.toBase(value.doubleValue());
    }

    /** The value converted to another unit of the same dimension. */
    public double in(Unit other) {
        if (other == unit) {
            return value.doubleValue();
        }
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(unit + " cannot be stated in " + other);
        }
        return other.fromBase(base());
    }

    /** This reading as a temperature. */
    public Temperature temperature() {
        require(Dimension.TEMPERATURE);
        return Temperature.kelvin(base());
    }

    /** This reading as a temperature difference. */
    public TemperatureDifference temperatureDifference() {
        require(Dimension.TEMPERATURE_DIFFERENCE);
        return TemperatureDifference.kelvins(base());
    }

    /** This reading as a pressure above local air pressure. */
    public GaugePressure gaugePressure() {
        require(Dimension.GAUGE_PRESSURE);
        return GaugePressure.pascals(base());
    }

    /** This reading as a pressure above a perfect vacuum. */
    public AbsolutePressure absolutePressure() {
        require(Dimension.ABSOLUTE_PRESSURE);
        return AbsolutePressure.pascals(base());
    }

    private void require(Dimension dimension) {
        if (quantity.dimension() != dimension) {
            throw new IllegalArgumentException(quantity + " is a " + quantity.dimension() + ", not a " + dimension);
        }
    }

    @Override
    public String toString() {
        return quantity + " " + value.toPlainString() + " " + unit.symbol();
    }
}
