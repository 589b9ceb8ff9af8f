package readback.calc.fluid;

import java.util.List;
import java.util.Map;

/**
 * The equation of state of a single substance, or of a blend that is treated as one (pseudo-pure). Immutable.
 *
 * @param name designation
 * @param papers keys of the papers in which the equation was published
 * @param criticalTemperature K
 * @param criticalPressure Pa
 * @param lowestTemperature K, where the equation's validity begins: the triple point of a pure fluid
 * @param highestTemperature K, where it ends
 */
record PureFluid(
        String name,
        boolean pseudoPure,
        List<String> papers,
        double gasConstant,
        double molarMass,
        double reducingTemperature,
        double reducingDensity,
        double criticalTemperature,
        double criticalPressure,
        double acentricFactor,
        double lowestTemperature,
        double highestTemperature,
        IdealTerms idealTerms,
        ResidualTerms residualTerms,
        Map<String, Ancillary> ancillaries)
        implements HelmholtzFluid {

    @Override
    public void addResidual(double tau, double delta, Derivatives sum) {
        residualTerms.addSecond(tau, delta, 1, sum);
    }

    @Override
    public void addIdeal(double kelvin, double density, Derivatives sum) {
        idealTerms.add(reducingTemperature / kelvin, density / reducingDensity, 1, sum);
    }

    @Override
    public double liquidDensityEstimate(double kelvin) {
        return ancillary("liquid-density").at(Math.min(kelvin, 0.999 * criticalTemperature));
    }

    /** @throws IllegalArgumentException if the equation has no such ancillary */
    Ancillary ancillary(String what) {
        Ancillary found = ancillaries.get(what);
        if (found == null) {
            throw new IllegalArgumentException(name + " has no ancillary for " + what);
        }
        return found;
    }
}
