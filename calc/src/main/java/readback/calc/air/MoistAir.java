package readback.calc.air;

import readback.calc.numeric.Roots;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/**
 * Air with water vapour in it, at one dry bulb, humidity and pressure. Immutable.
 *
 * <p>The ideal-gas relations of ASHRAE Handbook of Fundamentals 2017, chapter 1: equations 20 (humidity ratio), 26
 * (volume), 30 (enthalpy), 33 and 35 (wet bulb over water and over ice). Against the real-gas formulation of ASHRAE
 * RP-1485 the wet bulb is within 0.05 K between 40 and 115 °F.
 *
 * <p>Below 0 °C wet bulb, dew point and relative humidity refer to ice.
 */
public final class MoistAir {

    /** Molar mass of water over that of dry air. */
    private static final double MASS_RATIO = 0.621945;

    /** Gas constant of dry air, J/(kg K). */
    private static final double DRY_AIR = 287.042;

    private static final double ICE_POINT = 273.15;

    /** K: any weather or duct. */
    private static final double COLDEST = 223.15;

    private static final double HOTTEST = 363.15;

    /** How far above saturation a state may lie from rounding of what was measured. */
    private static final double ROUNDING = 1e-9;

    private final double dryBulb;
    private final double humidityRatio;
    private final double pressure;
    private final double wetBulb;

    private MoistAir(double dryBulb, double humidityRatio, double pressure, double wetBulb) {
        this.dryBulb = dryBulb;
        this.humidityRatio = humidityRatio;
        this.pressure = pressure;
        this.wetBulb = wetBulb;
    }

    /**
     * Air of a measured dry and wet bulb.
     *
     * @param dryBulb -50 to 90 °C
     * @param wetBulb at most the dry bulb, and not so low that the air would hold less than no water
     * @param air the local air pressure
     * @throws OutOfRangeException if these cannot be together
     */
    public static MoistAir fromWetBulb(Temperature dryBulb, Temperature wetBulb, AbsolutePressure air) {
        double dry = checkedDryBulb(dryBulb, air);
        double wet = wetBulb.kelvin();
        double ratio = humidityRatio(dry, wet, air.pascals());
        if (!(wet <= dry && ratio >= 0)) {
            throw new OutOfRangeException(
                    "wet bulb at a dry bulb of " + dry + " K",
                    wet,
                    "K",
                    wetBulb(dry, 0, air.pascals()) + " K, in air without any water, to the dry bulb, " + dry + " K");
        }
        return new MoistAir(dry, ratio, air.pascals(), wet);
    }

    /**
     * Air of a measured dry bulb and relative humidity.
     *
     * @param dryBulb -50 to 90 °C
     * @param relativeHumidity 0 to 1
     * @param air the local air pressure
     * @throws OutOfRangeException if these cannot be together
     */
    public static MoistAir fromRelativeHumidity(Temperature dryBulb, double relativeHumidity, AbsolutePressure air) {
        double dry = checkedDryBulb(dryBulb, air);
        if (!(relativeHumidity >= 0 && relativeHumidity <= 1)) {
            throw new OutOfRangeException("relative humidity", relativeHumidity, "", "0 to 1");
        }
        double vapour = relativeHumidity * WaterVapour.saturationPressure(dry);
        return of(dry, MASS_RATIO * vapour / (air.pascals() - vapour), air.pascals());
    }

    /**
     * Air of a measured dry bulb and dew point.
     *
     * @param dryBulb -50 to 90 °C
     * @param dewPoint -100 °C to the dry bulb; below 0 °C the frost point
     * @param air the local air pressure
     * @throws OutOfRangeException if these cannot be together
     */
    public static MoistAir fromDewPoint(Temperature dryBulb, Temperature dewPoint, AbsolutePressure air) {
        double dry = checkedDryBulb(dryBulb, air);
        double dew = dewPoint.kelvin();
        if (!(dew >= WaterVapour.LOWEST && dew <= dry)) {
            throw new OutOfRangeException(
                    "dew point at a dry bulb of " + dry + " K",
                    dew,
                    "K",
                    WaterVapour.LOWEST + " K to the dry bulb, " + dry + " K");
        }
        return of(dry, saturationRatio(dew, air.pascals()), air.pascals());
    }

    /**
     * Air of a dry bulb and humidity ratio, as after mixing or a coil.
     *
     * @param dryBulb -50 to 90 °C
     * @param humidityRatio kg of water a kg of dry air, from 0 to saturation
     * @param air the local air pressure
     * @throws OutOfRangeException if these cannot be together
     */
    public static MoistAir fromHumidityRatio(Temperature dryBulb, double humidityRatio, AbsolutePressure air) {
        double dry = checkedDryBulb(dryBulb, air);
        double most = saturationRatio(dry, air.pascals());
        if (!(humidityRatio >= 0 && humidityRatio <= most * (1 + ROUNDING))) {
            throw new OutOfRangeException(
                    "humidity ratio at a dry bulb of " + dry + " K", humidityRatio, "kg/kg", "0 to " + most + " kg/kg");
        }
        return of(dry, Math.min(humidityRatio, most), air.pascals());
    }

    private static MoistAir of(double dryBulb, double humidityRatio, double pressure) {
        return new MoistAir(dryBulb, humidityRatio, pressure, wetBulb(dryBulb, humidityRatio, pressure));
    }

    private static double checkedDryBulb(Temperature dryBulb, AbsolutePressure air) {
        double kelvin = dryBulb.kelvin();
        if (!(kelvin >= COLDEST && kelvin <= HOTTEST)) {
            throw new OutOfRangeException("dry bulb", kelvin, "K", COLDEST + " to " + HOTTEST + " K");
        }
        double vapour = WaterVapour.saturationPressure(kelvin);
        if (!(air.pascals() > vapour)) {
            throw new OutOfRangeException(
                    "air pressure at a dry bulb of " + kelvin + " K",
                    air.pascals(),
                    "Pa",
                    "above " + vapour + " Pa, at which water boils");
        }
        return kelvin;
    }

    public Temperature dryBulb() {
        return Temperature.kelvin(dryBulb);
    }

    /** The thermodynamic wet bulb, which a well-moistened, well-ventilated thermometer shows closely. */
    public Temperature wetBulb() {
        return Temperature.kelvin(wetBulb);
    }

    /**
     * Where water, or below 0 °C frost, begins to settle.
     *
     * @throws OutOfRangeException if the air is so dry that it has none above -100 °C
     */
    public Temperature dewPoint() {
        double vapour = vapourPressure();
        double least = WaterVapour.saturationPressure(WaterVapour.LOWEST);
        if (vapour < least * (1 - ROUNDING)) {
            throw new OutOfRangeException("vapour pressure for a dew point", vapour, "Pa", "at least " + least + " Pa");
        }
        return Temperature.kelvin(WaterVapour.saturationTemperature(vapour));
    }

    /** The share of the vapour pressure that saturation would have at the dry bulb, 0 to 1. */
    public double relativeHumidity() {
        return vapourPressure() / WaterVapour.saturationPressure(dryBulb);
    }

    /** kg of water a kg of dry air. */
    public double humidityRatio() {
        return humidityRatio;
    }

    /** J a kg of dry air; 0 for dry air at 0 °C and water at 0 °C. */
    public double enthalpy() {
        double celsius = dryBulb - ICE_POINT;
        return 1_006 * celsius + humidityRatio * (2_501_000 + 1_860 * celsius);
    }

    /** m³ a kg of dry air. */
    public double specificVolume() {
        return DRY_AIR * dryBulb * (1 + humidityRatio / MASS_RATIO) / pressure;
    }

    /** kg of air and water a m³. */
    public double density() {
        return (1 + humidityRatio) / specificVolume();
    }

    /** The local air pressure. */
    public AbsolutePressure pressure() {
        return AbsolutePressure.pascals(pressure);
    }

    private double vapourPressure() {
        return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
    }

    private static double saturationRatio(double kelvin, double pressure) {
        double vapour = WaterVapour.saturationPressure(kelvin);
        return MASS_RATIO * vapour / (pressure - vapour);
    }

    /** Equations 33 and 35: kg/kg, negative where the wet bulb is too low for any air. */
    private static double humidityRatio(double dry, double wet, double pressure) {
        return wet < ICE_POINT ? overIce(dry, wet, pressure) : overWater(dry, wet, pressure);
    }

    private static double overWater(double dry, double wet, double pressure) {
        double t = dry - ICE_POINT;
        double star = wet - ICE_POINT;
        double saturated = saturationRatio(wet, pressure);
        return ((2_501 - 2.326 * star) * saturated - 1.006 * (dry - wet)) / (2_501 + 1.86 * t - 4.186 * star);
    }

    private static double overIce(double dry, double wet, double pressure) {
        double t = dry - ICE_POINT;
        double star = wet - ICE_POINT;
        double saturated = saturationRatio(wet, pressure);
        return ((2_830 - 0.24 * star) * saturated - 1.006 * (dry - wet)) / (2_830 + 1.86 * t - 2.1 * star);
    }

    /**
     * The wet bulb in K. Just around 0 °C the equations over ice and over water overlap by a few tenths of a kelvin;
     * water is preferred there, since a wick freezes late.
     */
    private static double wetBulb(double dry, double humidityRatio, double pressure) {
        if (humidityRatio >= saturationRatio(dry, pressure) * (1 - 1e-12)) {
            return dry;
        }
        if (dry > ICE_POINT && humidityRatio >= overWater(dry, ICE_POINT, pressure)) {
            return Roots.find(wet -> overWater(dry, wet, pressure) - humidityRatio, ICE_POINT, dry, 1e-13);
        }
        double high = Math.min(dry, ICE_POINT);
        return Roots.find(wet -> overIce(dry, wet, pressure) - humidityRatio, COLDEST - 40, high, 1e-13);
    }
}
