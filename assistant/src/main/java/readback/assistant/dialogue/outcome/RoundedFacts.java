package readback.assistant.dialogue.outcome;

import java.math.BigDecimal;
import java.math.RoundingMode;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;

/** How finely amounts are told: no finer than a scale or a gauge shows them. */
public final class RoundedFacts {

    private static final int OUNCES_IN_A_POUND = 16;

    private RoundedFacts() {}

    /** A mass to half an ounce, or to ten grams where the temperature scale is metric. */
    public static Fact mass(Mass mass, UnitSetting units) {
        double step = massStep(units);
        return massFact(Math.round(massValue(mass, units) / step) * step, units);
    }

    /** The amount to move, never rounded up, so that it stays within its bound; half an ounce or ten grams at least. */
    static Fact step(Mass next, UnitSetting units) {
        double step = massStep(units);
        double steps =
                Math.max(1, Math.floor(massValue(Mass.kilograms(Math.abs(next.kilograms())), units) / step + 1e-9));
        return massFact(steps * step, units);
    }

    /** How much, whichever way. */
    public static Fact size(Mass mass, UnitSetting units) {
        return mass(Mass.kilograms(Math.abs(mass.kilograms())), units);
    }

    /** A loss, an excess or a drop: a difference is neither gauge nor absolute. */
    public static Fact pressureDifference(GaugePressure difference, UnitSetting units) {
        boolean psi = units.pressure() == Unit.PSIG;
        Unit unit = psi ? Unit.PSIG : Unit.BAR_GAUGE;
        BigDecimal value =
                BigDecimal.valueOf(unit.fromBase(difference.pascals())).setScale(psi ? 0 : 2, RoundingMode.HALF_UP);
        return new Fact.PressureDifference(value, unit);
    }

    /** A limit of error that must not be rounded up. */
    static Fact.Amount downTo(TemperatureDifference limit, UnitSetting units) {
        Unit unit = units.temperatureDifference();
        return new Fact.Amount(down(unit.fromBase(limit.kelvins()), 1), unit);
    }

    /** The same of a pressure. */
    static Fact.Amount downTo(GaugePressure limit, UnitSetting units) {
        Unit unit = units.pressure();
        return new Fact.Amount(down(unit.fromBase(limit.pascals()), unit == Unit.PSIG ? 1 : 2), unit);
    }

    private static BigDecimal down(double value, int decimals) {
        BigDecimal cut =
                BigDecimal.valueOf(value).setScale(decimals, RoundingMode.DOWN).stripTrailingZeros();
        return cut.scale() < 0 ? cut.setScale(0, RoundingMode.UNNECESSARY) : cut;
    }

    private static double massStep(UnitSetting units) {
        return metric(units) ? 10 : 0.5;
    }

    private static double massValue(Mass mass, UnitSetting units) {
        return metric(units) ? mass.kilograms() * 1000 : mass.ounces();
    }

    /** Grams, or ounces; from a pound on both, since charging scales show them so. */
    private static Fact massFact(double value, UnitSetting units) {
        BigDecimal rounded = Fact.rounded(value);
        if (metric(units)) {
            return new Fact.Amount(rounded, Unit.GRAM);
        }
        return value < OUNCES_IN_A_POUND
                ? new Fact.Amount(rounded, Unit.OUNCE)
                : new Fact.Amount(rounded.divide(BigDecimal.valueOf(OUNCES_IN_A_POUND)), Unit.POUND_AND_OUNCES);
    }

    private static boolean metric(UnitSetting units) {
        return units.temperature() == Unit.CELSIUS;
    }
}
