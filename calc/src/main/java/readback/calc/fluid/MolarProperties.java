package readback.calc.fluid;

/**
 * Properties of one phase at a temperature and density. Molar SI units; enthalpy and entropy as the equation's own
 * integration constants give them.
 *
 * @param pressure Pa
 * @param enthalpy J/mol
 * @param entropy J/(mol K)
 * @param heatCapacity at constant pressure, J/(mol K)
 * @param speedOfSound m/s
 */
record MolarProperties(double pressure, double enthalpy, double entropy, double heatCapacity, double speedOfSound) {

    /**
     * Evaluates the equation: table 6.3 of Span, Multiparameter Equations of State, Springer 2000 (from memory).
     *
     * @param density mol/m³
     */
    static MolarProperties at(HelmholtzFluid fluid, double kelvin, double density) {
        Derivatives r = Phases.residual(fluid, kelvin, density);
        Derivatives ideal = new Derivatives();
        fluid.addIdeal(kelvin, density, ideal);
        double gas = fluid.gasConstant();
        double pressure = density * gas * kelvin * (1 + r.d);
        double enthalpy = gas * kelvin * (1 + ideal.t + r.t + r.d);
        double entropy = gas * (ideal.t + r.t - ideal.a - r.a);
        double atConstantVolume = -gas * (ideal.tt + r.tt);
        double slope = 1 + 2 * r.d + r.dd;
        double coupling = 1 + r.d - r.dt;
        double heatCapacity = atConstantVolume + gas * coupling * coupling / slope;
        double speed = Math.sqrt(heatCapacity / atConstantVolume * gas * kelvin * slope / fluid.molarMass());
        return new MolarProperties(pressure, enthalpy, entropy, heatCapacity, speed);
    }
}
