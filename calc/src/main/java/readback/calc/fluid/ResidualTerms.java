package readback.calc.fluid;

import java.util.ArrayList;
import java.util.List;

/**
 * A sum of terms n delta^d tau^t exp(-delta^l - eta (delta - epsilon)² - beta (tau - gamma)² - tau^m): every form that
 * the equations of state here use. Immutable.
 */
final class ResidualTerms {

    private final double[] n;
    private final double[] d;
    private final double[] t;
    private final int[] l;
    private final double[] eta;
    private final double[] epsilon;
    private final double[] beta;
    private final double[] gamma;
    private final double[] m;

    private ResidualTerms(List<double[]> terms) {
        int count = terms.size();
        n = new double[count];
        d = new double[count];
        t = new double[count];
        l = new int[count];
        eta = new double[count];
        epsilon = new double[count];
        beta = new double[count];
        gamma = new double[count];
        m = new double[count];
        for (int i = 0; i < count; i++) {
            double[] term = terms.get(i);
            n[i] = term[0];
            d[i] = term[1];
            t[i] = term[2];
            l[i] = (int) term[3];
            eta[i] = term[4];
            epsilon[i] = term[5];
            beta[i] = term[6];
            gamma[i] = term[7];
            m[i] = term[8];
        }
    }

    /** How many terms there are. */
    int size() {
        return n.length;
    }

    /** Adds the energy and its two first derivatives, times the weight. */
    void addFirst(double tau, double delta, double weight, Derivatives sum) {
        double lnTau = Math.log(tau);
        double lnDelta = Math.log(delta);
        for (int i = 0; i < n.length; i++) {
            double deltaL = power(delta, l[i]);
            double tauM = m[i] == 0 ? 0 : Math.exp(m[i] * lnTau);
            double fromEpsilon = delta - epsilon[i];
            double fromGamma = tau - gamma[i];
            double exponent = exponent(i, lnTau, lnDelta, deltaL, tauM, fromEpsilon, fromGamma);
            double value = weight * n[i] * Math.exp(exponent);
            sum.a += value;
            sum.d += value * (d[i] - l[i] * deltaL - 2 * eta[i] * delta * fromEpsilon);
            sum.t += value * (t[i] - 2 * beta[i] * tau * fromGamma - m[i] * tauM);
        }
    }

    /** Adds the energy and all derivatives up to the second, times the weight. */
    void addSecond(double tau, double delta, double weight, Derivatives sum) {
        double lnTau = Math.log(tau);
        double lnDelta = Math.log(delta);
        for (int i = 0; i < n.length; i++) {
            double deltaL = power(delta, l[i]);
            double tauM = m[i] == 0 ? 0 : Math.exp(m[i] * lnTau);
            double fromEpsilon = delta - epsilon[i];
            double fromGamma = tau - gamma[i];
            double exponent = exponent(i, lnTau, lnDelta, deltaL, tauM, fromEpsilon, fromGamma);
            double value = weight * n[i] * Math.exp(exponent);
            // With A = d ln(term)/d ln(delta) and its own derivative dA by ln(delta); B and dB likewise by ln(tau).
            double byDelta = d[i] - l[i] * deltaL - 2 * eta[i] * delta * fromEpsilon;
            double byDeltaAgain = -l[i] * l[i] * deltaL - 2 * eta[i] * delta * (2 * delta - epsilon[i]);
            double byTau = t[i] - 2 * beta[i] * tau * fromGamma - m[i] * tauM;
            double byTauAgain = -2 * beta[i] * tau * (2 * tau - gamma[i]) - m[i] * m[i] * tauM;
            sum.a += value;
            sum.d += value * byDelta;
            sum.dd += value * (byDelta * (byDelta - 1) + byDeltaAgain);
            sum.t += value * byTau;
            sum.tt += value * (byTau * (byTau - 1) + byTauAgain);
            sum.dt += value * byDelta * byTau;
        }
    }

    private double exponent(
            int i, double lnTau, double lnDelta, double deltaL, double tauM, double fromEpsilon, double fromGamma) {
        return d[i] * lnDelta
                + t[i] * lnTau
                - deltaL
                - tauM
                - eta[i] * fromEpsilon * fromEpsilon
                - beta[i] * fromGamma * fromGamma;
    }

    /** delta^l, and 0 where l is 0, since such terms have no exponential of density. */
    private static double power(double delta, int l) {
        if (l == 0) {
            return 0;
        }
        double result = delta;
        for (int i = 1; i < l; i++) {
            result *= delta;
        }
        return result;
    }

    /** Collects terms in the order of their publication. */
    static final class Builder {
        private final List<double[]> terms = new ArrayList<>();

        void power(double n, double d, double t, int l) {
            terms.add(new double[] {n, d, t, l, 0, 0, 0, 0, 0});
        }

        void gaussian(double n, double d, double t, double eta, double epsilon, double beta, double gamma) {
            terms.add(new double[] {n, d, t, 0, eta, epsilon, beta, gamma, 0});
        }

        void doubleExponential(double n, double d, double t, int l, double m) {
            terms.add(new double[] {n, d, t, l, 0, 0, 0, 0, m});
        }

        ResidualTerms build() {
            return new ResidualTerms(terms);
        }
    }
}
