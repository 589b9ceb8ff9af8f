package readback.calc.measurement;

/** What a value was measured with, as far as its accuracy matters. */
public enum Instrument {
    SUCTION_GAUGE(true),
    LIQUID_GAUGE(true),
    SUCTION_LINE_PROBE(false),
    LIQUID_LINE_PROBE(false),
    WET_BULB_PROBE(false),
    /** Dry bulb of the air that enters the condenser. */
    OUTDOOR_PROBE(false),
    /** The air around the gauges, taken from the altitude instead of a barometer. */
    AIR_PRESSURE(true);

    private final boolean pressure;

    Instrument(boolean pressure) {
        this.pressure = pressure;
    }

    /** Whether it shows a pressure; else a temperature. */
    public boolean measuresPressure() {
        return pressure;
    }
}
