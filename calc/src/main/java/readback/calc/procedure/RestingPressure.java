package readback.calc.procedure;

import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * A system at rest, all of it at one temperature: liquid and vapour of the pure refrigerant stand at its saturation
 * pressure; air or nitrogen adds its own (Dalton). Only valid while liquid is left and the temperature has evened out.
 */
public final class RestingPressure {

    private RestingPressure() {}

    /** What the comparison means. */
    public enum Outcome {
        /** Nothing but the refrigerant, as far as gauge and probe can tell. */
        SATURATION,
        /** Air or nitrogen is in the circuit. */
        NON_CONDENSABLES,
        /** No liquid is left, the temperature has not evened out, or it is another refrigerant. */
        BELOW_SATURATION
    }

    /**
     * What came of it.
     *
     * @param saturation bubble-point pressure at the temperature
     * @param excess measured less saturation; negative when below the dew-point pressure, then against that
     * @param allowance the 95 % uncertainty of the excess
     */
    public record Result(Outcome outcome, GaugePressure saturation, GaugePressure excess, GaugePressure allowance) {}

    /**
     * Compares the resting pressure with saturation.
     *
     * @param gaugeLimit accuracy of the gauge, plus or minus
     * @param probeLimit accuracy of the probe, plus or minus
     * @throws readback.calc.quantity.OutOfRangeException if the refrigerant has no saturation pressure at the
     *     temperature
     */
    public static Result judge(
            Refrigerant refrigerant,
            GaugePressure resting,
            Temperature everywhere,
            AbsolutePressure atmosphere,
            GaugePressure gaugeLimit,
            TemperatureDifference probeLimit) {
        AbsolutePressure bubble = refrigerant.bubblePressure(everywhere);
        AbsolutePressure dew = refrigerant.dewPressure(everywhere);
        TemperatureDifference step = TemperatureDifference.kelvins(-0.1);
        double pascalsPerKelvin = (bubble.pascals()
                        - refrigerant.bubblePressure(everywhere.plus(step)).pascals())
                / 0.1;
        // rectangular limits: JCGM 100:2008, 4.3.7; coverage factor 2
        double allowance = 2 / Math.sqrt(3) * Math.hypot(gaugeLimit.pascals(), pascalsPerKelvin * probeLimit.kelvins());
        double measured = resting.absoluteIn(atmosphere).pascals();
        double above = measured - bubble.pascals();
        double below = measured - dew.pascals();
        Outcome outcome = above > allowance
                ? Outcome.NON_CONDENSABLES
                : below < -allowance ? Outcome.BELOW_SATURATION : Outcome.SATURATION;
        return new Result(
                outcome,
                bubble.gaugeIn(atmosphere),
                GaugePressure.pascals(outcome == Outcome.BELOW_SATURATION ? below : above),
                GaugePressure.pascals(allowance));
    }
}
