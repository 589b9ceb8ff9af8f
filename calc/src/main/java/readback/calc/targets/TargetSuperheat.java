package readback.calc.targets;

import java.util.Optional;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Targets of superheat that do not come from the charging table. */
public final class TargetSuperheat {

    private TargetSuperheat() {}

    /**
     * The estimate (3 × wet bulb − 80 − outdoor) / 2 in °F; absent where it must not be used.
     *
     * <p>Trade lore without a defining standard. Held against the published charging grid it is within 3 °F at 94 % of
     * the points, but 3.5 to 6.5 °F low when hot and humid, and blind to the region where no test is valid. So it is
     * given only from 65 to 100 °F outdoors and 58 to 72 °F wet bulb, and never where the table forbids the test.
     */
    public static Optional<Target> closedFormEstimate(Temperature wetBulb, Temperature outdoor) {
        double wet = wetBulb.fahrenheit();
        double out = outdoor.fahrenheit();
        if (wet < 58 || wet > 72 || out < 65 || out > 100) {
            return Optional.empty();
        }
        if (SuperheatTable.standard().target(wetBulb, outdoor).usable().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Target(
                TemperatureDifference.fahrenheit((3 * wet - 80 - out) / 2),
                TargetSource.CLOSED_FORM_ESTIMATE,
                // 3 °F at 94 % of the grid points: two standard deviations
                TemperatureDifference.fahrenheit(1.5)));
    }
}
