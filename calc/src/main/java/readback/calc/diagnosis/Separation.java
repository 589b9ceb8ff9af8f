package readback.calc.diagnosis;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How well an observation would tell two faults apart: Jeffreys' divergence, the expected weight of evidence for the
 * true one over the other, summed over both.
 */
final class Separation {

    private static final int STEPS = 100;

    /** Below this an observation is not worth the walk. */
    private static final double WORTH_IT = 0.1;

    /**
     * By the two expectations, which tell nothing when they are alike: the same few numbers are needed at every
     * reading.
     */
    private static final Map<Pair, Double> OF_SYMPTOMS = ofSymptoms();

    private record Pair(Expected first, Expected second) {}

    private Separation() {}

    /** The best observation not made yet; absent when none would help. */
    static Optional<NextObservation> best(
            FaultPattern first, FaultPattern second, List<Evidence> known, Collection<Finding> answered) {
        Optional<NextObservation> best = Optional.empty();
        double most = WORTH_IT;
        for (Symptom symptom : Symptom.values()) {
            boolean open = !symptom.quantities().isEmpty()
                    && known.stream().noneMatch(evidence -> evidence.symptom() == symptom);
            double worth = open
                    ? OF_SYMPTOMS.getOrDefault(new Pair(first.expected(symptom), second.expected(symptom)), 0.0)
                    : 0;
            if (worth > most) {
                most = worth;
                best = Optional.of(new NextObservation.Measure(symptom, symptom.quantities()));
            }
        }
        for (Finding finding : Finding.values()) {
            double worth =
                    answered.contains(finding) ? 0 : finding.ease() * ofFinding(finding, first.fault(), second.fault());
            if (worth > most) {
                most = worth;
                best = Optional.of(new NextObservation.Look(finding));
            }
        }
        return best;
    }

    private static Map<Pair, Double> ofSymptoms() {
        Map<Pair, Double> table = new HashMap<>();
        for (Expected first : Expected.values()) {
            for (Expected second : Expected.values()) {
                if (first != second) {
                    table.put(new Pair(first, second), ofSymptom(first, second));
                }
            }
        }
        return Map.copyOf(table);
    }

    private static double ofSymptom(Expected first, Expected second) {
        double width = 2 * Expected.REACH / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double z = -Expected.REACH + (i + 0.5) * width;
            sum += divergence(first.density(z), second.density(z)) * width;
        }
        return sum;
    }

    private static double ofFinding(Finding finding, Fault first, Fault second) {
        return divergence(FindingLikelihood.of(finding, true, first), FindingLikelihood.of(finding, true, second))
                + divergence(FindingLikelihood.of(finding, false, first), FindingLikelihood.of(finding, false, second));
    }

    private static double divergence(double p, double q) {
        return (p - q) * Math.log(p / q);
    }
}
