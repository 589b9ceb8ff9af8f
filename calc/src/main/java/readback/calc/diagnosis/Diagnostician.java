package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.calc.measurement.ChargeMethod;

/**
 * Ranks faults by Bayes' rule: each fault's pattern says how likely each observation would be, observations counted as
 * independent. The probabilities rank; they are not frequencies of a field study: decision 0005.
 */
public final class Diagnostician {

    private static final double CLEAR_FROM = 0.7;
    private static final double CLEAR_TIMES = 3;
    private static final int LEAST_EVIDENCE = 2;

    /** A clue that changes the odds by less than a fifth is not worth mentioning. */
    private static final double WORTH_MENTIONING = Math.log(1.2);

    /** The ranking that evidence and findings allow; symptoms not mentioned are taken as not known. */
    public Diagnosis diagnose(ChargeMethod method, List<Evidence> evidence, Map<Finding, Boolean> findings) {
        return diagnose(method, evidence, findings, Set.of());
    }

    /**
     * The ranking without faults that are known not to be there.
     *
     * @param excluded at most all but two of the faults of the metering family
     */
    Diagnosis diagnose(
            ChargeMethod method, List<Evidence> evidence, Map<Finding, Boolean> findings, Set<Fault> excluded) {
        List<FaultPattern> patterns = FaultPattern.of(method).stream()
                .filter(pattern -> !excluded.contains(pattern.fault()))
                .toList();
        double[] likelihood = new double[patterns.size()];
        double sum = 0;
        for (int i = 0; i < likelihood.length; i++) {
            likelihood[i] = likelihood(patterns.get(i), evidence, findings);
            sum += likelihood[i];
        }
        Map<Fault, Double> probability = new EnumMap<>(Fault.class);
        Map<Fault, FaultPattern> best = new EnumMap<>(Fault.class);
        Map<Fault, Double> bestLikelihood = new EnumMap<>(Fault.class);
        for (int i = 0; i < likelihood.length; i++) {
            FaultPattern pattern = patterns.get(i);
            probability.merge(pattern.fault(), likelihood[i] / sum, Double::sum);
            if (likelihood[i] > bestLikelihood.getOrDefault(pattern.fault(), -1.0)) {
                bestLikelihood.put(pattern.fault(), likelihood[i]);
                best.put(pattern.fault(), pattern);
            }
        }
        List<Suspect> suspects = new ArrayList<>(best.size());
        best.forEach((fault, pattern) ->
                suspects.add(suspect(pattern, probability.getOrDefault(fault, 0.0), evidence, findings)));
        suspects.sort(Comparator.comparingDouble(Suspect::probability).reversed());
        return new Diagnosis(
                certainty(suspects, evidence.size() + findings.size()),
                suspects,
                next(suspects, best, evidence, findings));
    }

    private static double likelihood(FaultPattern pattern, List<Evidence> evidence, Map<Finding, Boolean> findings) {
        double likelihood = pattern.weight();
        for (Evidence clue : evidence) {
            likelihood *= pattern.expected(clue.symptom()).density(clue.deviations());
        }
        for (Map.Entry<Finding, Boolean> finding : findings.entrySet()) {
            likelihood *= FindingLikelihood.of(finding.getKey(), finding.getValue(), pattern.fault());
        }
        return likelihood;
    }

    private static Diagnosis.Certainty certainty(List<Suspect> suspects, int pieces) {
        if (pieces < LEAST_EVIDENCE) {
            return Diagnosis.Certainty.TOO_LITTLE_EVIDENCE;
        }
        double first = suspects.get(0).probability();
        return first >= CLEAR_FROM && first >= CLEAR_TIMES * suspects.get(1).probability()
                ? Diagnosis.Certainty.CLEAR
                : Diagnosis.Certainty.AMBIGUOUS;
    }

    private static Suspect suspect(
            FaultPattern pattern, double probability, List<Evidence> evidence, Map<Finding, Boolean> findings) {
        List<Suspect.Clue> supporting = new ArrayList<>();
        List<Suspect.Clue> opposing = new ArrayList<>();
        for (Evidence clue : evidence) {
            double weight = Math.log(pattern.expected(clue.symptom()).density(clue.deviations())
                    / Expected.ANYTHING.density(clue.deviations()));
            sort(new Suspect.Clue.Measured(clue, weight), supporting, opposing);
        }
        findings.forEach((finding, answer) -> {
            double weight = Math.log(2 * FindingLikelihood.of(finding, answer, pattern.fault()));
            sort(new Suspect.Clue.Seen(finding, answer, weight), supporting, opposing);
        });
        supporting.sort(Comparator.comparingDouble(Suspect.Clue::weight).reversed());
        opposing.sort(Comparator.comparingDouble(Suspect.Clue::weight));
        return new Suspect(pattern.fault(), probability, supporting, opposing);
    }

    private static void sort(Suspect.Clue clue, List<Suspect.Clue> supporting, List<Suspect.Clue> opposing) {
        if (clue.weight() > WORTH_MENTIONING) {
            supporting.add(clue);
        } else if (clue.weight() < -WORTH_MENTIONING) {
            opposing.add(clue);
        }
    }

    private static Optional<NextObservation> next(
            List<Suspect> suspects,
            Map<Fault, FaultPattern> patterns,
            List<Evidence> evidence,
            Map<Finding, Boolean> findings) {
        FaultPattern first = patterns.get(suspects.get(0).fault());
        FaultPattern second = patterns.get(suspects.get(1).fault());
        return first == null || second == null
                ? Optional.empty()
                : Separation.best(first, second, evidence, findings.keySet());
    }
}
