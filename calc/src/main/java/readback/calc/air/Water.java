package readback.calc.air;

import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/** Pure water, as it stands in an evacuated circuit. */
public final class Water {

    private static final double LOWEST = WaterVapour.saturationPressure(WaterVapour.LOWEST);
    private static final double HIGHEST = WaterVapour.saturationPressure(WaterVapour.HIGHEST);

    private Water() {}

    /**
     * The temperature at which water boils, or ice sublimes, at a pressure: Hyland and Wexler 1983, as in ASHRAE
     * Fundamentals. A vacuum dries only what is warmer.
     *
     * @throws OutOfRangeException outside the pressures that the equations cover, about 0.0014 Pa to 1.55 MPa
     */
    public static Temperature boilsAt(AbsolutePressure pressure) {
        double pascals = pressure.pascals();
        if (!(pascals >= LOWEST && pascals <= HIGHEST)) {
            throw new OutOfRangeException(
                    "saturation pressure of water", pascals, "Pa", LOWEST + " to " + HIGHEST + " Pa");
        }
        return Temperature.kelvin(WaterVapour.saturationTemperature(pascals));
    }
}
