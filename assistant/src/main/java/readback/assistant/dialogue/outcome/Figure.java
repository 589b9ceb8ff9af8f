package readback.assistant.dialogue.outcome;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/**
 * A number that an outcome rests on: in the unit of the session and in that of the SI.
 *
 * @param name what it is, as in "loss", or the slot that holds it, as in "pressure-start"
 * @param value in the unit, with as many decimals as it is good for
 * @param unit as it is written, as in "psi"
 * @param si the value in the SI unit; a gauge pressure above the local air
 * @param siUnit as it is written, as in "Pa"
 */
public record Figure(String name, BigDecimal value, String unit, double si, String siUnit) {

    /** NIST SP 811 (2008), appendix B: a millimetre of mercury, a thousandth of it, and the minute. */
    private static final double MICRON_PER_MINUTE = Unit.MICRON.toBase(1) / 60;

    /** Nine significant digits are more than any instrument has. */
    private static final MathContext DIGITS = new MathContext(9);

    public Figure {
        si = new BigDecimal(si).round(DIGITS).doubleValue();
    }

    /** A value as it was stated. */
    public static Figure of(String name, Reading stated) {
        Reading reading = stated.inOneUnit();
        return new Figure(
                name,
                reading.value(),
                reading.unit().symbol(),
                reading.base(),
                siUnit(reading.quantity().dimension()));
    }

    /** What lies between two pressures. */
    public static Figure pressureDifference(String name, double pascals, UnitSetting units) {
        Unit unit = units.pressure();
        String symbol = unit == Unit.PSIG ? "psi" : unit.symbol().replace("(g)", "");
        return new Figure(name, rounded(unit.fromBase(pascals), unit == Unit.PSIG ? 1 : 2), symbol, pascals, "Pa");
    }

    /** A temperature difference to a tenth. */
    public static Figure difference(String name, TemperatureDifference difference, UnitSetting units) {
        Unit unit = units.temperatureDifference();
        return new Figure(
                name, rounded(unit.fromBase(difference.kelvins()), 1), unit.symbol(), difference.kelvins(), "K");
    }

    static Figure temperature(String name, Temperature temperature, UnitSetting units) {
        Unit unit = units.temperature();
        return new Figure(
                name, rounded(unit.fromBase(temperature.kelvin()), 1), unit.symbol(), temperature.kelvin(), "K");
    }

    /** Ounces, or grams beside degrees Celsius. */
    static Figure mass(String name, long grams, UnitSetting units) {
        boolean metric = units.temperature() == Unit.CELSIUS;
        double kilograms = Unit.GRAM.toBase((double) grams);
        return metric
                ? new Figure(name, BigDecimal.valueOf(grams), Unit.GRAM.symbol(), kilograms, "kg")
                : new Figure(name, rounded(Unit.OUNCE.fromBase(kilograms), 1), Unit.OUNCE.symbol(), kilograms, "kg");
    }

    static Figure microns(String name, long microns) {
        return new Figure(
                name, BigDecimal.valueOf(microns), Unit.MICRON.symbol(), Unit.MICRON.toBase((double) microns), "Pa");
    }

    static Figure micronsPerMinute(String name, long microns) {
        return new Figure(
                name,
                BigDecimal.valueOf(microns),
                Unit.MICRON.symbol() + "/min",
                (double) microns * MICRON_PER_MINUTE,
                "Pa/s");
    }

    /** Whole cubic feet a minute for each ton. */
    public static Figure airflowPerTon(String name, long cubicFeetPerMinute) {
        return new Figure(
                name,
                BigDecimal.valueOf(cubicFeetPerMinute),
                Unit.CUBIC_FOOT_PER_MINUTE.symbol() + "/" + Unit.TON_OF_REFRIGERATION.symbol(),
                Unit.CUBIC_FOOT_PER_MINUTE.toBase((double) cubicFeetPerMinute) / Unit.TON_OF_REFRIGERATION.toBase(1),
                "m3/(s W)");
    }

    static Figure airflow(String name, long cubicFeetPerMinute) {
        return new Figure(
                name,
                BigDecimal.valueOf(cubicFeetPerMinute),
                Unit.CUBIC_FOOT_PER_MINUTE.symbol(),
                Unit.CUBIC_FOOT_PER_MINUTE.toBase((double) cubicFeetPerMinute),
                "m3/s");
    }

    static Figure cooling(String name, long watts, UnitSetting units) {
        Unit unit = units.cooling();
        return new Figure(name, rounded(unit.fromBase((double) watts), 2), unit.symbol(), (double) watts, "W");
    }

    static Figure percent(String name, long percent) {
        return new Figure(name, BigDecimal.valueOf(percent), Unit.PERCENT.symbol(), percent / 100.0, "1");
    }

    static Figure minutes(String name, Duration time) {
        return new Figure(
                name, rounded(time.toSeconds() / 60.0, 1), Unit.MINUTE.symbol(), (double) time.toSeconds(), "s");
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }

    /** Value and unit, as in "0.4 psi". */
    public String shown() {
        return value.toPlainString() + " " + unit;
    }

    /** The value in the SI unit as a plain number. */
    public String siNumber() {
        BigDecimal plain = BigDecimal.valueOf(si).stripTrailingZeros();
        return plain.signum() == 0 ? "0" : plain.toPlainString();
    }

    /** The same with the SI unit, to four digits, for readers. */
    public String siShown() {
        return new BigDecimal(siNumber())
                        .round(new MathContext(4))
                        .stripTrailingZeros()
                        .toPlainString() + " " + siUnit;
    }

    /** Symbol of a dimension's SI unit. */
    public static String siUnit(Dimension dimension) {
        return switch (dimension) {
            case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> "Pa";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "K";
            case MASS -> "kg";
            case LENGTH -> "m";
            case AREA -> "m2";
            case MASS_PER_LENGTH -> "kg/m";
            case DURATION -> "s";
            case AIRFLOW -> "m3/s";
            case CURRENT -> "A";
            case VOLTAGE -> "V";
            case POWER -> "W";
            case RATIO -> "1";
        };
    }
}
