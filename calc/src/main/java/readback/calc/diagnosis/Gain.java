package readback.calc.diagnosis;

import java.util.ArrayList;
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

    private static final List<Finding> FINDINGS = List.of(Finding.values());

    /** Units with less than this share tell nothing together either. */
    private static final double NEGLIGIBLE = 1e-5;

    private final Posterior posterior;
    private final Observed observed;
    private final Set<Finding> answered;
    private final Map<Fault, Double> probability;
    private final Map<Fault, double[]> shown;

    Gain(Posterior posterior, Observed observed, Map<Finding, Boolean> findings) {
        this.posterior = posterior;
        this.observed = observed;
        this.answered = findings.isEmpty() ? EnumSet.noneOf(Finding.class) : EnumSet.copyOf(findings.keySet());
        this.probability = posterior.byFault();
        this.shown = shown(posterior);
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
        for (Finding finding : FINDINGS) {
            if (!answered.contains(finding)) {
                ranked.add(new Diagnosis.Worth(new NextObservation.Look(finding), finding.ease() * ofFinding(finding)));
            }
        }
        ranked.sort(Ranking.by(Diagnosis.Worth::gain));
        return ranked;
    }

    private double ofSymptom(Symptom symptom) {
        int column = Observed.index(symptom);
        double width = Math.sqrt(Likeness.variance(observed, column));
        Map<Fault, double[]> bins = new EnumMap<>(Fault.class);
        for (int i = 0; i < posterior.troubles().size(); i++) {
            Population.Trouble trouble = posterior.troubles().get(i);
            double[] row = bins.computeIfAbsent(trouble.fault(), fault -> new double[BINS]);
            spread(trouble.units().deviations(column), posterior.shares(i), width, row);
        }
        return information(BINS, bins);
    }

    /** Where the measurement would fall at each unit, with its uncertainty about it. */
    private static void spread(double[] deviations, double[] shares, double width, double[] row) {
        for (int j = 0; j < shares.length; j++) {
            if (shares[j] > NEGLIGIBLE) {
                double value = deviations[j] / width;
                for (int i = 0; i < POINTS.length; i++) {
                    int bin = (int) Math.floor(value + POINTS[i]) + BINS / 2;
                    row[Math.max(0, Math.min(BINS - 1, bin))] += WEIGHTS[i] * shares[j];
                }
            }
        }
    }

    private double ofFinding(Finding finding) {
        FindingLikelihood likelihood = FindingLikelihood.of(finding);
        Map<Fault, double[]> bins = new EnumMap<>(Fault.class);
        shown.forEach((fault, sums) -> {
            double there = sums[indexOf(finding)];
            double notThere = sums[FINDINGS.size()] - there;
            double yes = there * likelihood.there() + notThere * likelihood.notThere();
            bins.put(fault, new double[] {yes, there + notThere - yes});
        });
        return information(2, bins);
    }

    /** How much of each fault's share shows each finding, in their order, and all of it; but for what is negligible. */
    private static Map<Fault, double[]> shown(Posterior posterior) {
        Map<Fault, double[]> shown = new EnumMap<>(Fault.class);
        for (int i = 0; i < posterior.troubles().size(); i++) {
            Population.Trouble trouble = posterior.troubles().get(i);
            double[] sums = shown.computeIfAbsent(trouble.fault(), fault -> new double[FINDINGS.size() + 1]);
            int[] found = trouble.units().findings();
            double[] shares = posterior.shares(i);
            for (int j = 0; j < shares.length; j++) {
                if (shares[j] > NEGLIGIBLE) {
                    sums[FINDINGS.size()] += shares[j];
                    for (int bits = found[j]; bits != 0; bits &= bits - 1) {
                        sums[Integer.numberOfTrailingZeros(bits)] += shares[j];
                    }
                }
            }
        }
        return shown;
    }

    private static int indexOf(Finding finding) {
        return Integer.numberOfTrailingZeros(UnitColumns.bit(finding));
    }

    /** Mutual information of fault and outcome. */
    private double information(int size, Map<Fault, double[]> bins) {
        double[] all = new double[size];
        for (double[] row : bins.values()) {
            for (int i = 0; i < size; i++) {
                all[i] += row[i];
            }
        }
        double sum = 0;
        for (Map.Entry<Fault, double[]> each : bins.entrySet()) {
            double share = probability.getOrDefault(each.getKey(), 0.0);
            for (int i = 0; i < size; i++) {
                double joint = each.getValue()[i];
                if (joint > 0) {
                    sum += joint * Math.log(joint / (share * all[i]));
                }
            }
        }
        return sum;
    }
}
