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

    private final Population population;

    /** The share of each unit, by trouble and unit; all together are one. Empty for a trouble that is excluded. */
    private final double[][] shares;

    private final double[] byTrouble;

    private Posterior(Population population, double[][] shares, double[] byTrouble) {
        this.population = population;
        this.shares = shares;
        this.byTrouble = byTrouble;
    }

    static Posterior of(Population population, Observed observed, Map<Finding, Boolean> findings, Set<Fault> excluded) {
        Likeness likeness = new Likeness(observed);
        List<Population.Trouble> troubles = population.troubles();
        double[][] shares = new double[troubles.size()][];
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            Population.Trouble trouble = troubles.get(i);
            Population.Unit[] units = trouble.units();
            double[] row = new double[excluded.contains(trouble.fault()) ? 0 : units.length];
            for (int j = 0; j < row.length; j++) {
                row[j] = trouble.weight() / units.length * likeness.of(units[j]);
            }
            findings.forEach((finding, answer) -> weigh(finding, answer, trouble.units(), row));
            for (double share : row) {
                sum += share;
            }
            shares[i] = row;
        }
        double[] byTrouble = new double[shares.length];
        for (int i = 0; i < shares.length; i++) {
            for (int j = 0; j < shares[i].length; j++) {
                shares[i][j] /= sum;
                byTrouble[i] += shares[i][j];
            }
        }
        return new Posterior(population, shares, byTrouble);
    }

    private static void weigh(Finding finding, boolean answer, Population.Unit[] units, double[] shares) {
        FindingLikelihood likelihood = FindingLikelihood.of(finding);
        double there = likelihood.of(answer, true);
        double notThere = likelihood.of(answer, false);
        for (int j = 0; j < shares.length; j++) {
            shares[j] *= units[j].shows(finding) ? there : notThere;
        }
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
            for (int j = 0; ofCharge(i) && j < shares[i].length; j++) {
                bins[(int) Math.round(troubles().get(i).units()[j].charge() * BINS_A_CHARGE)] += shares[i][j];
                sum += shares[i][j];
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
