package readback.calc.targets;

import java.util.List;
import readback.calc.measurement.Estimate;
import readback.calc.quantity.TemperatureDifference;

/**
 * What superheat or subcooling should be.
 *
 * @param contributions what the instruments that the target was looked up with make of it; none for a plate value
 */
public record Target(TemperatureDifference value, TargetSource source, List<Estimate.Contribution> contributions) {

    public Target {
        contributions = List.copyOf(contributions);
    }

    static Target exact(TemperatureDifference value, TargetSource source) {
        return new Target(value, source, List.of());
    }

    /** One standard deviation of the value; zero for a plate value. */
    public TemperatureDifference standardUncertainty() {
        return Estimate.combined(contributions);
    }
}
