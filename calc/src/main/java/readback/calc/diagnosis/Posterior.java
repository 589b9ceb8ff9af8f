package readback.calc.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How likely each simulated unit is the one that was observed. Arrays are indexed alike and never changed. */
final class Posterior {

    private static final double TWENTIETH = 0.05;
    private static final double QUARTER = 0.25;

    /** Half a percent of the nameplate charge each, up to twice of it. */
    private static final int BINS_A_CHARGE = 200;

    private static final int BINS = 401;

    private static final double[] NO_UNITS = {};

    private final Population population;

    /** The share of each unit, by trouble and unit; all together are one. Empty for a trouble that is excluded. */
    private final double[][] shares;

    private final double[] byTrouble;

    private Posterior(Population population, double[][] shares, double[] byTrouble) {
        this.population = population;
        this.shares = shares;
        this.byTrouble = byTrouble;
    }

    static Posterior of(Population population, Likeness likeness, Map<Finding, Boolean> findings, Set<Fault> excluded) {
        List<Population.Trouble> troubles = population.troubles();
        double[][] shares = new double[troubles.size()][];
        double[] byTrouble = new double[shares.length];
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            Population.Trouble trouble = troubles.get(i);
            double[] row = NO_UNITS;
            if (!excluded.contains(trouble.fault())) {
                row = likeness.joint(trouble.units());
                for (Map.Entry<Finding, Boolean> each : findings.entrySet()) {
                    weigh(each.getKey(), each.getValue(), trouble.units(), row);
                }
                scale(row, trouble.weight() / row.length);
            }
            shares[i] = row;
            byTrouble[i] = sum(row);
            sum += byTrouble[i];
        }
        for (int i = 0; i < shares.length; i++) {
            scale(shares[i], 1 / sum);
            byTrouble[i] /= sum;
        }
        return new Posterior(population, shares, byTrouble);
    }

    private static void weigh(Finding finding, boolean answer, UnitColumns units, double[] shares) {
        FindingLikelihood likelihood = FindingLikelihood.of(finding);
        double there = likelihood.of(answer, true);
        double notThere = likelihood.of(answer, false);
        int bit = UnitColumns.bit(finding);
        int[] found = units.findings();
        for (int j = 0; j < shares.length; j++) {
            shares[j] *= (found[j] & bit) != 0 ? there : notThere;
        }
    }

    private static void scale(double[] shares, double factor) {
        for (int j = 0; j < shares.length; j++) {
            shares[j] *= factor;
        }
    }

    private static double sum(double[] shares) {
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        return sum;
    }

    List<Population.Trouble> troubles() {
        return population.troubles();
    }

    /** The share of each unit with the trouble; empty where it is excluded. */
    double[] shares(int trouble) {
        return shares[trouble];
    }

    Map<Fault, Double> byFault() {
        Map<Fault, Double> probability = new EnumMap<>(Fault.class);
        for (int i = 0; i < shares.length; i++) {
            if (shares[i].length > 0) {
                probability.merge(troubles().get(i).fault(), byTrouble[i], Double::sum);
            }
        }
        return probability;
    }

    /** What may be in the unit, were nothing but the charge wrong. */
    ChargeRange charge() {
        double[] bins = new double[BINS];
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            if (ofCharge(i)) {
                double[] charges = troubles().get(i).units().charges();
                for (int j = 0; j < shares[i].length; j++) {
                    bins[(int) Math.round(charges[j] * BINS_A_CHARGE)] += shares[i][j];
                }
                sum += byTrouble[i];
            }
        }
        return new ChargeRange(
                quantile(bins, TWENTIETH * sum),
                quantile(bins, QUARTER * sum),
                quantile(bins, (1 - QUARTER) * sum),
                quantile(bins, (1 - TWENTIETH) * sum));
    }

    private boolean ofCharge(int trouble) {
        Fault fault = troubles().get(trouble).fault();
        return fault.isCharge() || fault == Fault.NONE;
    }

    private static double quantile(double[] bins, double share) {
        double sum = 0;
        for (int i = 0; i < bins.length; i++) {
            sum += bins[i];
            if (sum >= share) {
                return i / (double) BINS_A_CHARGE;
            }
        }
        return 1;
    }
}
