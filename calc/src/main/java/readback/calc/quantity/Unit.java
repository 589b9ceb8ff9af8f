package readback.calc.quantity;

/**
 * Units in which a technician states a value. {@link #toBase(double)} gives the SI base unit of the {@link Dimension}.
 *
 * <p>Factors: psi 6894.757293168 Pa, inch of mercury 3386.389 Pa (at 32 °F), pound 0.45359237 kg, foot 0.3048 m,
 * Btu(IT) 1055.05585262 J: NIST SP 811 (2008), appendix B. Micron of mercury 0.1333224 Pa: same source, millimetre of
 * mercury.
 */
public enum Unit {
    PSIG(Dimension.GAUGE_PRESSURE, "psig", 6894.757293168, 0),
    BAR_GAUGE(Dimension.GAUGE_PRESSURE, "bar(g)", 1e5, 0),
    KILOPASCAL_GAUGE(Dimension.GAUGE_PRESSURE, "kPa(g)", 1e3, 0),
    MEGAPASCAL_GAUGE(Dimension.GAUGE_PRESSURE, "MPa(g)", 1e6, 0),
    KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_GAUGE(Dimension.GAUGE_PRESSURE, "kg/cm²(g)", 98066.5, 0),
    /** Depth below the local air pressure, so a larger number is a lower pressure. */
    INCH_MERCURY_VACUUM(Dimension.GAUGE_PRESSURE, "inHg vac", -3386.389, 0),
    /** Water column, for duct static pressure; conventional at 39.2 °F. */
    INCH_WATER(Dimension.GAUGE_PRESSURE, "in w.c.", 249.0889, 0),
    MICRON(Dimension.ABSOLUTE_PRESSURE, "micron", 0.1333224, 0),
    PSIA(Dimension.ABSOLUTE_PRESSURE, "psia", 6894.757293168, 0),
    KILOPASCAL_ABSOLUTE(Dimension.ABSOLUTE_PRESSURE, "kPa(a)", 1e3, 0),
    INCH_MERCURY_ABSOLUTE(Dimension.ABSOLUTE_PRESSURE, "inHg abs", 3386.389, 0),
    FAHRENHEIT(Dimension.TEMPERATURE, "°F", 5.0 / 9.0, 459.67 * 5.0 / 9.0),
    CELSIUS(Dimension.TEMPERATURE, "°C", 1, 273.15),
    FAHRENHEIT_DEGREES(Dimension.TEMPERATURE_DIFFERENCE, "°F", 5.0 / 9.0, 0),
    KELVINS(Dimension.TEMPERATURE_DIFFERENCE, "K", 1, 0),
    OUNCE(Dimension.MASS, "oz", 0.028349523125, 0),
    POUND(Dimension.MASS, "lb", 0.45359237, 0),
    /** Said in both, "seven pounds four ounces": the value is in pounds, 7.25, exact to the last decimal. */
    POUND_AND_OUNCES(Dimension.MASS, "lb+oz", 0.45359237, 0),
    GRAM(Dimension.MASS, "g", 1e-3, 0),
    KILOGRAM(Dimension.MASS, "kg", 1, 0),
    INCH(Dimension.LENGTH, "in", 0.0254, 0),
    FOOT(Dimension.LENGTH, "ft", 0.3048, 0),
    MILLIMETRE(Dimension.LENGTH, "mm", 1e-3, 0),
    METRE(Dimension.LENGTH, "m", 1, 0),
    SQUARE_FOOT(Dimension.AREA, "ft²", 0.3048 * 0.3048, 0),
    SQUARE_METRE(Dimension.AREA, "m²", 1, 0),
    OUNCE_PER_FOOT(Dimension.MASS_PER_LENGTH, "oz/ft", 0.028349523125 / 0.3048, 0),
    GRAM_PER_METRE(Dimension.MASS_PER_LENGTH, "g/m", 1e-3, 0),
    SECOND(Dimension.DURATION, "s", 1, 0),
    MINUTE(Dimension.DURATION, "min", 60, 0),
    HOUR(Dimension.DURATION, "h", 3600, 0),
    CUBIC_FOOT_PER_MINUTE(Dimension.AIRFLOW, "cfm", 0.3048 * 0.3048 * 0.3048 / 60, 0),
    CUBIC_METRE_PER_HOUR(Dimension.AIRFLOW, "m³/h", 1.0 / 3600, 0),
    AMPERE(Dimension.CURRENT, "A", 1, 0),
    VOLT(Dimension.VOLTAGE, "V", 1, 0),
    /** Ton of refrigeration, 12,000 Btu(IT) an hour. */
    TON_OF_REFRIGERATION(Dimension.POWER, "ton", 12000 * 1055.05585262 / 3600, 0),
    BTU_PER_HOUR(Dimension.POWER, "Btu/h", 1055.05585262 / 3600, 0),
    KILOWATT(Dimension.POWER, "kW", 1e3, 0),
    PERCENT(Dimension.RATIO, "%", 0.01, 0);

    private final Dimension dimension;
    private final String symbol;
    private final double factor;
    private final double offset;

    Unit(Dimension dimension, String symbol, double factor, double offset) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The written form that follows a number on the screen and in the record. */
    public String symbol() {
        return symbol;
    }

    /** The same value in the SI base unit of {@link #dimension()}. */
    public double toBase(double value) {
        return value * factor + offset;
    }

    /** The inverse of {@link #toBase(double)}. */
    public double fromBase(double base) {
        return (base - offset) / factor;
    }
}
