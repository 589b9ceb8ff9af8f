package readback.calc.plant;

import readback.calc.air.MoistAir;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/**
 * The air around an air-conditioner.
 *
 * @param outdoor entering the condenser, 40 to 130 °F
 * @param returnAir entering the evaporator, 55 to 105 °F dry bulb, at the local air pressure
 */
public record Weather(Temperature outdoor, MoistAir returnAir) {

    private static final Temperature COLDEST_OUTDOOR = Temperature.fahrenheit(40);
    private static final Temperature HOTTEST_OUTDOOR = Temperature.fahrenheit(130);
    private static final Temperature COLDEST_RETURN = Temperature.fahrenheit(55);
    private static final Temperature HOTTEST_RETURN = Temperature.fahrenheit(105);

    /** Outdoor 95 °F, return 80 °F and 67 °F wet bulb at sea level: cooling test A of AHRI Standard 210/240. */
    public static final Weather RATING = fahrenheit(95, 80, 67);

    /** @throws OutOfRangeException outside the ranges above, where the equations have never been looked at */
    public Weather {
        require("outdoor temperature", outdoor, COLDEST_OUTDOOR, HOTTEST_OUTDOOR);
        require("return dry bulb", returnAir.dryBulb(), COLDEST_RETURN, HOTTEST_RETURN);
    }

    /**
     * Weather at sea level, in °F.
     *
     * @throws OutOfRangeException also if the wet bulb cannot belong to the dry bulb
     */
    public static Weather fahrenheit(double outdoor, double returnDryBulb, double returnWetBulb) {
        return of(
                Temperature.fahrenheit(outdoor),
                Temperature.fahrenheit(returnDryBulb),
                Temperature.fahrenheit(returnWetBulb),
                Atmosphere.SEA_LEVEL);
    }

    /** @throws OutOfRangeException also if the wet bulb cannot belong to the dry bulb */
    public static Weather of(
            Temperature outdoor, Temperature returnDryBulb, Temperature returnWetBulb, AbsolutePressure atmosphere) {
        return new Weather(outdoor, MoistAir.fromWetBulb(returnDryBulb, returnWetBulb, atmosphere));
    }

    /** The same temperatures at another height. */
    public Weather in(AbsolutePressure atmosphere) {
        return of(outdoor, returnAir.dryBulb(), returnAir.wetBulb(), atmosphere);
    }

    /** The local air pressure. */
    public AbsolutePressure atmosphere() {
        return returnAir.pressure();
    }

    private static void require(String what, Temperature value, Temperature least, Temperature most) {
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw new OutOfRangeException(what, value.kelvin(), "K", least.kelvin() + " to " + most.kelvin() + " K");
        }
    }
}
