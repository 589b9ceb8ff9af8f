package readback.calc.plant;

import readback.calc.diagnosis.Fault;
import readback.calc.measurement.ChargeMethod;

/** What can be wrong with an air-conditioner. Every size is a share; what it is a share of stands at each fault. */
public enum PlantFault {
    /** Missing share of the nameplate charge. */
    UNDERCHARGE(Fault.UNDERCHARGE, 0.5, (d, size) -> d.charge *= 1 - size),
    /** Surplus share of the nameplate charge. */
    OVERCHARGE(Fault.OVERCHARGE, 0.5, (d, size) -> d.charge *= 1 + size),
    /** Missing share of the rated air: dirty filter, closed registers, weak blower. */
    LOW_INDOOR_AIR(Fault.LOW_INDOOR_AIRFLOW, 0.7, (d, size) -> d.indoorAir *= 1 - size),
    /** Missing share of the air through the condenser. */
    DIRTY_OUTDOOR_COIL(Fault.CONDENSER_AIR, 0.7, (d, size) -> d.outdoorAir *= 1 - size),
    /**
     * Pressure lost in the liquid line, as a share of the difference between high and low side at rating; the measure
     * of Breuker and Braun (HVAC&R Research 4(3), 1998).
     */
    LIQUID_LINE_RESTRICTION(Fault.LIQUID_LINE_RESTRICTION, 0.9, (d, size) -> d.restriction += size),
    /** Air left in the circuit; 1 when it was filled without any evacuation. */
    NON_CONDENSABLES(Fault.NON_CONDENSABLES, 1, (d, size) -> d.air += size),
    /** Share of the compressed vapour that leaks back. */
    COMPRESSOR_LEAKAGE(Fault.WEAK_COMPRESSOR, 0.5, (d, size) -> d.leakage = 1 - (1 - d.leakage) * (1 - size)),
    /** How far beyond its opening at rating the valve is stuck; 1 is wide open. */
    VALVE_STUCK_OPEN(
            Fault.VALVE_STUCK_OPEN,
            1,
            (d, size) -> d.stuckOpen = ExpansionValve.RATED_OPENING + size * (1 - ExpansionValve.RATED_OPENING)),
    /** Lost share of the charge of the bulb, or of the force of a clogged valve: it opens up to 18 °F late. */
    VALVE_STARVING(Fault.VALVE_STARVING, 1, (d, size) -> d.bulbWarmer -= size * PlantFault.BULB_SPAN),
    /** Swing of the superheat to either side, as a share of 18 °F. The mean stays. */
    VALVE_HUNTING(Fault.HUNTING, 1, (d, size) -> d.hunting += size * PlantFault.BULB_SPAN),
    /** Lost share of the bulb's contact with the pipe: it feels up to 18 °F too warm. */
    BULB_LOOSE(Fault.VALVE_STUCK_OPEN, 1, (d, size) -> d.bulbWarmer += size * PlantFault.BULB_SPAN),
    /** By how much the diameter of the orifice is too large. */
    OVERSIZED_ORIFICE(Fault.WRONG_OR_UNSEATED_ORIFICE, 0.5, (d, size) -> d.orificeRatio *= 1 + size),
    /** By how much the diameter of the orifice is too small, or how far it is plugged. */
    UNDERSIZED_ORIFICE(Fault.UNDERSIZED_ORIFICE, 0.5, (d, size) -> d.orificeRatio *= 1 - size),
    /** Share of the indoor coil that ice has closed to air. */
    FROSTED_COIL(Fault.FROZEN_COIL, 0.9, (d, size) -> {
        d.indoorAir *= 1 - size;
        d.clearSurface *= 1 - PlantFault.INSULATING * size;
    });

    /** 18 °F in K: from a well-set bulb to one that hangs beside the pipe. Ours. */
    private static final double BULB_SPAN = 10;

    /** How much of the surface under ice is lost besides its air. Ours. */
    private static final double INSULATING = 0.5;

    private final Fault fault;
    private final double largest;

    @SuppressWarnings("ImmutableEnumChecker") // a lambda without captures
    private final Effect effect;

    PlantFault(Fault fault, double largest, Effect effect) {
        this.fault = fault;
        this.largest = largest;
        this.effect = effect;
    }

    private interface Effect {
        void add(Disturbance disturbance, double size);
    }

    /** What the diagnosis calls it. */
    public Fault fault() {
        return fault;
    }

    /** The largest size that the equations admit. */
    public double largest() {
        return largest;
    }

    /** Whether a unit that is charged by this method can have it: an orifice has no bulb, a valve no orifice. */
    public boolean possibleWith(ChargeMethod method) {
        return switch (this) {
            case VALVE_STUCK_OPEN, VALVE_STARVING, VALVE_HUNTING, BULB_LOOSE -> method == ChargeMethod.SUBCOOLING;
            case OVERSIZED_ORIFICE, UNDERSIZED_ORIFICE -> method == ChargeMethod.TOTAL_SUPERHEAT;
            default -> true;
        };
    }

    void addTo(Disturbance disturbance, double size) {
        effect.add(disturbance, size);
    }
}
