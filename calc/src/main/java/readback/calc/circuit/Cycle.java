package readback.calc.circuit;

import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/** Ratios and heats between the two pressures of a running system. */
public final class Cycle {

    private Cycle() {}

    /**
     * The share by mass of the refrigerant that has evaporated by the time it leaves the metering device: throttled
     * without heat, its enthalpy between those of bubble and dew point at the evaporating pressure. For a blend that is
     * its quality to first order, since the phases' own compositions are not followed. Negative if the liquid arrives
     * colder than it would boil.
     *
     * @param liquidTemperature entering the metering device, subcooled
     * @param liquidPressure at the same place
     * @param evaporatingPressure below the liquid pressure
     * @throws OutOfRangeException if the refrigerant has no such states
     */
    public static double flashGas(
            Refrigerant refrigerant,
            Temperature liquidTemperature,
            AbsolutePressure liquidPressure,
            AbsolutePressure evaporatingPressure) {
        double entering =
                refrigerant.subcooledLiquid(liquidTemperature, liquidPressure).enthalpy();
        double boiling = bubbleEnthalpy(refrigerant, evaporatingPressure);
        return (entering - boiling) / latentHeat(refrigerant, evaporatingPressure);
    }

    /**
     * The heat in J/kg that evaporates the refrigerant from bubble to dew point at a pressure.
     *
     * @throws OutOfRangeException if the refrigerant does not boil at that pressure
     */
    public static double latentHeat(Refrigerant refrigerant, AbsolutePressure pressure) {
        double dew = refrigerant
                .saturatedVapour(refrigerant.dewTemperature(pressure))
                .enthalpy();
        return dew - bubbleEnthalpy(refrigerant, pressure);
    }

    /**
     * How many times the compressor multiplies the pressure; both absolute, or the ratio would depend on the weather.
     *
     * @throws OutOfRangeException if the discharge pressure is below the suction pressure
     */
    public static double compressionRatio(AbsolutePressure suction, AbsolutePressure discharge) {
        if (discharge.pascals() < suction.pascals()) {
            throw new OutOfRangeException(
                    "discharge pressure",
                    discharge.pascals(),
                    "Pa",
                    "at least the suction pressure, " + suction.pascals() + " Pa");
        }
        return discharge.pascals() / suction.pascals();
    }

    private static double bubbleEnthalpy(Refrigerant refrigerant, AbsolutePressure pressure) {
        return refrigerant
                .saturatedLiquid(refrigerant.bubbleTemperature(pressure))
                .enthalpy();
    }
}
