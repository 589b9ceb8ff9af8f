package readback.calc.plant;

import readback.calc.diagnosis.Finding;
import readback.calc.quantity.Temperature;

/** What someone who looks or tries finds at a running unit. The truth: nobody looks amiss. */
public final class Inspection {

    /** Refrigerant this cold lets frost grow on a coil within a call. Common practice, no source. */
    private static final Temperature ICING = Temperature.fahrenheit(30);

    /** °F; what a hand or a probe notices along a line. Ours. */
    private static final double NOTICED_DROP = 3;

    /** A compressor that leaks less still pulls down and holds. Ours. */
    private static final double TIGHT = 0.1;

    private Inspection() {}

    /** Whether the finding is there. */
    public static boolean finds(Finding finding, FaultSet faults, OperatingPoint.Running at) {
        return switch (finding) {
            case ICE_ON_COIL ->
                has(faults, PlantFault.FROSTED_COIL) || at.evaporating().compareTo(ICING) < 0;
            case SUCTION_SWINGS -> has(faults, PlantFault.VALVE_HUNTING);
            case RESTING_PRESSURE_ABOVE_SATURATION -> has(faults, PlantFault.NON_CONDENSABLES);
            case TEMPERATURE_DROP_IN_LIQUID_LINE ->
                at.at().liquidLine().minus(at.beyondRestriction()).fahrenheit() > NOTICED_DROP;
            case VALVE_ANSWERS_TO_BULB ->
                !has(faults, PlantFault.VALVE_STUCK_OPEN) && !has(faults, PlantFault.VALVE_STARVING);
            case CONDENSER_DIRTY_OR_AIR_BLOCKED -> has(faults, PlantFault.DIRTY_OUTDOOR_COIL);
            case FILTER_OR_INDOOR_COIL_DIRTY -> has(faults, PlantFault.LOW_INDOOR_AIR);
            case ORIFICE_DIFFERS_FROM_PLATE ->
                has(faults, PlantFault.OVERSIZED_ORIFICE) || has(faults, PlantFault.UNDERSIZED_ORIFICE);
            case COMPRESSOR_PUMPS_DOWN -> faults.size(PlantFault.COMPRESSOR_LEAKAGE) < TIGHT;
        };
    }

    private static boolean has(FaultSet faults, PlantFault fault) {
        return faults.size(fault) > 0;
    }
}
