package readback.calc.diagnosis;

/** What can be seen or tried at the unit and answered with yes or no. */
public enum Finding {
    ICE_ON_COIL(1),
    /** Suction pressure and superheat swing regularly. */
    SUCTION_SWINGS(0.9),
    /** The resting-pressure test finds more than saturation. */
    RESTING_PRESSURE_ABOVE_SATURATION(0.5),
    /** The liquid line turns colder across one spot. */
    TEMPERATURE_DROP_IN_LIQUID_LINE(0.9),
    /** Warming or cooling the bulb changes the superheat. */
    VALVE_ANSWERS_TO_BULB(0.7),
    CONDENSER_DIRTY_OR_AIR_BLOCKED(1),
    FILTER_OR_INDOOR_COIL_DIRTY(1),
    /** The size stamped on the orifice is not the one on the plate, or it is not seated: the circuit must be opened. */
    ORIFICE_DIFFERS_FROM_PLATE(0.15),
    /** With the liquid valve shut the compressor pulls the low side down and holds it. */
    COMPRESSOR_PUMPS_DOWN(0.5);

    private final double ease;

    Finding(double ease) {
        this.ease = ease;
    }

    /** How little it takes to find out: 1 is a look or one reading. Ours. */
    double ease() {
        return ease;
    }
}
