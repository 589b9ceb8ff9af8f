package readback.calc.fluid;

import java.util.Optional;
import readback.calc.numeric.LinearSystem;
import readback.calc.numeric.Roots;

/**
 * Bubble and dew points of a mixture: equal fugacities of every component and equal pressure in the phase as charged
 * and the phase that just appears.
 *
 * <p>Newton's method on the logarithms of temperature, of the density of the charged phase and of the partial densities
 * of the other, started from Raoult's law. A result counts only if it is converged, both phases are mechanically
 * stable, and one is clearly denser than the other, so the trivial solution and spurious roots cannot pass. If the
 * direct start fails, the solution is continued from a colder one in steps that shorten on failure.
 */
final class MixtureSaturation implements SaturationModel {

    private static final int MOST_STEPS = 60;
    private static final int USUAL_STEPS = 12;
    private static final double LONGEST_STEP = 0.15;
    private static final double DIFFERENCE = 1e-6;

    /** Where continuation starts: cold enough for Raoult's law to do. K. */
    private static final double ANCHOR = 210;

    private static final double CONTINUATION_STEP = 8;
    private static final double SHORTEST_CONTINUATION_STEP = 0.01;

    /** Up to 0.985 of the critical temperature liquid is at least three times as dense as vapour. */
    private static final double LEAST_DENSITY_RATIO = 1.5;

    private final MixtureModel model;
    private final double[] z;
    private final HelmholtzFluid feed;
    private final int size;

    MixtureSaturation(MixtureModel model, double[] moleFractions) {
        this.model = model;
        this.z = moleFractions.clone();
        this.feed = model.at(moleFractions);
        this.size = moleFractions.length;
    }

    /** Unknowns: ln T, ln of the feed's density, ln of each partial density of the incipient phase. */
    private final class Solution {
        final Side side;
        final double[] y;
        double pressure;

        Solution(Side side, double[] y) {
            this.side = side;
            this.y = y;
        }

        double kelvin() {
            return Math.exp(y[0]);
        }

        double feedDensity() {
            return Math.exp(y[1]);
        }

        double incipientDensity() {
            double sum = 0;
            for (int i = 0; i < size; i++) {
                sum += Math.exp(y[2 + i]);
            }
            return sum;
        }
    }

    @Override
    public HelmholtzFluid fluid() {
        return feed;
    }

    @Override
    public double pressure(Side side, double kelvin) {
        return atTemperature(side, kelvin).pressure;
    }

    @Override
    public double temperature(Side side, double pascals) {
        Optional<Solution> direct = newton(start(side, raoultTemperature(side, pascals)), Double.NaN, pascals);
        return direct.isPresent() ? direct.get().kelvin() : temperatureByContinuation(side, pascals);
    }

    @Override
    public double density(Side side, double kelvin) {
        return atTemperature(side, kelvin).feedDensity();
    }

    private Solution atTemperature(Side side, double kelvin) {
        return newton(start(side, kelvin), kelvin, Double.NaN).orElseGet(() -> continued(side, kelvin));
    }

    /** The pressure in Pa as continuation from the anchor finds it: the second way, for when the direct start fails. */
    double pressureByContinuation(Side side, double kelvin) {
        return continued(side, kelvin).pressure;
    }

    /** The temperature in K as continuation from the anchor finds it. */
    double temperatureByContinuation(Side side, double pascals) {
        double coldest = ANCHOR;
        while (pressure(side, coldest) > pascals) {
            coldest -= CONTINUATION_STEP;
        }
        Solution at = atTemperature(side, coldest);
        double step = CONTINUATION_STEP;
        while (at.pressure < pascals) {
            Optional<Solution> next = newton(at, at.kelvin() + step, Double.NaN);
            if (next.isPresent() && next.get().pressure < pascals) {
                at = next.get();
            } else {
                Optional<Solution> found = newton(at, Double.NaN, pascals);
                if (found.isPresent()) {
                    return found.get().kelvin();
                }
                step = shortened(side, step, at);
            }
        }
        return at.kelvin();
    }

    /** Walks from the anchor to the temperature. */
    private Solution continued(Side side, double kelvin) {
        Solution at = newton(start(side, ANCHOR), ANCHOR, Double.NaN)
                .orElseThrow(() -> new ArithmeticException("no " + side + " point at " + ANCHOR + " K"));
        double reached = ANCHOR;
        double step = CONTINUATION_STEP;
        while (reached != kelvin) {
            double target =
                    Math.abs(kelvin - reached) <= step ? kelvin : reached + Math.copySign(step, kelvin - reached);
            Optional<Solution> next = newton(at, target, Double.NaN);
            if (next.isPresent()) {
                at = next.get();
                reached = target;
            } else {
                step = shortened(side, step, at);
            }
        }
        return at;
    }

    private static double shortened(Side side, double step, Solution at) {
        if (step < SHORTEST_CONTINUATION_STEP) {
            throw new ArithmeticException("no " + side + " point beyond " + at.kelvin() + " K");
        }
        return step / 2;
    }

    /** Raoult's law with the components' own vapour pressures, and densities to match. */
    private Solution start(Side side, double kelvin) {
        double[] incipient = new double[size];
        double pressure = raoult(side, kelvin, incipient);
        double[] y = new double[size + 2];
        HelmholtzFluid other = model.at(incipient);
        HelmholtzFluid liquid = side == Side.BUBBLE ? feed : other;
        double vapourDensity = 1.15 * pressure / (MixtureModel.GAS_CONSTANT * kelvin);
        double liquidDensity = liquid.liquidDensityEstimate(kelvin);
        y[0] = Math.log(kelvin);
        y[1] = Math.log(side == Side.BUBBLE ? liquidDensity : vapourDensity);
        for (int i = 0; i < size; i++) {
            y[2 + i] = Math.log((side == Side.BUBBLE ? vapourDensity : liquidDensity) * incipient[i]);
        }
        return new Solution(side, y);
    }

    /** Writes the incipient phase's mole fractions; returns the pressure in Pa. */
    private double raoult(Side side, double kelvin, double[] incipient) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            double vapourPressure = vapourPressure(model.fluid(i), kelvin);
            incipient[i] = side == Side.BUBBLE ? z[i] * vapourPressure : z[i] / vapourPressure;
            sum += incipient[i];
        }
        for (int i = 0; i < size; i++) {
            incipient[i] /= sum;
        }
        return side == Side.BUBBLE ? sum : 1 / sum;
    }

    /** The ancillary below the component's critical point, Wilson's equation (1968, from memory) above. */
    private static double vapourPressure(PureFluid fluid, double kelvin) {
        if (kelvin < 0.99 * fluid.criticalTemperature()) {
            return fluid.ancillary("vapour-pressure").at(kelvin);
        }
        return fluid.criticalPressure()
                * Math.exp(5.37 * (1 + fluid.acentricFactor()) * (1 - fluid.criticalTemperature() / kelvin));
    }

    private double raoultTemperature(Side side, double pascals) {
        double[] scratch = new double[size];
        return Roots.find(t -> Math.log(raoult(side, t, scratch) / pascals), 130, 600, 1e-6);
    }

    /**
     * Solves from a start, with either the temperature or the pressure given and the other NaN; empty if the result
     * does not pass.
     */
    private Optional<Solution> newton(Solution start, double kelvin, double pascals) {
        Solution at = new Solution(start.side, start.y.clone());
        if (!Double.isNaN(kelvin)) {
            at.y[0] = Math.log(kelvin);
        }
        Equations equations = new Equations(start.side, kelvin, pascals);
        for (int step = 0; step < MOST_STEPS; step++) {
            double longest = equations.improve(at);
            if (!(longest < Double.POSITIVE_INFINITY)) {
                return Optional.empty();
            }
            if (longest < 1e-11 || (step >= USUAL_STEPS && longest < 1e-9)) {
                return sound(at) ? Optional.of(at) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Whether both phases exist, and are the liquid and the vapour. Sets the pressure. */
    private boolean sound(Solution at) {
        double kelvin = at.kelvin();
        double feedDensity = at.feedDensity();
        double incipientDensity = at.incipientDensity();
        double[] x = new double[size];
        for (int i = 0; i < size; i++) {
            x[i] = Math.exp(at.y[2 + i]) / incipientDensity;
        }
        HelmholtzFluid incipient = model.at(x);
        boolean bubble = at.side == Side.BUBBLE;
        double liquidDensity = bubble ? feedDensity : incipientDensity;
        double vapourDensity = bubble ? incipientDensity : feedDensity;
        at.pressure = Phases.pressure(bubble ? incipient : feed, kelvin, vapourDensity);
        return at.pressure > 0
                && liquidDensity > LEAST_DENSITY_RATIO * vapourDensity
                && liquidDensity > (bubble ? feed : incipient).reducingDensity()
                && vapourDensity < (bubble ? incipient : feed).reducingDensity()
                && stable(feed, kelvin, feedDensity)
                && stable(incipient, kelvin, incipientDensity);
    }

    private static boolean stable(HelmholtzFluid fluid, double kelvin, double density) {
        Derivatives at = Phases.residual(fluid, kelvin, density);
        return 1 + 2 * at.d + at.dd > 0;
    }

    /** The residuals of one problem and their Newton steps; one thread. */
    private final class Equations {
        private final Side side;
        private final double kelvin;
        private final double pascals;
        private final double[] partial = new double[size];
        private final double[] feedFugacity = new double[size];
        private final double[] incipientFugacity = new double[size];
        private double feedPressure;
        private double incipientPressure;

        Equations(Side side, double kelvin, double pascals) {
            this.side = side;
            this.kelvin = kelvin;
            this.pascals = pascals;
        }

        /** Takes one step; returns the longest change of an unknown, before it was limited. */
        double improve(Solution at) {
            double[] y = at.y;
            int unknowns = size + 2;
            evaluateFeed(y);
            evaluateIncipient(y);
            double scale = MixtureModel.GAS_CONSTANT * at.kelvin() * Math.min(at.feedDensity(), at.incipientDensity());
            double[] residual = residual(y, scale);
            double[][] jacobian = new double[unknowns][unknowns];
            for (int k = 0; k < unknowns; k++) {
                double saved = y[k];
                y[k] = saved + DIFFERENCE;
                double[] above = perturbed(y, k, scale);
                y[k] = saved - DIFFERENCE;
                double[] below = perturbed(y, k, scale);
                y[k] = saved;
                for (int row = 0; row < unknowns; row++) {
                    jacobian[row][k] = (above[row] - below[row]) / (2 * DIFFERENCE);
                }
                restore(y, k);
            }
            try {
                LinearSystem.solve(jacobian, residual);
            } catch (ArithmeticException singular) {
                return Double.POSITIVE_INFINITY;
            }
            double longest = 0;
            for (double change : residual) {
                longest = Double.isNaN(change) ? Double.POSITIVE_INFINITY : Math.max(longest, Math.abs(change));
            }
            double share = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
            for (int k = 0; k < unknowns; k++) {
                y[k] -= share * residual[k];
            }
            return longest;
        }

        /** Only the phase that the unknown belongs to is evaluated again; temperature belongs to both. */
        private double[] perturbed(double[] y, int unknown, double scale) {
            restore(y, unknown);
            return residual(y, scale);
        }

        private void restore(double[] y, int unknown) {
            if (unknown <= 1) {
                evaluateFeed(y);
            }
            if (unknown != 1) {
                evaluateIncipient(y);
            }
        }

        private void evaluateFeed(double[] y) {
            double density = Math.exp(y[1]);
            for (int i = 0; i < size; i++) {
                partial[i] = density * z[i];
            }
            feedPressure = model.fugacities(Math.exp(y[0]), partial, feedFugacity);
        }

        private void evaluateIncipient(double[] y) {
            for (int i = 0; i < size; i++) {
                partial[i] = Math.exp(y[2 + i]);
            }
            incipientPressure = model.fugacities(Math.exp(y[0]), partial, incipientFugacity);
        }

        private double[] residual(double[] y, double scale) {
            double[] residual = new double[size + 2];
            for (int i = 0; i < size; i++) {
                residual[i] = feedFugacity[i] - incipientFugacity[i];
            }
            residual[size] = (feedPressure - incipientPressure) / scale;
            double vapourPressure = side == Side.DEW ? feedPressure : incipientPressure;
            residual[size + 1] = Double.isNaN(pascals) ? y[0] - Math.log(kelvin) : (vapourPressure - pascals) / pascals;
            return residual;
        }
    }
}
