package readback.calc.procedure;

import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What it costs to lift liquid to an indoor coil above the outdoor unit: the pressure of the column, and the subcooling
 * that this takes. Friction comes on top of it and is not counted here.
 *
 * @param drop from the foot of the column to its head; a difference of pressures
 * @param subcooling what the liquid loses of it, since it boils at a lower temperature up there
 */
public record LiquidLift(GaugePressure drop, TemperatureDifference subcooling) {

    /** A condensing temperature of mild weather; on a hotter day the same lift costs less subcooling. */
    public static final Temperature USUAL_CONDENSING = Temperature.fahrenheit(100);

    /** m/s², ISO 80000-3. */
    private static final double GRAVITY = 9.80665;

    private static final double HIGHEST_METRES = 100;

    /**
     * Of saturated liquid at {@link #USUAL_CONDENSING}.
     *
     * @param metres 0 to 100
     */
    public static LiquidLift of(Refrigerant refrigerant, double metres) {
        return of(refrigerant, metres, USUAL_CONDENSING);
    }

    /**
     * Density times gravity times height, and how much sooner the liquid boils at the pressure that is left.
     *
     * @param metres 0 to 100
     * @param condensing bubble temperature at the foot of the column
     * @throws OutOfRangeException for another height, or where the refrigerant has no saturation
     */
    static LiquidLift of(Refrigerant refrigerant, double metres, Temperature condensing) {
        if (!(metres >= 0 && metres <= HIGHEST_METRES)) {
            throw new OutOfRangeException("lift", metres, "m", "0 to " + HIGHEST_METRES + " m");
        }
        double drop = refrigerant.saturatedLiquid(condensing).density() * GRAVITY * metres;
        AbsolutePressure head =
                AbsolutePressure.pascals(refrigerant.bubblePressure(condensing).pascals() - drop);
        return new LiquidLift(GaugePressure.pascals(drop), condensing.minus(refrigerant.bubbleTemperature(head)));
    }

    /** Whether liquid of this subcooling at the outdoor unit would boil before it reaches the indoor coil. */
    public boolean flashes(TemperatureDifference atOutdoorUnit) {
        return subcooling.compareTo(atOutdoorUnit) >= 0;
    }
}
