package readback.calc.targets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Instrument;
import readback.calc.quantity.TemperatureDifference;

/**
 * What superheat or subcooling should be.
 *
 * @param contributions what the instruments that the target was looked up with make of it; none for a plate value
 * @param shared instruments whose error the target and the measured value have in common, so that it drops out of their
 *     difference
 */
public record Target(
        TemperatureDifference value,
        TargetSource source,
        List<Estimate.Contribution> contributions,
        Set<Instrument> shared) {

    public Target {
        contributions = List.copyOf(contributions);
        shared = Set.copyOf(shared);
    }

    static Target exact(TemperatureDifference value, TargetSource source) {
        return from(value, source, List.of());
    }

    static Target from(TemperatureDifference value, TargetSource source, List<Estimate.Contribution> contributions) {
        return new Target(value, source, contributions, Set.of());
    }

    /** How far a measured value lies above this target. */
    public Estimate deviation(Estimate actual) {
        List<Estimate.Contribution> all = new ArrayList<>(12);
        for (Estimate.Contribution each : actual.contributions()) {
            if (!shared.contains(each.instrument())) {
                all.add(each);
            }
        }
        all.addAll(contributions);
        return new Estimate(actual.value().minus(value), all);
    }

    /** One standard deviation of the value; zero for a plate value. */
    public TemperatureDifference standardUncertainty() {
        return Estimate.combined(contributions);
    }
}
