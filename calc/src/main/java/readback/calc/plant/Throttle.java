package readback.calc.plant;

/** What feeds the evaporator: the flow that it lets through. */
interface Throttle {

    /**
     * The flow in kg/s.
     *
     * @param upstream Pa, before it
     * @param enthalpy J/kg, before it
     * @param downstream Pa, after it
     * @param superheat K, of the vapour that leaves the evaporator
     * @param outdoor K, air temperature
     */
    double flow(
            FluidTable fluid,
            double upstream,
            double enthalpy,
            double downstream,
            double superheat,
            double outdoor,
            Disturbance disturbance);

    /** The same kind of device with another size: diameter in m, or area. */
    Throttle sized(double size);
}
