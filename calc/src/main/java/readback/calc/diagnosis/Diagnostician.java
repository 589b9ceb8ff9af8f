package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import readback.calc.charge.ChargeLevel;
import readback.calc.measurement.ChargeMethod;

/**
 * Ranks faults by Bayes' rule over simulated units: a fault is as likely as it is common, times how often a unit with
 * it in some size, in some weather, shows what was observed. The probabilities rank; they are not frequencies of a
 * field study: decision 0005.
 */
public final class Diagnostician {

    private static final double CLEAR_FROM = 0.7;
    private static final double CLEAR_TIMES = 3;
    private static final int LEAST_EVIDENCE = 2;

    /** A clue that changes the odds by less than a fifth is not worth mentioning. */
    private static final double WORTH_MENTIONING = Math.log(1.2);

    /** The ranking that deviations with errors of their own and findings allow. */
    public Diagnosis diagnose(ChargeMethod method, List<Evidence> evidence, Map<Finding, Boolean> findings) {
        return diagnose(method, Observed.independent(evidence), findings, Set.of());
    }

    /**
     * The ranking without faults that are known not to be there.
     *
     * @param excluded at most all but two of the faults of the metering family
     */
    Diagnosis diagnose(ChargeMethod method, Observed observed, Map<Finding, Boolean> findings, Set<Fault> excluded) {
        Population population = Population.of(method);
        Likeness likeness = new Likeness(observed, population.mostUnits());
        Posterior posterior = Posterior.of(population, likeness, findings, excluded);
        int pieces = observed.evidence().size() + findings.size();
        Map<Fault, Double> probability = posterior.byFault();
        Clues clues = new Clues(posterior, likeness, observed, findings);
        List<Suspect> suspects = new ArrayList<>(probability.size());
        probability.forEach((fault, share) -> suspects.add(suspect(fault, share, clues)));
        suspects.sort(Ranking.by(Suspect::probability));
        return new Diagnosis(
                certainty(suspects, pieces),
                suspects,
                pieces == 0 ? Map.of() : charge(posterior),
                pieces == 0 ? List.of() : new Gain(posterior, observed, findings).ranked());
    }

    private static Map<Fault, ChargeLevel> charge(Posterior posterior) {
        Map<Fault, ChargeLevel> charge = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            if (fault.isCharge()) {
                posterior.charge(fault).ifPresent(level -> charge.put(fault, level));
            }
        }
        return charge;
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

    private static Suspect suspect(Fault fault, double probability, Clues clues) {
        List<Suspect.Clue> supporting = new ArrayList<>();
        List<Suspect.Clue> opposing = new ArrayList<>();
        for (Suspect.Clue clue : clues.of(fault)) {
            if (clue.weight() > WORTH_MENTIONING) {
                supporting.add(clue);
            } else if (clue.weight() < -WORTH_MENTIONING) {
                opposing.add(clue);
            }
        }
        supporting.sort(Ranking.by(Suspect.Clue::weight));
        opposing.sort(Ranking.by(clue -> -clue.weight()));
        return new Suspect(fault, probability, supporting, opposing);
    }
}
