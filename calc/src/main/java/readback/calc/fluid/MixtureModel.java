package readback.calc.fluid;

import java.util.List;
import java.util.Optional;

/**
 * The multi-fluid model of a mixture: the components' own equations at shared reduced variables, corrected by departure
 * functions (Kunz and Wagner, J. Chem. Eng. Data 57, 3032 (2012), doi 10.1021/je300655b; Lemmon and Jacobsen, J. Phys.
 * Chem. Ref. Data 33, 593 (2004), doi 10.1063/1.1649997). Immutable.
 */
final class MixtureModel {

    /** J/(mol K), CODATA 2018: mixtures do not follow the older constants of their components' papers. */
    static final double GAS_CONSTANT = 8.31446261815324;

    private final PureFluid[] fluids;
    private final PairParameters[][] pairs;

    /** @throws IllegalArgumentException if the parameters of a pair are not published */
    MixtureModel(List<PureFluid> components, EquationLibrary library) {
        int count = components.size();
        fluids = components.toArray(new PureFluid[0]);
        pairs = new PairParameters[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                String first = fluids[i].name();
                String second = fluids[j].name();
                Optional<PairParameters> pair = library.pair(first, second);
                pairs[i][j] = pair.orElseThrow(() -> new IllegalArgumentException(
                        "no published mixture parameters for " + first + " with " + second));
            }
        }
    }

    int size() {
        return fluids.length;
    }

    PureFluid fluid(int index) {
        return fluids[index];
    }

    /** Reducing temperature (K) and molar volume (m³/mol) at a composition, and their slopes by each mole fraction. */
    static final class Reducing {
        double temperature;
        double volume;
        final double[] temperatureBy;
        final double[] volumeBy;

        Reducing(int size) {
            temperatureBy = new double[size];
            volumeBy = new double[size];
        }

        double density() {
            return 1 / volume;
        }
    }

    /** The reducing functions; the slopes treat every mole fraction as free. */
    Reducing reducing(double[] x) {
        int size = fluids.length;
        Reducing result = new Reducing(size);
        for (int i = 0; i < size; i++) {
            double temperature = fluids[i].reducingTemperature();
            double volume = 1 / fluids[i].reducingDensity();
            result.temperature += x[i] * x[i] * temperature;
            result.volume += x[i] * x[i] * volume;
            result.temperatureBy[i] += 2 * x[i] * temperature;
            result.volumeBy[i] += 2 * x[i] * volume;
            for (int j = i + 1; j < size; j++) {
                PairParameters pair = pairs[i][j];
                double pairTemperature = Math.sqrt(temperature * fluids[j].reducingTemperature());
                double roots = Math.cbrt(volume) + Math.cbrt(1 / fluids[j].reducingDensity());
                double pairVolume = roots * roots * roots / 8;
                double temperatureWeight = 2 * pair.betaT() * pair.gammaT() * pairTemperature;
                double volumeWeight = 2 * pair.betaV() * pair.gammaV() * pairVolume;
                result.temperature += temperatureWeight * blending(pair.betaT(), x[i], x[j]);
                result.volume += volumeWeight * blending(pair.betaV(), x[i], x[j]);
                result.temperatureBy[i] += temperatureWeight * blendingByFirst(pair.betaT(), x[i], x[j]);
                result.temperatureBy[j] += temperatureWeight * blendingBySecond(pair.betaT(), x[i], x[j]);
                result.volumeBy[i] += volumeWeight * blendingByFirst(pair.betaV(), x[i], x[j]);
                result.volumeBy[j] += volumeWeight * blendingBySecond(pair.betaV(), x[i], x[j]);
            }
        }
        return result;
    }

    private static double blending(double beta, double a, double b) {
        return a * b * (a + b) / (beta * beta * a + b);
    }

    private static double blendingByFirst(double beta, double a, double b) {
        double denominator = beta * beta * a + b;
        return (b * (2 * a + b) * denominator - a * b * (a + b) * beta * beta) / (denominator * denominator);
    }

    private static double blendingBySecond(double beta, double a, double b) {
        double denominator = beta * beta * a + b;
        return (a * (a + 2 * b) * denominator - a * b * (a + b)) / (denominator * denominator);
    }

    /** Adds the residual energy and its derivatives by tau and delta up to the second order. */
    void addResidual(double[] x, double tau, double delta, Derivatives sum) {
        for (int i = 0; i < fluids.length; i++) {
            fluids[i].residualTerms().addSecond(tau, delta, x[i], sum);
            for (int j = i + 1; j < fluids.length; j++) {
                PairParameters pair = pairs[i][j];
                if (pair.departure() != null) {
                    pair.departure().addSecond(tau, delta, x[i] * x[j] * pair.weight(), sum);
                }
            }
        }
    }

    /**
     * Writes the logarithms of the fugacities (Pa) of all components.
     *
     * @param partialDensities mol/m³, one for each component, all above zero
     * @return the pressure in Pa
     */
    double fugacities(double kelvin, double[] partialDensities, double[] lnFugacities) {
        int size = fluids.length;
        double density = 0;
        for (double partial : partialDensities) {
            density += partial;
        }
        double[] x = new double[size];
        for (int i = 0; i < size; i++) {
            x[i] = partialDensities[i] / density;
        }
        Reducing reducing = reducing(x);
        double tau = reducing.temperature / kelvin;
        double delta = density * reducing.volume;
        Derivatives total = new Derivatives();
        Derivatives part = new Derivatives();
        double[] energyBy = new double[size];
        for (int i = 0; i < size; i++) {
            part.clear();
            fluids[i].residualTerms().addFirst(tau, delta, 1, part);
            total.addScaled(x[i], part);
            energyBy[i] += part.a;
            for (int j = i + 1; j < size; j++) {
                PairParameters pair = pairs[i][j];
                if (pair.departure() != null) {
                    part.clear();
                    pair.departure().addFirst(tau, delta, pair.weight(), part);
                    total.addScaled(x[i] * x[j], part);
                    energyBy[i] += x[j] * part.a;
                    energyBy[j] += x[i] * part.a;
                }
            }
        }
        // n (d alpha/d n_i) at constant T and V, Kunz and Wagner 2012, appendix: every slope less its mean.
        double meanEnergy = mean(x, energyBy);
        double meanTemperature = mean(x, reducing.temperatureBy);
        double meanVolume = mean(x, reducing.volumeBy);
        double rt = GAS_CONSTANT * kelvin;
        for (int i = 0; i < size; i++) {
            double temperatureSlope = (reducing.temperatureBy[i] - meanTemperature) / reducing.temperature;
            double volumeSlope = (reducing.volumeBy[i] - meanVolume) / reducing.volume;
            lnFugacities[i] = Math.log(partialDensities[i] * rt)
                    + total.a
                    + total.d * (1 + volumeSlope)
                    + total.t * temperatureSlope
                    + energyBy[i]
                    - meanEnergy;
        }
        return density * rt * (1 + total.d);
    }

    private static double mean(double[] x, double[] values) {
        double mean = 0;
        for (int i = 0; i < x.length; i++) {
            mean += x[i] * values[i];
        }
        return mean;
    }

    /** The mixture at one composition. */
    HelmholtzFluid at(double[] moleFractions) {
        return new MixtureFluid(this, moleFractions);
    }
}
