package readback.calc.measurement;

/** How the refrigerant charge of a running system is judged. The metering device decides which one is valid. */
public enum ChargeMethod {
    /** Superheat at the suction service port against a target for the weather: fixed orifices. */
    TOTAL_SUPERHEAT,
    /** Subcooling at the liquid service port against the rating plate: expansion valves. */
    SUBCOOLING
}
