package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What each observation not made yet would tell about all suspects together: the information expected from it, in
 * natural units, less for what takes more work.
 */
final class Gain {

    /** Three points that stand for a normal distribution: the Gauss-Hermite rule of that order. */
    private static final double[] POINTS = {-Math.sqrt(3), 0, Math.sqrt(3)};

    private static final double[] WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    private static final int BINS = 64;

    /** Units with less than this share tell nothing together either. */
    private static final double NEGLIGIBLE = 1e-5;

    private final Posterior posterior;
    private final Observed observed;
    private final Set<Finding> answered;
    private final Map<Fault, Double> probability;

    Gain(Posterior posterior, Observed observed, Map<Finding, Boolean> findings) {
        this.posterior = posterior;
        this.observed = observed;
        this.answered = findings.isEmpty() ? EnumSet.noneOf(Finding.class) : EnumSet.copyOf(findings.keySet());
        this.probability = posterior.byFault();
    }

    /** Every observation not made yet, the most telling first. */
    List<Diagnosis.Worth> ranked() {
        List<Diagnosis.Worth> ranked = new ArrayList<>();
        Set<Symptom> known = observed.symptoms();
        for (Symptom symptom : Symptom.values()) {
            if (!known.contains(symptom)) {
                ranked.add(new Diagnosis.Worth(
                        new NextObservation.Measure(symptom, symptom.quantities()), ofSymptom(symptom)));
            }
        }
        for (Finding finding : Finding.values()) {
            if (!answered.contains(finding)) {
                ranked.add(new Diagnosis.Worth(new NextObservation.Look(finding), finding.ease() * ofFinding(finding)));
            }
        }
        ranked.sort(Comparator.comparingDouble(Diagnosis.Worth::gain).reversed());
        return ranked;
    }

    private double ofSymptom(Symptom symptom) {
        int column = Observed.index(symptom);
        double width = Math.sqrt(Likeness.variance(observed, column));
        return information(BINS, (unit, share, row) -> {
            for (int i = 0; i < POINTS.length; i++) {
                double value = unit.deviations()[column] / width + POINTS[i];
                int bin = Math.max(0, Math.min(BINS - 1, (int) Math.floor(value) + BINS / 2));
                row[bin] += WEIGHTS[i] * share;
            }
        });
    }

    private double ofFinding(Finding finding) {
        FindingLikelihood likelihood = FindingLikelihood.of(finding);
        return information(2, (unit, share, row) -> {
            double yes = unit.shows(finding) ? likelihood.there() : likelihood.notThere();
            row[0] += share * yes;
            row[1] += share * (1 - yes);
        });
    }

    /** Where the outcome of an observation at a unit would fall. */
    private interface Outcome {
        void add(Population.Unit unit, double share, double[] row);
    }

    /** Mutual information of fault and outcome. */
    private double information(int size, Outcome outcome) {
        Map<Fault, double[]> bins = new EnumMap<>(Fault.class);
        for (int i = 0; i < posterior.troubles().size(); i++) {
            Population.Trouble trouble = posterior.troubles().get(i);
            double[] row = bins.computeIfAbsent(trouble.fault(), fault -> new double[size]);
            double[] shares = posterior.shares(i);
            for (int j = 0; j < shares.length; j++) {
                if (shares[j] > NEGLIGIBLE) {
                    outcome.add(trouble.units()[j], shares[j], row);
                }
            }
        }
        double[] all = new double[size];
        bins.values().forEach(row -> Arrays.setAll(all, i -> all[i] + row[i]));
        double sum = 0;
        for (Map.Entry<Fault, double[]> each : bins.entrySet()) {
            double share = probability.getOrDefault(each.getKey(), 0.0);
            for (int i = 0; i < all.length; i++) {
                double joint = each.getValue()[i];
                if (joint > 0) {
                    sum += joint * Math.log(joint / (share * all[i]));
                }
            }
        }
        return sum;
    }
}
