package readback.calc.measurement;

/** What a value was measured with, as far as its accuracy matters. */
public enum Instrument {
    SUCTION_GAUGE,
    LIQUID_GAUGE,
    SUCTION_LINE_PROBE,
    LIQUID_LINE_PROBE,
    WET_BULB_PROBE,
    AIR_PROBE
}
