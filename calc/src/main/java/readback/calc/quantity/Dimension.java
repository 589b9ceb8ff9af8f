package readback.calc.quantity;

/** The kinds of physical value that a reading can have. A unit belongs to exactly one dimension. */
public enum Dimension {
    /** Pressure above the local air pressure, base unit pascal. */
    GAUGE_PRESSURE,
    /** Pressure above a perfect vacuum, base unit pascal: vacuum gauges and barometers. */
    ABSOLUTE_PRESSURE,
    /** A point on the temperature scale, base unit kelvin. */
    TEMPERATURE,
    /** A distance on the temperature scale (superheat, subcooling), base unit kelvin. */
    TEMPERATURE_DIFFERENCE,
    /** Base unit kilogram. */
    MASS,
    /** Base unit metre. */
    LENGTH,
    /** Base unit square metre. */
    AREA,
    /** Base unit kilogram per metre. */
    MASS_PER_LENGTH,
    /** Base unit second. */
    DURATION,
    /** Volume of air a second, base unit cubic metre per second. */
    AIRFLOW,
    /** Base unit ampere. */
    CURRENT,
    /** Base unit volt. */
    VOLTAGE,
    /** Heat moved a second, base unit watt. */
    POWER,
    /** A share, base unit one (50 percent is 0.5). */
    RATIO
}
