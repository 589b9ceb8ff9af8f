package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What each observation says about each fault, by itself: how much likelier it is with the fault than in all units. */
final class Clues {

    private final Map<Fault, List<Suspect.Clue>> clues = new EnumMap<>(Fault.class);
    private final Posterior posterior;

    Clues(Posterior posterior, Likeness likeness, Observed observed, Map<Finding, Boolean> findings) {
        this.posterior = posterior;
        for (int i = 0; i < observed.evidence().size(); i++) {
            int piece = i;
            Evidence evidence = observed.evidence().get(i);
            weigh(units -> likeness.alone(piece, units), weight -> new Suspect.Clue.Measured(evidence, weight));
        }
        findings.forEach((finding, answer) -> weigh(
                units -> FindingLikelihood.of(finding).of(answer, units.share(finding)),
                weight -> new Suspect.Clue.Seen(finding, answer, weight)));
    }

    /** The mean density over some units. */
    private interface Density {
        double of(UnitColumns units);
    }

    private interface Told {
        Suspect.Clue with(double weight);
    }

    private void weigh(Density density, Told told) {
        Map<Fault, Double> densities = new EnumMap<>(Fault.class);
        Map<Fault, Double> weights = new EnumMap<>(Fault.class);
        double all = 0;
        double allWeights = 0;
        for (int i = 0; i < posterior.troubles().size(); i++) {
            Population.Trouble trouble = posterior.troubles().get(i);
            if (posterior.shares(i).length > 0) {
                double weighted = trouble.weight() * density.of(trouble.sample());
                densities.merge(trouble.fault(), weighted, Double::sum);
                weights.merge(trouble.fault(), trouble.weight(), Double::sum);
                all += weighted;
                allWeights += trouble.weight();
            }
        }
        double average = all / allWeights;
        densities.forEach((fault, sum) -> clues.computeIfAbsent(fault, f -> new ArrayList<>())
                .add(told.with(Math.log(sum / weights.getOrDefault(fault, 1.0) / average))));
    }

    List<Suspect.Clue> of(Fault fault) {
        return clues.getOrDefault(fault, List.of());
    }
}
