package readback.calc.plant;

/**
 * What the faults change in the equations, as plain numbers. Filled by the faults while they are put together, then
 * only read.
 */
final class Disturbance {

    /** Charge over the nameplate charge. */
    double charge = 1;

    /** Shares of the air that passes the coils. */
    double indoorAir = 1;

    double outdoorAir = 1;

    /** Share of the evaporator's surface that ice leaves. */
    double clearSurface = 1;

    /** Pressure lost in the liquid line at rated flow, in Pa. */
    double restriction;

    /** Air or nitrogen that was left in, as a share of a circuit full of air. */
    double air;

    /** Share of the compressed vapour that leaks back. */
    double leakage;

    /** How much warmer the valve's bulb seems to be than the pipe, K. */
    double bulbWarmer;

    /** Opening of a stuck valve, as a share of wide open; 0 when it moves. */
    double stuckOpen;

    /** Diameter of the orifice over the right one. */
    double orificeRatio = 1;

    /** Amplitude of a hunting valve's superheat, K. Does not touch the steady state. */
    double hunting;

    /** The same disturbance at a share of its size, 0 to 1. A stuck valve is stuck at any share. */
    Disturbance part(double share) {
        Disturbance part = new Disturbance();
        part.charge = 1 + share * (charge - 1);
        part.indoorAir = 1 + share * (indoorAir - 1);
        part.outdoorAir = 1 + share * (outdoorAir - 1);
        part.clearSurface = 1 + share * (clearSurface - 1);
        part.restriction = share * restriction;
        part.air = share * air;
        part.leakage = share * leakage;
        part.bulbWarmer = share * bulbWarmer;
        part.stuckOpen = stuckOpen;
        part.orificeRatio = 1 + share * (orificeRatio - 1);
        part.hunting = hunting;
        return part;
    }
}
