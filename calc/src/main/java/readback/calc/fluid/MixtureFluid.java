package readback.calc.fluid;

/** A mixture at a fixed composition. Immutable. */
final class MixtureFluid implements HelmholtzFluid {

    private final MixtureModel model;
    private final double[] x;
    private final double molarMass;
    private final double reducingTemperature;
    private final double reducingDensity;

    MixtureFluid(MixtureModel model, double[] moleFractions) {
        this.model = model;
        this.x = moleFractions.clone();
        double mass = 0;
        for (int i = 0; i < x.length; i++) {
            mass += x[i] * model.fluid(i).molarMass();
        }
        MixtureModel.Reducing reducing = model.reducing(x);
        molarMass = mass;
        reducingTemperature = reducing.temperature;
        reducingDensity = reducing.density();
    }

    @Override
    public double gasConstant() {
        return MixtureModel.GAS_CONSTANT;
    }

    @Override
    public double molarMass() {
        return molarMass;
    }

    @Override
    public double reducingTemperature() {
        return reducingTemperature;
    }

    @Override
    public double reducingDensity() {
        return reducingDensity;
    }

    /** The lowest of the components' limits. */
    @Override
    public double highestTemperature() {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            lowest = Math.min(lowest, model.fluid(i).highestTemperature());
        }
        return lowest;
    }

    @Override
    public void addResidual(double tau, double delta, Derivatives sum) {
        model.addResidual(x, tau, delta, sum);
    }

    /** Each component's own ideal gas, at its own reducing point, with its own gas constant over the mixture's. */
    @Override
    public void addIdeal(double kelvin, double density, Derivatives sum) {
        for (int i = 0; i < x.length; i++) {
            PureFluid fluid = model.fluid(i);
            double weight = x[i] * fluid.gasConstant() / MixtureModel.GAS_CONSTANT;
            fluid.idealTerms()
                    .add(fluid.reducingTemperature() / kelvin, density / fluid.reducingDensity(), weight, sum);
            sum.a += weight * Math.log(x[i]);
        }
    }

    /** Amagat's law: the volumes of the component liquids add. */
    @Override
    public double liquidDensityEstimate(double kelvin) {
        double volume = 0;
        for (int i = 0; i < x.length; i++) {
            PureFluid fluid = model.fluid(i);
            volume += x[i] / fluid.liquidDensityEstimate(Math.min(kelvin, 0.97 * fluid.reducingTemperature()));
        }
        return 1 / volume;
    }
}
