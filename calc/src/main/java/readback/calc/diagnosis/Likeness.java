package readback.calc.diagnosis;

import java.util.Arrays;
import java.util.List;

/**
 * How like what was observed simulated units are: the density of the observation about each of them, by the joint
 * uncertainty of the measurement and by what real units differ from simulated ones besides. Its tails are heavy, so
 * that one wild reading cannot outvote all others. Owned by one thread.
 */
final class Likeness {

    /**
     * How far real units lie beside simulated ones, standard deviations in K in the order of the symptoms; it also
     * bridges the gaps between simulated units. Ours.
     */
    private static final double[] BESIDE = {0.7, 0.7, 1, 0.6, 2.5, 0.7};

    /** How much more or less than the simulated unit a real one answers to the same fault, as a share. Ours. */
    private static final double OTHERWISE_STRONG = 0.3;

    /** Of freedom: few make heavy tails. Ours. */
    private static final double DEGREES = 4;

    /** A reading further off than this is astray, and its error is not carried on. */
    private static final double MOST_CARRIED = 3;

    private final int[] columns;
    private final double[] observed;
    private final double[][] lower;
    private final double[] alone;

    /** What is left of each piece of evidence, in its standard deviations; filled anew for each set of units. */
    private final double[][] carried;

    /** The products of all pieces' variances, and of what Student's distribution spreads them to; likewise. */
    private final double[] variances;

    private final double[] spreads;

    /** @param most of units at a time */
    Likeness(Observed what, int most) {
        List<Evidence> evidence = what.evidence();
        int size = evidence.size();
        columns = new int[size];
        observed = new double[size];
        alone = new double[size];
        carried = new double[size][most];
        variances = new double[most];
        spreads = new double[most];
        for (int i = 0; i < size; i++) {
            columns[i] = Observed.index(evidence.get(i).symptom());
            observed[i] = evidence.get(i).deviation().kelvins();
        }
        lower = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? variance(what, columns[i]) : what.covariance()[columns[i]][columns[j]];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-6)) : sum / lower[j][j];
            }
            alone[i] = variance(what, columns[i]);
        }
    }

    /** The variance of one symptom about a simulated unit, K². */
    static double variance(Observed what, int column) {
        return what.covariance()[column][column] + BESIDE[column] * BESIDE[column];
    }

    /** The joint density about each of the units, but for a factor that is the same for all. */
    double[] joint(UnitColumns units) {
        Arrays.fill(variances, 1);
        Arrays.fill(spreads, 1);
        for (int i = 0; i < columns.length; i++) {
            double[] moved = units.deviations(columns[i]);
            double[] left = carried[i];
            subtract(moved, observed[i], left);
            for (int j = 0; j < i; j++) {
                subtractTimes(lower[i][j], carried[j], moved.length, left);
            }
            spread(moved, left, lower[i][i] * lower[i][i]);
            carry(left, moved.length, 1 / lower[i][i]);
        }
        densities(units.size());
        return Arrays.copyOf(spreads, units.size());
    }

    /** The mean density of one piece of evidence about the units, whatever the others are, but for the same factor. */
    double alone(int piece, UnitColumns units) {
        double[] moved = units.deviations(columns[piece]);
        Arrays.fill(variances, 1);
        Arrays.fill(spreads, 1);
        subtract(moved, observed[piece], carried[piece]);
        spread(moved, carried[piece], alone[piece]);
        densities(moved.length);
        double sum = 0;
        for (int u = 0; u < moved.length; u++) {
            sum += spreads[u];
        }
        return sum / moved.length;
    }

    private static void subtract(double[] moved, double observed, double[] left) {
        for (int u = 0; u < moved.length; u++) {
            left[u] = observed - moved[u];
        }
    }

    private static void subtractTimes(double factor, double[] before, int size, double[] left) {
        for (int u = 0; u < size; u++) {
            left[u] -= factor * before[u];
        }
    }

    /**
     * Multiplies in the variance of one piece, and the variance and the square of what is left, which Student needs.
     */
    private void spread(double[] moved, double[] left, double own) {
        double share = OTHERWISE_STRONG * OTHERWISE_STRONG;
        for (int u = 0; u < moved.length; u++) {
            double variance = own + share * moved[u] * moved[u];
            variances[u] *= variance;
            spreads[u] *= DEGREES * variance + left[u] * left[u];
        }
    }

    private static void carry(double[] left, int size, double scale) {
        for (int u = 0; u < size; u++) {
            left[u] = Math.max(-MOST_CARRIED, Math.min(MOST_CARRIED, left[u] * scale));
        }
    }

    /**
     * Student's distribution: for four degrees of freedom the power is five halves. With v the variance and l what is
     * left, v^-1/2 (1 + l²/4v)^-5/2 is v² (4v + l²)^-5/2 but for a factor. Put in place of the spreads.
     */
    private void densities(int size) {
        for (int u = 0; u < size; u++) {
            double ratio = variances[u] / spreads[u];
            spreads[u] = ratio * ratio / Math.sqrt(spreads[u]);
        }
    }
}
