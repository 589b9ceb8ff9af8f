package readback.calc.procedure;

import java.util.Optional;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.Band;
import readback.calc.measurement.Limits;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What the temperature split says about the air over the indoor coil. The limits are those of the charge check:
 * {@link Limits#temperatureSplit()}.
 */
public final class SplitCheck {

    private SplitCheck() {}

    /** What the split means: California Energy Commission RA3.2.2.7, 2008. */
    public enum Outcome {
        /** Inside the limits. */
        SUFFICIENT,
        /** The air is cooled more than it should be: too little of it flows. */
        TOO_LITTLE_AIR,
        /** The air is cooled less than it should be: measure again; if it stays, capacity is suspect. */
        REPEAT
    }

    /**
     * What came of it.
     *
     * @param actual return less supply air
     * @param target what it should be
     */
    public record Result(Outcome outcome, TemperatureDifference actual, TemperatureDifference target) {}

    /** Compares a split with its target; empty where there is no target for such return air. */
    public static Optional<Result> judge(
            Temperature returnDryBulb, Temperature returnWetBulb, TemperatureDifference actual, Limits limits) {
        return TemperatureSplit.target(returnDryBulb, returnWetBulb)
                .map(target -> new Result(outcome(actual.minus(target), limits.temperatureSplit()), actual, target));
    }

    /** The table of targets is printed in tenths, so the deviation counts in tenths. */
    private static Outcome outcome(TemperatureDifference deviation, Band limits) {
        TemperatureDifference inTenths =
                TemperatureDifference.fahrenheit(Math.round(deviation.fahrenheit() * 10) / 10.0);
        double rounding = 1e-9;
        if (inTenths.kelvins() > limits.high().kelvins() + rounding) {
            return Outcome.TOO_LITTLE_AIR;
        }
        return inTenths.kelvins() < limits.low().kelvins() - rounding ? Outcome.REPEAT : Outcome.SUFFICIENT;
    }
}
