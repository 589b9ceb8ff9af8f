package readback.calc.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.calc.charge.ChargeLevel;

/** How likely each simulated unit is the one that was observed. Arrays are indexed alike and never changed. */
final class Posterior {

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

    /**
     * What is in the unit if its charge is wrong in this way: mean and standard deviation of the units with the fault.
     * Empty where the fault is excluded.
     *
     * @param fault too little or too much charge
     */
    Optional<ChargeLevel> charge(Fault fault) {
        double weight = 0;
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < shares.length; i++) {
            if (troubles().get(i).fault() == fault) {
                double[] charges = troubles().get(i).units().charges();
                for (int j = 0; j < shares[i].length; j++) {
                    weight += shares[i][j];
                    mean += shares[i][j] * charges[j];
                    squares += shares[i][j] * charges[j] * charges[j];
                }
            }
        }
        if (weight <= 0) {
            return Optional.empty();
        }
        mean /= weight;
        return Optional.of(new ChargeLevel(mean, Math.sqrt(Math.max(0, squares / weight - mean * mean))));
    }
}
