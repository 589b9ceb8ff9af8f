package readback.calc.fluid;

import java.util.List;

/**
 * The reduced ideal-gas Helmholtz energy ln(delta) + a1 + a2 tau + c ln(tau) + sum n tau^t + sum n ln(1 - exp(-theta
 * tau)). Immutable.
 */
final class IdealTerms {

    private final double a1;
    private final double a2;
    private final double c;
    private final double[][] powers;
    private final double[][] einstein;

    /**
     * @param powers pairs n, t
     * @param einstein pairs n, theta
     */
    IdealTerms(double a1, double a2, double c, List<double[]> powers, List<double[]> einstein) {
        this.a1 = a1;
        this.a2 = a2;
        this.c = c;
        this.powers = powers.toArray(new double[0][]);
        this.einstein = einstein.toArray(new double[0][]);
    }

    /** Adds the energy (a) and its tau derivatives (t, tt), times the weight. */
    void add(double tau, double delta, double weight, Derivatives sum) {
        double a = Math.log(delta) + a1 + a2 * tau + c * Math.log(tau);
        double t = a2 * tau + c;
        double tt = -c;
        for (double[] power : powers) {
            double value = power[0] * Math.pow(tau, power[1]);
            a += value;
            t += value * power[1];
            tt += value * power[1] * (power[1] - 1);
        }
        for (double[] oscillator : einstein) {
            double x = oscillator[1] * tau;
            double ex = Math.exp(-x);
            double rest = 1 - ex;
            a += oscillator[0] * Math.log(rest);
            t += oscillator[0] * x * ex / rest;
            tt -= oscillator[0] * x * x * ex / (rest * rest);
        }
        sum.a += weight * a;
        sum.t += weight * t;
        sum.tt += weight * tt;
    }
}
