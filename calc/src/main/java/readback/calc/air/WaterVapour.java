package readback.calc.air;

import readback.calc.numeric.Roots;

/**
 * The pressure of water vapour over ice or liquid water: Hyland and Wexler, ASHRAE Trans. 89(2A), 500 (1983), as
 * equations 5 and 6 of ASHRAE Handbook of Fundamentals 2017, chapter 1. Kelvin and pascals.
 */
final class WaterVapour {

    /** K. Ice below, water above. */
    static final double TRIPLE_POINT = 273.16;

    /** Validity of the equations, K. */
    static final double LOWEST = 173.15;

    static final double HIGHEST = 473.15;

    private WaterVapour() {}

    /** The saturation pressure in Pa at a temperature from {@link #LOWEST} to {@link #HIGHEST}. */
    static double saturationPressure(double kelvin) {
        return Math.exp(kelvin < TRIPLE_POINT ? lnOverIce(kelvin) : lnOverWater(kelvin));
    }

    /** The temperature in K at which a pressure in Pa saturates; the frost point below the triple point. */
    static double saturationTemperature(double pascals) {
        double ln = Math.log(pascals);
        return ln < lnOverIce(TRIPLE_POINT)
                ? Roots.find(kelvin -> lnOverIce(kelvin) - ln, LOWEST - 1, TRIPLE_POINT, 1e-13)
                : Roots.find(kelvin -> lnOverWater(kelvin) - ln, TRIPLE_POINT - 0.01, HIGHEST, 1e-13);
    }

    private static double lnOverIce(double t) {
        return -5.6745359e3 / t
                + 6.3925247
                + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.4840240e-13)))
                + 4.1635019 * Math.log(t);
    }

    private static double lnOverWater(double t) {
        return -5.8002206e3 / t
                + 1.3914993
                + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
                + 6.5459673 * Math.log(t);
    }
}
