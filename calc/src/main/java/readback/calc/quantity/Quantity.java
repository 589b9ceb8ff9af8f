package readback.calc.quantity;

/**
 * What a technician states a number for. The identity of a value everywhere: what is asked, what was heard, what is
 * judged and what is recorded.
 */
public enum Quantity {
    SUCTION_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    /** High-side pressure at the liquid service port. */
    LIQUID_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    SUCTION_LINE_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    LIQUID_LINE_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    DISCHARGE_LINE_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    /** Air entering the condenser. */
    OUTDOOR_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    RETURN_WET_BULB(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    RETURN_DRY_BULB(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    SUPPLY_DRY_BULB(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    SUPPLY_WET_BULB(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    /** Of the return air; with its dry bulb it gives the wet bulb. */
    RELATIVE_HUMIDITY(Dimension.RATIO, Unit.PERCENT),
    /** Return air less supply air, as the technician states it. */
    TEMPERATURE_SPLIT(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** Target subcooling stated on the rating plate. */
    PLATE_SUBCOOLING(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** Target superheat stated by the maker for these conditions. */
    PLATE_SUPERHEAT(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** Liquid line less outdoor air, as the maker states it for a right charge. */
    PLATE_APPROACH(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** Outdoor temperature of a point in the maker's charging chart. */
    CHART_OUTDOOR_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    /** Superheat or subcooling that the maker's charging chart gives there. */
    CHART_TARGET(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** Design pressure of the low side on the rating plate: the most that a leak test may reach there. */
    PLATE_LOW_SIDE_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    NAMEPLATE_CHARGE(Dimension.MASS, Unit.OUNCE),
    REFRIGERANT_ADDED(Dimension.MASS, Unit.OUNCE),
    REFRIGERANT_RECOVERED(Dimension.MASS, Unit.OUNCE),
    /** The refrigerant cylinder as it stands on the scale, with what is in it. */
    CYLINDER_WEIGHT(Dimension.MASS, Unit.POUND),
    /** Water capacity stamped on the recovery cylinder, WC. */
    CYLINDER_WATER_CAPACITY(Dimension.MASS, Unit.POUND),
    /** Tare stamped on the recovery cylinder, TW. */
    CYLINDER_EMPTY_WEIGHT(Dimension.MASS, Unit.POUND),
    LINE_LENGTH(Dimension.LENGTH, Unit.FOOT),
    /** Line length that the nameplate charge already covers. */
    INCLUDED_LINE_LENGTH(Dimension.LENGTH, Unit.FOOT),
    LIQUID_TUBE_SIZE(Dimension.LENGTH, Unit.INCH),
    SUCTION_TUBE_SIZE(Dimension.LENGTH, Unit.INCH),
    /** How far the indoor coil lies above the outdoor unit; zero where it lies at its height or below. */
    LIQUID_LIFT(Dimension.LENGTH, Unit.FOOT),
    /** Refrigerant for a length of line set, as the maker states it. */
    LINE_CHARGE(Dimension.MASS_PER_LENGTH, Unit.OUNCE_PER_FOOT),
    /** Refrigerant for one filter-drier, as its maker or that of the unit states it. */
    FILTER_DRIER_CHARGE(Dimension.MASS, Unit.OUNCE),
    /** Floor area of the smallest room, or group of rooms open to each other, that the unit serves. */
    ROOM_AREA(Dimension.AREA, Unit.SQUARE_FOOT),
    ALTITUDE(Dimension.LENGTH, Unit.FOOT),
    VACUUM_LEVEL(Dimension.ABSOLUTE_PRESSURE, Unit.MICRON),
    NITROGEN_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    /** Pressure of the resting system, everything at one temperature. */
    RESTING_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    /** Temperature of the gas in the resting or pressurised system, measured at the line. */
    LINE_TEMPERATURE(Dimension.TEMPERATURE, Unit.FAHRENHEIT),
    RUN_TIME(Dimension.DURATION, Unit.MINUTE),
    COMPRESSOR_CURRENT(Dimension.CURRENT, Unit.AMPERE),
    /** At the terminals of what is running. */
    LINE_VOLTAGE(Dimension.VOLTAGE, Unit.VOLT),
    /** Drawn by electric heaters in the supply air. */
    HEATER_POWER(Dimension.POWER, Unit.KILOWATT),
    STATIC_PRESSURE(Dimension.GAUGE_PRESSURE, Unit.INCH_WATER),
    AIRFLOW(Dimension.AIRFLOW, Unit.CUBIC_FOOT_PER_MINUTE),
    CAPACITY(Dimension.POWER, Unit.TON_OF_REFRIGERATION),
    /** How far the gauges in use may be off, plus or minus, at any reading. */
    GAUGE_ACCURACY(Dimension.GAUGE_PRESSURE, Unit.PSIG),
    /** The same as a share of what they show. */
    GAUGE_ACCURACY_OF_READING(Dimension.RATIO, Unit.PERCENT),
    /** How far the pipe clamps in use may be off, plus or minus. */
    CLAMP_ACCURACY(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** How far the wet bulb may be off, plus or minus. */
    WET_BULB_ACCURACY(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES),
    /** How far the probes in air may be off, plus or minus. */
    AIR_PROBE_ACCURACY(Dimension.TEMPERATURE_DIFFERENCE, Unit.FAHRENHEIT_DEGREES);

    private final Dimension dimension;
    private final Unit usualUnit;

    Quantity(Dimension dimension, Unit usualUnit) {
        this.dimension = dimension;
        this.usualUnit = usualUnit;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Whether it tells about an instrument in use instead of the equipment. */
    public boolean ofInstrument() {
        return switch (this) {
            case GAUGE_ACCURACY, GAUGE_ACCURACY_OF_READING, CLAMP_ACCURACY, WET_BULB_ACCURACY, AIR_PROBE_ACCURACY ->
                true;
            default -> false;
        };
    }

    /** The unit meant when none is said and no setting says otherwise. */
    public Unit usualUnit() {
        return usualUnit;
    }
}
