package readback.calc.diagnosis;

/** What can be wrong with a cooling system, as far as readings at the unit can tell. */
public enum Fault {
    /** Nothing: every reading is as expected. */
    NONE(false),
    UNDERCHARGE(true),
    OVERCHARGE(true),
    LOW_INDOOR_AIRFLOW(false),
    /** A dirty condenser, or its hot air drawn in again. */
    CONDENSER_AIR(false),
    /** A plugged drier or a kinked line. */
    LIQUID_LINE_RESTRICTION(false),
    /** Air or nitrogen in the circuit. */
    NON_CONDENSABLES(false),
    /** Leaking compressor valves, or a reversing valve that lets gas past. */
    WEAK_COMPRESSOR(false),
    /** Too large, missing or not seated. */
    WRONG_OR_UNSEATED_ORIFICE(false),
    /** Too small, or plugged. */
    UNDERSIZED_ORIFICE(false),
    /** The expansion valve passes too much: bulb loose, uninsulated, or the valve stuck. */
    VALVE_STUCK_OPEN(false),
    /** The expansion valve passes too little: bulb charge lost, inlet screen clogged, or the valve stuck. */
    VALVE_STARVING(false),
    /** The expansion valve swings about its set point. */
    HUNTING(false),
    /** Ice on the indoor coil; thaw it before reading anything. */
    FROZEN_COIL(false);

    private final boolean charge;

    Fault(boolean charge) {
        this.charge = charge;
    }

    /** Whether moving refrigerant is the remedy. */
    public boolean isCharge() {
        return charge;
    }
}
