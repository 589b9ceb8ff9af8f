package readback.calc.measurement;

import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/**
 * A saturation temperature and how it answers to pressure.
 *
 * @param kelvinsPerPascal slope of the saturation line
 */
public record Saturation(Temperature temperature, double kelvinsPerPascal) {

    /** Share of the pressure over which the slope is taken; the line bends by far less. */
    private static final double STEP = 1e-3;

    /** Absent where no liquid and vapour coexist at the pressure. */
    public static Optional<Saturation> at(AbsolutePressure pressure, Refrigerant refrigerant, Side side) {
        AbsolutePressure lowest = refrigerant.lowestPressure(side);
        if (pressure.compareTo(lowest) < 0 || pressure.compareTo(refrigerant.highestPressure(side)) > 0) {
            return Optional.empty();
        }
        Temperature temperature = refrigerant.saturationTemperature(side, pressure);
        double below = pressure.pascals() * (1 - STEP);
        AbsolutePressure near = below >= lowest.pascals()
                ? AbsolutePressure.pascals(below)
                : AbsolutePressure.pascals(pressure.pascals() * (1 + STEP));
        double slope =
                temperature.minus(refrigerant.saturationTemperature(side, near)).kelvins()
                        / (pressure.pascals() - near.pascals());
        return Optional.of(new Saturation(temperature, slope));
    }
}
