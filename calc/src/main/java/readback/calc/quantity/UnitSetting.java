package readback.calc.quantity;

/**
 * The units meant when a number comes without one, and used to read values back.
 *
 * @param pressure a gauge pressure unit
 * @param temperature Fahrenheit or Celsius; differences follow it
 */
public record UnitSetting(Unit pressure, Unit temperature) {

    /** psig and degrees Fahrenheit. */
    public static final UnitSetting US = new UnitSetting(Unit.PSIG, Unit.FAHRENHEIT);

    /** bar and degrees Celsius. */
    public static final UnitSetting METRIC = new UnitSetting(Unit.BAR_GAUGE, Unit.CELSIUS);

    public UnitSetting {
        if (pressure.dimension() != Dimension.GAUGE_PRESSURE || temperature.dimension() != Dimension.TEMPERATURE) {
            throw new IllegalArgumentException(
                    "not a pressure and a temperature unit: " + pressure + ", " + temperature);
        }
    }

    /** The unit in which a value of the quantity is stated and read back. */
    public Unit unitOf(Quantity quantity) {
        if (quantity == Quantity.STATIC_PRESSURE) {
            return quantity.usualUnit();
        }
        return switch (quantity.dimension()) {
            case GAUGE_PRESSURE -> pressure;
            case TEMPERATURE -> temperature;
            case TEMPERATURE_DIFFERENCE -> temperatureDifference();
            default -> quantity.usualUnit();
        };
    }

    /** The unit in which cooling is told: kilowatts beside degrees Celsius, else tons. */
    public Unit cooling() {
        return temperature == Unit.CELSIUS ? Unit.KILOWATT : Unit.TON_OF_REFRIGERATION;
    }

    /** The unit of a difference on the scale that is set. */
    public Unit temperatureDifference() {
        return temperature == Unit.CELSIUS ? Unit.KELVINS : Unit.FAHRENHEIT_DEGREES;
    }
}
