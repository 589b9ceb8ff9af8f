package readback.calc.caution;

/** What the technician is about to do or is doing. */
public enum Activity {
    /** Hoses go on or come off the service ports. */
    CONNECTING_HOSES,
    /** The electrical compartment is opened. */
    OPENING_ELECTRICAL,
    /** Refrigerant goes in. */
    CHARGING,
    /** Refrigerant comes out into a cylinder. */
    RECOVERING,
    /** The circuit is filled with nitrogen. */
    PRESSURE_TESTING,
    /** Joints are brazed. */
    BRAZING,
    /** The circuit is pumped down to a vacuum. */
    EVACUATING,
    /** The air of the condenser is held back while the compressor runs. */
    RESTRICTING_CONDENSER
}
