package readback.calc.condition;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/**
 * A condition that does not hold, with what shows it and what to do.
 *
 * @param measured the reading that fails; absent where the failure is a result of several
 * @param limit the value it had to reach or keep; absent likewise
 * @param deviation actual minus target, for the temperature split
 * @param remedies the most fitting first
 */
public record FailedCondition(
        Condition condition,
        Optional<Reading> measured,
        Optional<Reading> limit,
        Optional<TemperatureDifference> deviation,
        List<Remedy> remedies) {

    public FailedCondition {
        remedies = List.copyOf(remedies);
    }

    public static FailedCondition of(Condition condition, Reading measured, Reading limit, Remedy... remedies) {
        return new FailedCondition(
                condition, Optional.of(measured), Optional.of(limit), Optional.empty(), List.of(remedies));
    }

    public static FailedCondition of(Condition condition, Remedy... remedies) {
        return new FailedCondition(condition, Optional.empty(), Optional.empty(), Optional.empty(), List.of(remedies));
    }

    static FailedCondition of(Condition condition, TemperatureDifference deviation, Remedy... remedies) {
        return new FailedCondition(
                condition, Optional.empty(), Optional.empty(), Optional.of(deviation), List.of(remedies));
    }
}
