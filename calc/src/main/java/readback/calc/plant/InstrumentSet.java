package readback.calc.plant;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.random.RandomGenerator;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

/**
 * Gauges and probes at a unit: what they show of the true values, with their resolution, their noise and what is wrong
 * with them. Immutable.
 */
public final class InstrumentSet {

    private final Display display;
    /** Constant errors in the base units of the quantities. */
    private final Map<Quantity, Double> errors;

    private InstrumentSet(Display display, Map<Quantity, Double> errors) {
        this.display = display;
        this.errors = errors;
    }

    /** How finely the instruments show, and how much a reading scatters (one standard deviation). */
    private enum Display {
        EXACT(3, 4, 0, 0),
        /** 0.1 psi and 0.1 °F; scatter common practice, no source. */
        DIGITAL(1, 1, 0.5, 0.3),
        /** Read to the next psi; temperatures by an electronic probe all the same. */
        DIAL(0, 1, 1, 0.3);

        private final int pressureDecimals;
        private final int temperatureDecimals;
        private final double pressureNoise;
        private final double temperatureNoise;

        Display(int pressureDecimals, int temperatureDecimals, double psi, double fahrenheitDegrees) {
            this.pressureDecimals = pressureDecimals;
            this.temperatureDecimals = temperatureDecimals;
            this.pressureNoise = GaugePressure.psig(psi).pascals();
            this.temperatureNoise =
                    TemperatureDifference.fahrenheit(fahrenheitDegrees).kelvins();
        }
    }

    /** Instruments that show true values, to a thousandth. */
    public static InstrumentSet exact() {
        return new InstrumentSet(Display.EXACT, Map.of());
    }

    /** Digital gauges and probes in order. */
    public static InstrumentSet digital() {
        return new InstrumentSet(Display.DIGITAL, Map.of());
    }

    /** Dial gauges in order, and electronic probes. */
    public static InstrumentSet dial() {
        return new InstrumentSet(Display.DIAL, Map.of());
    }

    /**
     * These instruments with a probe that shows too much, or too little: badly strapped on, or in the sun.
     *
     * @throws IllegalArgumentException if the quantity is not a temperature
     */
    public InstrumentSet withBias(Quantity probe, TemperatureDifference bias) {
        if (probe.dimension() != Dimension.TEMPERATURE) {
            throw new IllegalArgumentException(probe + " is a " + probe.dimension() + ", not a temperature");
        }
        Map<Quantity, Double> more = new EnumMap<>(Quantity.class);
        more.putAll(errors);
        more.put(probe, bias.kelvins());
        return new InstrumentSet(display, more);
    }

    /**
     * What they show, in the usual units.
     *
     * @param noise drawn from in a fixed order, so that the same generator gives the same readings
     */
    public Readings read(Measurands at, Weather weather, RandomGenerator noise) {
        Readings readings = Readings.none();
        readings = readings.with(
                gauge(Quantity.SUCTION_PRESSURE, at.suctionPressure().gaugeIn(weather.atmosphere()), noise));
        readings = readings.with(
                gauge(Quantity.LIQUID_PRESSURE, at.liquidPressure().gaugeIn(weather.atmosphere()), noise));
        readings = readings.with(probe(Quantity.SUCTION_LINE_TEMPERATURE, at.suctionLine(), noise));
        readings = readings.with(probe(Quantity.LIQUID_LINE_TEMPERATURE, at.liquidLine(), noise));
        readings = readings.with(probe(Quantity.DISCHARGE_LINE_TEMPERATURE, at.dischargeLine(), noise));
        readings = readings.with(probe(Quantity.OUTDOOR_TEMPERATURE, weather.outdoor(), noise));
        Reading dryBulb = probe(Quantity.RETURN_DRY_BULB, weather.returnAir().dryBulb(), noise);
        Reading wetBulb = probe(Quantity.RETURN_WET_BULB, weather.returnAir().wetBulb(), noise);
        readings = readings.with(dryBulb);
        readings = readings.with(
                wetBulb.base() > dryBulb.base()
                        ? new Reading(Quantity.RETURN_WET_BULB, dryBulb.value(), dryBulb.unit())
                        : wetBulb);
        readings = readings.with(probe(Quantity.SUPPLY_DRY_BULB, at.supplyAir(), noise));
        return readings.with(new Reading(Quantity.COMPRESSOR_CURRENT, rounded(at.amperes(), 1), Unit.AMPERE));
    }

    private Reading gauge(Quantity quantity, GaugePressure actual, RandomGenerator noise) {
        double pascals = actual.pascals() + error(quantity) + display.pressureNoise * noise.nextGaussian();
        return new Reading(quantity, rounded(Unit.PSIG.fromBase(pascals), display.pressureDecimals), Unit.PSIG);
    }

    private Reading probe(Quantity quantity, Temperature actual, RandomGenerator noise) {
        double kelvin = actual.kelvin() + error(quantity) + display.temperatureNoise * noise.nextGaussian();
        return new Reading(
                quantity, rounded(Unit.FAHRENHEIT.fromBase(kelvin), display.temperatureDecimals), Unit.FAHRENHEIT);
    }

    private double error(Quantity quantity) {
        return errors.getOrDefault(quantity, 0.0);
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
