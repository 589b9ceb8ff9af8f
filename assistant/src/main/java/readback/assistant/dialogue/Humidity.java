package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import readback.calc.air.MoistAir;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * The relative humidity of the return air, said where a wet bulb is wanted. What it comes to counts as a wet bulb that
 * was read: with a hygrometer good to 3 % and an ordinary dry-bulb probe it is off by hardly more than an ordinary
 * wet-bulb probe ({@link readback.calc.measurement.InstrumentAccuracy#STANDARD}).
 *
 * @param dryBulbKnown whether the dry bulb that it is of was said too
 * @param wetBulb what both come to, to a tenth of a degree in the unit of the settings; empty where they cannot be
 */
record Humidity(boolean dryBulbKnown, Optional<Reading> wetBulb) {

    /** What follows from the values just said; empty where none is of humid air, or a wet bulb was said beside them. */
    static Optional<Humidity> of(Assessment assessment, List<Reading> said) {
        List<Quantity> quantities = said.stream().map(Reading::quantity).toList();
        Optional<Reading> humidity = assessment.readings().find(Quantity.RELATIVE_HUMIDITY);
        boolean concerned =
                quantities.contains(Quantity.RELATIVE_HUMIDITY) || quantities.contains(Quantity.RETURN_DRY_BULB);
        if (humidity.isEmpty() || !concerned || quantities.contains(Quantity.RETURN_WET_BULB)) {
            return Optional.empty();
        }
        Optional<Temperature> dryBulb = assessment.readings().temperature(Quantity.RETURN_DRY_BULB);
        return Optional.of(new Humidity(
                dryBulb.isPresent(),
                dryBulb.flatMap(dry -> wetBulb(assessment, dry, humidity.get().base()))));
    }

    private static Optional<Reading> wetBulb(Assessment assessment, Temperature dryBulb, double humidity) {
        Unit unit = assessment.settings().units().temperature();
        try {
            double kelvin = MoistAir.fromRelativeHumidity(dryBulb, humidity, assessment.air())
                    .wetBulb()
                    .kelvin();
            BigDecimal value = BigDecimal.valueOf(unit.fromBase(kelvin)).setScale(1, RoundingMode.HALF_UP);
            return Optional.of(new Reading(Quantity.RETURN_WET_BULB, value, unit));
        } catch (OutOfRangeException e) {
            return Optional.empty();
        }
    }
}
