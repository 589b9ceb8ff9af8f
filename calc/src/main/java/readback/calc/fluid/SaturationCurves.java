package readback.calc.fluid;

import readback.calc.quantity.AbsolutePressure;

/**
 * The fast path of one side of one refrigerant: temperature over ln(pressure) and ln(pressure) over 1/temperature, in
 * kelvin and pascals. Fitted to the equation of state; immutable.
 */
final class SaturationCurves {

    /**
     * The lowest saturation temperature of every refrigerant here, K. Reaches below the -40 °F where charts begin,
     * since R-410A boils colder than that already at 0 psig.
     */
    static final double LOWEST_TEMPERATURE = 200;

    /**
     * The highest saturation temperature, as a share of the critical one: closer, bubble and dew lines bend together.
     */
    static final double HIGHEST_SHARE = 0.985;

    /** Pieces of equal length and their degree; decision 0007. */
    private static final int PIECES = 8;

    private static final int DEGREE = 10;

    private final SaturationCurve temperature;
    private final SaturationCurve lnPressure;
    private final AbsolutePressure lowestPressure;
    private final AbsolutePressure highestPressure;

    SaturationCurves(SaturationCurve temperature, SaturationCurve lnPressure) {
        this.temperature = temperature;
        this.lnPressure = lnPressure;
        this.lowestPressure = AbsolutePressure.pascals(Math.exp(temperature.low()));
        this.highestPressure = AbsolutePressure.pascals(Math.exp(temperature.high()));
    }

    /** Fits both curves to the equation of state. */
    static SaturationCurves fit(SaturationModel model, Side side, double criticalTemperature) {
        double high = HIGHEST_SHARE * criticalTemperature;
        double lowLn = Math.log(model.pressure(side, LOWEST_TEMPERATURE));
        double highLn = Math.log(model.pressure(side, high));
        return new SaturationCurves(
                SaturationCurve.fit(ln -> model.temperature(side, Math.exp(ln)), lowLn, highLn, PIECES, DEGREE),
                SaturationCurve.fit(
                        inverse -> Math.log(model.pressure(side, 1 / inverse)),
                        1 / high,
                        1 / LOWEST_TEMPERATURE,
                        PIECES,
                        DEGREE));
    }

    SaturationCurve temperature() {
        return temperature;
    }

    SaturationCurve lnPressure() {
        return lnPressure;
    }

    AbsolutePressure lowestPressure() {
        return lowestPressure;
    }

    AbsolutePressure highestPressure() {
        return highestPressure;
    }

    double temperature(double pascals) {
        return temperature.at(Math.log(pascals));
    }

    double pressure(double kelvin) {
        return Math.exp(lnPressure.at(1 / kelvin));
    }
}
