package readback.calc.diagnosis;

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

    /** Filled anew for each unit. */
    private final double[] carried;

    Likeness(Observed what) {
        List<Evidence> evidence = what.evidence();
        int size = evidence.size();
        columns = new int[size];
        observed = new double[size];
        alone = new double[size];
        carried = new double[size];
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

    /** The joint density about a unit, but for a factor that is the same for all. */
    double of(Population.Unit unit) {
        double[] moved = unit.deviations();
        double[] z = carried;
        double spreads = 1;
        double variances = 1;
        for (int i = 0; i < z.length; i++) {
            double unitMoved = moved[columns[i]];
            double left = observed[i] - unitMoved;
            for (int j = 0; j < i; j++) {
                left -= lower[i][j] * z[j];
            }
            double variance = variances(i, unitMoved);
            spreads *= 1 + left * left / (DEGREES * variance);
            variances *= variance;
            z[i] = Math.max(-MOST_CARRIED, Math.min(MOST_CARRIED, left / lower[i][i]));
        }
        return student(spreads, variances);
    }

    private double variances(int piece, double moved) {
        return lower[piece][piece] * lower[piece][piece] + OTHERWISE_STRONG * OTHERWISE_STRONG * moved * moved;
    }

    /** The density of one piece of evidence about a unit, whatever the others are, but for the same factor. */
    double alone(int piece, Population.Unit unit) {
        double moved = unit.deviations()[columns[piece]];
        double left = observed[piece] - moved;
        double variance = alone[piece] + OTHERWISE_STRONG * OTHERWISE_STRONG * moved * moved;
        return student(1 + left * left / (DEGREES * variance), variance);
    }

    /** Student's distribution: for four degrees of freedom the power is five halves. */
    private static double student(double spread, double variance) {
        return 1 / (spread * spread * Math.sqrt(spread * variance));
    }
}
