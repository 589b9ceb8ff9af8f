package readback.calc.diagnosis;

import java.util.List;
import java.util.Optional;
import readback.calc.measurement.Readings;

/**
 * Causes ranked by evidence.
 *
 * @param suspects every fault that the metering device allows, the likeliest first; never empty
 * @param next what would best separate the two leading causes; absent when nothing is left to find out
 */
public record Diagnosis(Certainty certainty, List<Suspect> suspects, Optional<NextObservation> next) {

    /** How sure the ranking is. */
    public enum Certainty {
        /** One cause stands out: at least 70 % and three times the next. */
        CLEAR,
        /** Two or more causes explain the evidence about as well. */
        AMBIGUOUS,
        /** Fewer than two pieces of evidence. */
        TOO_LITTLE_EVIDENCE
    }

    public Diagnosis {
        suspects = List.copyOf(suspects);
    }

    /** The likeliest cause, which may be none. */
    public Suspect leader() {
        return suspects.get(0);
    }

    /** The probability of one fault. */
    public double probability(Fault fault) {
        return suspects.stream()
                .filter(suspect -> suspect.fault() == fault)
                .mapToDouble(Suspect::probability)
                .findFirst()
                .orElse(0);
    }

    /** This diagnosis asking only for readings that were not taken yet. */
    Diagnosis asking(Readings taken) {
        return new Diagnosis(certainty, suspects, next.map(observation -> observation.without(taken)));
    }
}
