package readback.calc.fluid;

/** A fluid of one fixed composition, described by its Helmholtz energy. Molar SI units. */
interface HelmholtzFluid {

    /** J/(mol K), the value that the paper of the equation used. */
    double gasConstant();

    /** kg/mol. */
    double molarMass();

    /** K; tau is this over the temperature. */
    double reducingTemperature();

    /** mol/m³; delta is the density over this. */
    double reducingDensity();

    /** K, where the validity of the equation ends. */
    double highestTemperature();

    /** Adds the residual energy and its derivatives up to the second order. */
    void addResidual(double tau, double delta, Derivatives sum);

    /** Adds the ideal-gas energy and its tau derivatives at a temperature (K) and density (mol/m³). */
    void addIdeal(double kelvin, double density, Derivatives sum);

    /** About the density of the saturated liquid, mol/m³: where a search may start. */
    double liquidDensityEstimate(double kelvin);
}
