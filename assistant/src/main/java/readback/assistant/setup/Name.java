package readback.assistant.setup;

/** What setting up decides. */
public enum Name {
    MICROPHONE,
    LOUDSPEAKER,
    /** Whether orders are heard while it speaks: true or false. */
    BARGE_IN,
    /** Whether everything is heard while it speaks: true or false. */
    HEADSET,
    /** us or metric. */
    UNITS,
    /** Whole feet. */
    ALTITUDE,
    /** A pressure, or a share of the reading in percent. */
    GAUGES,
    CLAMPS,
    WET_BULB,
    AIR_PROBES
}
