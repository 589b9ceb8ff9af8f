package readback.calc.condition;

import java.util.Optional;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** How much colder the supply air should be than the return air when the airflow is right. */
public final class TemperatureSplit {

    private static final double LOWEST_DRY_BULB = 70;
    private static final double HIGHEST_DRY_BULB = 84;
    private static final double LOWEST_WET_BULB = 50;
    private static final double HIGHEST_WET_BULB = 76;

    private TemperatureSplit() {}

    /**
     * The target split, from 70 to 84 °F return dry bulb and 50 to 76 °F return wet bulb; absent outside, and where the
     * wet bulb lies above the dry bulb.
     *
     * <p>−70.0386 + 0.544231 DB + 2.1969 WB − 0.0228199 WB², °F: computed as the one quadratic that gives all 357
     * values of California Energy Commission table RA3.2-3 (from memory, decision 0008) within 0.053 °F.
     */
    public static Optional<TemperatureDifference> target(Temperature returnDryBulb, Temperature returnWetBulb) {
        double dryBulb = returnDryBulb.fahrenheit();
        double wetBulb = returnWetBulb.fahrenheit();
        double rounding = 1e-9;
        if (dryBulb < LOWEST_DRY_BULB - rounding
                || dryBulb > HIGHEST_DRY_BULB + rounding
                || wetBulb < LOWEST_WET_BULB - rounding
                || wetBulb > Math.min(HIGHEST_WET_BULB, dryBulb) + rounding) {
            return Optional.empty();
        }
        return Optional.of(TemperatureDifference.fahrenheit(
                -70.0386 + 0.544231 * dryBulb + 2.1969 * wetBulb - 0.0228199 * wetBulb * wetBulb));
    }

    /** Return less supply air where both were read, otherwise as it was stated. */
    public static Optional<TemperatureDifference> actual(Readings readings) {
        Optional<Temperature> before = readings.temperature(Quantity.RETURN_DRY_BULB);
        Optional<Temperature> after = readings.temperature(Quantity.SUPPLY_DRY_BULB);
        return before.isPresent() && after.isPresent()
                ? Optional.of(before.get().minus(after.get()))
                : readings.difference(Quantity.TEMPERATURE_SPLIT);
    }

    /** Actual minus target split, where there is one and the return air gives a target. */
    public static Optional<TemperatureDifference> deviation(Readings readings) {
        Optional<Temperature> dryBulb = readings.temperature(Quantity.RETURN_DRY_BULB);
        Optional<Temperature> wetBulb = readings.temperature(Quantity.RETURN_WET_BULB);
        Optional<TemperatureDifference> actual = actual(readings);
        if (dryBulb.isEmpty() || wetBulb.isEmpty() || actual.isEmpty()) {
            return Optional.empty();
        }
        return target(dryBulb.get(), wetBulb.get()).map(actual.get()::minus);
    }
}
