package readback.assistant.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import readback.assistant.dialogue.outcome.Figure;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** Numbers and times as a report shows them, in the units of the session. */
final class Figures {

    private static final double SECONDS_IN_MINUTE = 60;
    private static final double JOULES_IN_KILOJOULE = 1000;
    private static final double PASCALS_IN_BAR = 1e5;

    /** Joules a kilogram in a Btu(IT) a pound, exactly; NIST SP 811 (2008), appendix B. */
    private static final double BTU_PER_POUND = 2326;

    /** Kilograms a cubic metre in a pound a cubic foot; same source. */
    private static final double POUND_PER_CUBIC_FOOT = 16.01846;

    private final UnitSetting units;

    Figures(UnitSetting units) {
        this.units = units;
    }

    /** The unit of temperature differences. */
    Unit differenceUnit() {
        return units.temperatureDifference();
    }

    private boolean bars() {
        return units.pressure() == Unit.BAR_GAUGE;
    }

    private Unit absolute() {
        return units.pressure() == Unit.PSIG ? Unit.PSIA : Unit.KILOPASCAL_ABSOLUTE;
    }

    /** The symbol of the unit of pressures above a perfect vacuum: that of the session's gauge pressures. */
    String absoluteUnit() {
        return bars() ? "bar(a)" : absolute().symbol();
    }

    private boolean metric() {
        return units.temperature() == Unit.CELSIUS;
    }

    /** The symbol of the unit of specific enthalpy. */
    String enthalpyUnit() {
        return metric() ? "kJ/kg" : "Btu/lb";
    }

    /** A specific enthalpy in that unit. */
    double enthalpy(double joulesPerKilogram) {
        return joulesPerKilogram / (metric() ? JOULES_IN_KILOJOULE : BTU_PER_POUND);
    }

    /** To a tenth, with its unit. */
    String enthalpyShown(double joulesPerKilogram) {
        return tenths(enthalpy(joulesPerKilogram)) + " " + enthalpyUnit();
    }

    /** To a tenth of a kilogram a cubic metre or a hundredth of a pound a cubic foot, with its unit. */
    String densityShown(double kilogramsPerCubicMetre) {
        return metric()
                ? tenths(kilogramsPerCubicMetre) + " kg/m³"
                : rounded(kilogramsPerCubicMetre / POUND_PER_CUBIC_FOOT, 2) + " lb/ft³";
    }

    double value(TemperatureDifference difference) {
        return differenceUnit().fromBase(difference.kelvins());
    }

    double value(AbsolutePressure pressure) {
        return bars() ? pressure.pascals() / PASCALS_IN_BAR : absolute().fromBase(pressure.pascals());
    }

    /** To a tenth, with its unit. */
    String shown(TemperatureDifference difference) {
        return tenths(value(difference)) + " " + differenceUnit().symbol();
    }

    /** To a tenth, with its unit. */
    String shown(Temperature temperature) {
        return tenths(units.temperature().fromBase(temperature.kelvin())) + " "
                + units.temperature().symbol();
    }

    /** A limit: to a tenth, or whole where it is, with its unit. */
    String limit(TemperatureDifference difference) {
        return plain(value(difference)) + " " + differenceUnit().symbol();
    }

    /** The same of a temperature. */
    String limit(Temperature temperature) {
        return plain(units.temperature().fromBase(temperature.kelvin())) + " "
                + units.temperature().symbol();
    }

    private static String plain(double value) {
        String tenths = tenths(value);
        return tenths.endsWith(".0") ? rounded(value, 0) : tenths;
    }

    /** To a tenth, of a bar to a hundredth, with its unit. */
    String shown(AbsolutePressure pressure) {
        return rounded(value(pressure), bars() ? 2 : 1) + " " + absoluteUnit();
    }

    /** What lies between two pressures, to a tenth of a psi, or a hundredth of another unit. */
    String difference(GaugePressure pressure) {
        return Figure.pressureDifference("", pressure.pascals(), units).shown();
    }

    /** Ounces, or grams beside metric temperatures, with pounds or kilograms. */
    String shown(Mass mass) {
        return metric()
                ? rounded(Unit.GRAM.fromBase(mass.kilograms()), 0) + " g"
                : tenths(Unit.OUNCE.fromBase(mass.kilograms())) + " oz ("
                        + rounded(Unit.POUND.fromBase(mass.kilograms()), 2) + " lb)";
    }

    /** Kilograms with pounds, where sessions of every unit come together. */
    static String both(double kilograms) {
        return rounded(kilograms, 3) + " kg (" + rounded(Unit.POUND.fromBase(kilograms), 2) + " lb)";
    }

    static String tenths(double value) {
        return rounded(value, 1);
    }

    static String rounded(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(places).toPlainString() : rounded.toPlainString();
    }

    /** Minutes from one moment to another. */
    static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0 / SECONDS_IN_MINUTE;
    }

    /** Minutes and seconds, as in "07:31". */
    static String clock(Instant from, Instant to) {
        long seconds = Math.max(0, Duration.between(from, to).toSeconds());
        return String.format(Locale.ROOT, "%02d:%02d", seconds / 60, seconds % 60);
    }
}
