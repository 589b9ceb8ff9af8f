package readback.calc.commissioning;

import java.util.Optional;
import readback.calc.charge.Judgement;
import readback.calc.measurement.Band;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/**
 * How far a coil lies from the air that it works with. The diagnosis holds both against what a sound unit shows in the
 * same weather, and the first against the efficiency of the equipment too, where that was told.
 */
public final class CoilDifference {

    /** Condensing over outdoor air, old equipment of low efficiency. Common practice, no source. */
    public static final TemperatureDifference OVER_OUTDOOR_OF_LOW_EFFICIENCY = TemperatureDifference.fahrenheit(30);

    /** The same, equipment of high efficiency. Common practice, no source. */
    public static final Band OVER_OUTDOOR_OF_HIGH_EFFICIENCY = Band.fahrenheit(10, 15);

    /** Evaporating under return air at 400 cfm a ton. A secondary source; common practice. */
    public static final TemperatureDifference UNDER_RETURN_AT_400_CFM = TemperatureDifference.fahrenheit(35);

    /** The same at 350 cfm a ton. */
    public static final TemperatureDifference UNDER_RETURN_AT_350_CFM = TemperatureDifference.fahrenheit(40);

    /** Where a difference lies beside what equipment of that efficiency usually shows. */
    public enum Usual {
        BELOW,
        WITHIN,
        ABOVE
    }

    private CoilDifference() {}

    /** The condensing saturation over the outdoor air beside what is usual; empty where one of them is not known. */
    public static Optional<Usual> condensing(Judgement judgement, Readings readings, Optional<Efficiency> efficiency) {
        return efficiency
                .map(Efficiency::condensingOverOutdoor)
                .flatMap(usual ->
                        condensingOverOutdoor(judgement, readings).map(difference -> beside(usual, difference)));
    }

    private static Usual beside(Band usual, TemperatureDifference difference) {
        if (usual.contains(difference)) {
            return Usual.WITHIN;
        }
        return difference.compareTo(usual.low()) < 0 ? Usual.BELOW : Usual.ABOVE;
    }

    /** Condensing saturation (bubble point) over the outdoor air; empty where one of them was not read. */
    public static Optional<TemperatureDifference> condensingOverOutdoor(Judgement judgement, Readings readings) {
        return judgement
                .condensingSaturation()
                .flatMap(condensing ->
                        readings.temperature(Quantity.OUTDOOR_TEMPERATURE).map(condensing::minus));
    }

    /** Evaporating saturation (dew point) under the return air's dry bulb; empty where one of them was not read. */
    public static Optional<TemperatureDifference> evaporatingUnderReturn(Judgement judgement, Readings readings) {
        return judgement
                .evaporatingSaturation()
                .flatMap(evaporating ->
                        readings.temperature(Quantity.RETURN_DRY_BULB).map(returned -> returned.minus(evaporating)));
    }
}
