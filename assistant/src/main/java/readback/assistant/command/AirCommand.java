package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.calc.air.MoistAir;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/** The state of moist air from its dry bulb and one more property. */
@Command(
        name = "air",
        mixinStandardHelpOptions = true,
        description = "Prints the state of moist air at the local altitude, as one JSON line: give --dry and one more.")
public final class AirCommand implements Callable<Integer> {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double CUBIC_FEET_PER_POUND = 16.018463;

    private final Console console;

    @Option(names = "--dry", required = true, paramLabel = "DEGREES", description = "Dry bulb temperature.")
    private String dry = "";

    @Option(names = "--wet", paramLabel = "DEGREES", description = "Wet bulb temperature.")
    private @Nullable String wet;

    @Option(names = "--dew", paramLabel = "DEGREES", description = "Dew point.")
    private @Nullable String dew;

    @Option(names = "--humidity", paramLabel = "PERCENT", description = "Relative humidity.")
    private @Nullable String humidity;

    @Mixin
    private Places places = new Places();

    public AirCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        try {
            console.out().println(line(air(places.air())));
            return 0;
        } catch (OutOfRangeException e) {
            throw new CommandFailure("There is no air of " + stated() + ": wet bulb and dew point lie at or below the"
                    + " dry bulb, the wet bulb not below that of dry air, and humidity between 0 and 100 percent. Give"
                    + " temperatures of air in " + places.temperature().symbol() + ".");
        }
    }

    /** What was asked for, in the units in which it was given. */
    private String stated() {
        String degrees = " " + places.temperature().symbol();
        String dryBulb = "dry bulb " + dry + degrees;
        if (wet != null) {
            return dryBulb + " and wet bulb " + wet + degrees;
        }
        return dew != null
                ? dryBulb + " and dew point " + dew + degrees
                : dryBulb + " and humidity " + humidity + " percent";
    }

    private MoistAir air(AbsolutePressure pressure) {
        Temperature dryBulb = temperature("--dry", dry);
        if (wet != null && dew == null && humidity == null) {
            return MoistAir.fromWetBulb(dryBulb, temperature("--wet", wet), pressure);
        }
        if (dew != null && wet == null && humidity == null) {
            return MoistAir.fromDewPoint(dryBulb, temperature("--dew", dew), pressure);
        }
        if (humidity != null && wet == null && dew == null) {
            double percent = Numbers.decimal("--humidity", humidity).doubleValue();
            return MoistAir.fromRelativeHumidity(dryBulb, percent / 100, pressure);
        }
        throw new CommandFailure("air needs --dry and exactly one of --wet, --dew and --humidity.");
    }

    private Temperature temperature(String option, String text) {
        return Temperature.kelvin(
                places.temperature().toBase(Numbers.decimal(option, text).doubleValue()));
    }

    private String line(MoistAir air) {
        ObjectNode line = JSON.createObjectNode();
        boolean celsius = places.temperature() == Unit.CELSIUS;
        String degrees = celsius ? "C" : "F";
        line.put("dryBulb" + degrees, degrees(air.dryBulb()));
        line.put("wetBulb" + degrees, degrees(air.wetBulb()));
        line.put("dewPoint" + degrees, degrees(air.dewPoint()));
        line.put("relativeHumidityPercent", rounded(air.relativeHumidity() * 100, 1));
        line.put("humidityRatio", rounded(air.humidityRatio(), 5));
        if (celsius) {
            line.put("enthalpyKilojoulesPerKilogram", rounded(air.enthalpy() / 1000, 2));
            line.put("specificVolumeCubicMetresPerKilogram", rounded(air.specificVolume(), 4));
        } else {
            line.put("enthalpyBtuPerPound", rounded(enthalpyBtu(air), 2));
            line.put("specificVolumeCubicFeetPerPound", rounded(air.specificVolume() * CUBIC_FEET_PER_POUND, 3));
        }
        line.put("altitudeFt", new BigDecimal(places.altitudeFeet()));
        return line.toString();
    }

    /**
     * In the I-P convention enthalpy counts from air at 0 °F: ASHRAE Handbook of Fundamentals, chapter 1 (from memory).
     */
    private static double enthalpyBtu(MoistAir air) {
        double fahrenheit = air.dryBulb().fahrenheit();
        return 0.240 * fahrenheit + air.humidityRatio() * (1061 + 0.444 * fahrenheit);
    }

    private BigDecimal degrees(Temperature temperature) {
        return rounded(places.temperature().fromBase(temperature.kelvin()), 2);
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
