package readback.calc.diagnosis;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.calc.charge.ChargeLevel;
import readback.calc.charge.Verdict;
import readback.calc.measurement.Readings;

/**
 * Causes ranked by evidence.
 *
 * @param suspects every fault that the metering device allows, the likeliest first; never empty
 * @param charge what is in the unit if its charge is wrong, by the fault of the charge; empty without evidence
 * @param observations what could still be observed, the most telling first
 */
public record Diagnosis(
        Certainty certainty, List<Suspect> suspects, Map<Fault, ChargeLevel> charge, List<Worth> observations) {

    /** Below this an observation is not worth the walk. Natural units of information; ours. */
    static final double WORTH_IT = 0.05;

    /** How sure the ranking is. */
    public enum Certainty {
        /** One cause stands out: at least 70 % and three times the next. */
        CLEAR,
        /** Two or more causes explain the evidence about as well. */
        AMBIGUOUS,
        /** Fewer than two pieces of evidence. */
        TOO_LITTLE_EVIDENCE
    }

    /**
     * An observation and what it is expected to tell.
     *
     * @param gain natural units of information about all suspects, less where it takes work
     */
    public record Worth(NextObservation observation, double gain) {

        /** The same with only what is still missing, for the price of that. */
        Worth without(Readings taken) {
            NextObservation left = observation.without(taken);
            return new Worth(left, gain / left.steps());
        }
    }

    public Diagnosis {
        suspects = List.copyOf(suspects);
        charge = Map.copyOf(charge);
        observations = List.copyOf(observations);
    }

    /** What would tell most about all suspects; absent when nothing is left that is worth the walk. */
    public Optional<NextObservation> next() {
        return next(WORTH_IT);
    }

    /** The same where an observation has to tell at least so much. */
    Optional<NextObservation> next(double least) {
        return observations.stream()
                .filter(worth -> worth.gain() >= least && worth.observation().open())
                .findFirst()
                .map(Worth::observation);
    }

    /** The likeliest cause, which may be none. */
    public Suspect leader() {
        return suspects.get(0);
    }

    /** The likeliest fault, whether or not "none" is likelier. */
    public Suspect leadingFault() {
        return suspects.stream()
                .filter(suspect -> suspect.fault() != Fault.NONE)
                .findFirst()
                .orElseThrow();
    }

    /** The probability of one fault. */
    public double probability(Fault fault) {
        return suspects.stream()
                .filter(suspect -> suspect.fault() == fault)
                .mapToDouble(Suspect::probability)
                .findFirst()
                .orElse(0);
    }

    /**
     * What is in the unit if the charge is wrong in the way that this verdict puts right; empty for any other verdict.
     */
    public Optional<ChargeLevel> charge(Verdict.Kind kind) {
        return switch (kind) {
            case ADD -> Optional.ofNullable(charge.get(Fault.UNDERCHARGE));
            case RECOVER -> Optional.ofNullable(charge.get(Fault.OVERCHARGE));
            default -> Optional.empty();
        };
    }

    /**
     * This diagnosis asking only for readings that were not taken yet, and for nothing that cannot be found out.
     *
     * @param passedOver questions that the technician left open
     */
    Diagnosis asking(Readings taken, Set<Finding> passedOver) {
        Set<Finding> open = EnumSet.allOf(Finding.class);
        open.removeAll(passedOver);
        return new Diagnosis(
                certainty,
                suspects,
                charge,
                observations.stream()
                        .filter(worth -> worth.observation().possible(taken, open))
                        .map(worth -> worth.without(taken))
                        .sorted(Ranking.by(Worth::gain))
                        .toList());
    }
}
