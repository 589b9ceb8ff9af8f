package readback.calc.fluid;

/**
 * Boiling and condensing of a refrigerant as charged, solved from its equation of state. Kelvin, pascals, mol/m³. Slow
 * and exact; {@link SaturationCurves} are fitted to it.
 */
interface SaturationModel {

    /** The phase that has the composition as charged. */
    HelmholtzFluid fluid();

    /** Pa, at a temperature in K. */
    double pressure(Side side, double kelvin);

    /** K, at a pressure in Pa. */
    double temperature(Side side, double pascals);

    /** mol/m³: of the liquid as charged at its bubble point, of the vapour as charged at its dew point. */
    double density(Side side, double kelvin);
}
