package readback.assistant.drill;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.random.RandomGenerator;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** Draws the numbers of a question as instruments would show them, in the units that are set. Owned by one thread. */
final class Draw {

    private final RandomGenerator chance;
    private final UnitSetting units;

    Draw(RandomGenerator chance, UnitSetting units) {
        this.chance = chance;
        this.units = units;
    }

    UnitSetting units() {
        return units;
    }

    /** A whole number between two, both among them. */
    int whole(int least, int most) {
        return chance.nextInt(least, most + 1);
    }

    boolean heads() {
        return chance.nextBoolean();
    }

    <T> T any(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }

    static Refrigerant refrigerant(String designation) {
        return Catalogue.standard().find(designation).known().orElseThrow();
    }

    /** A temperature between two of °F, as a probe shows it. */
    Reading temperature(Quantity quantity, double least, double most) {
        return shown(
                quantity, Temperature.fahrenheit(chance.nextDouble(least, most)).kelvin());
    }

    /** A difference between two of °F, as it would be worked out. */
    Reading difference(Quantity quantity, double least, double most) {
        return shown(
                quantity,
                TemperatureDifference.fahrenheit(chance.nextDouble(least, most)).kelvins());
    }

    /** A value of a quantity as it is read off: whole psi and degrees, tenths of bar. */
    Reading shown(Quantity quantity, double base) {
        Unit unit = units.unitOf(quantity);
        return new Reading(
                quantity,
                BigDecimal.valueOf(unit.fromBase(base)).setScale(unit == Unit.BAR_GAUGE ? 1 : 0, RoundingMode.HALF_UP),
                unit);
    }

    Reading shown(Quantity quantity, GaugePressure pressure) {
        return shown(quantity, pressure.pascals());
    }

    /** What a gauge at sea level shows of a refrigerant that boils or condenses at a temperature. */
    Reading gauge(Quantity gauge, Refrigerant refrigerant, Side side, Temperature saturation) {
        return shown(gauge, refrigerant.saturationPressure(side, saturation).gaugeIn(Atmosphere.SEA_LEVEL));
    }

    /** The saturation temperature that belongs to what a gauge at sea level shows. */
    static Temperature saturation(Refrigerant refrigerant, Side side, Reading gauge) {
        return refrigerant.saturationTemperature(side, gauge.gaugePressure().absoluteIn(Atmosphere.SEA_LEVEL));
    }

    /** The answer to a question for a temperature, right within so many °F. */
    Wanted.Amount temperature(Quantity quantity, Temperature right, double fahrenheit) {
        return number(quantity, right.kelvin(), units.temperature(), degrees(fahrenheit));
    }

    /** The answer to a question for a difference, right within so many °F. */
    Wanted.Amount difference(Quantity quantity, TemperatureDifference right, double fahrenheit) {
        return number(quantity, right.kelvins(), units.temperatureDifference(), degrees(fahrenheit));
    }

    /** The answer to a question for a pressure, right within so many psi. */
    Wanted.Amount pressure(Quantity quantity, GaugePressure right, double psi) {
        double tolerance = GaugePressure.psig(psi).pascals()
                / (units.pressure().toBase(1) - units.pressure().toBase(0));
        return number(quantity, right.pascals(), units.pressure(), tolerance);
    }

    /** The answer to a question for a mass in ounces. */
    static Wanted.Amount ounces(Quantity quantity, double right, double tolerance) {
        BigDecimal value = BigDecimal.valueOf(right).setScale(1, RoundingMode.HALF_UP);
        return new Wanted.Amount(new Reading(quantity, value, Unit.OUNCE), tolerance);
    }

    private double degrees(double fahrenheit) {
        return units.temperatureDifference()
                .fromBase(TemperatureDifference.fahrenheit(fahrenheit).kelvins());
    }

    private static Wanted.Amount number(Quantity quantity, double base, Unit unit, double tolerance) {
        BigDecimal value = BigDecimal.valueOf(unit.fromBase(base)).setScale(1, RoundingMode.HALF_UP);
        return new Wanted.Amount(new Reading(quantity, value, unit), tolerance);
    }
}
