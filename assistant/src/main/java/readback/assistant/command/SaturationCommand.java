package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

/** Saturation temperature from gauge pressure. */
@Command(
        name = "saturation",
        mixinStandardHelpOptions = true,
        description = {
            "Prints dew and bubble temperature for a gauge pressure, as one JSON line.",
            "Superheat counts from the dew point, subcooling from the bubble point."
        })
public final class SaturationCommand implements Callable<Integer> {

    private static final ObjectMapper JSON = new ObjectMapper();
    private final Console console;

    @Option(names = "--refrigerant", paramLabel = "NAME", description = "As on the plate, for example R-410A.")
    private @Nullable String refrigerant;

    @Option(names = "--gauge", paramLabel = "NUMBER", description = "Gauge pressure.")
    private @Nullable String gauge;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            description = "psig, bar, kpa, mpa, kg/cm2 above local air, or inhg of vacuum. Default: psig.")
    private String unit = "psig";

    @Option(names = "--altitude-ft", paramLabel = "FEET", description = "Height above sea level. Default: 0.")
    private String altitude = "0";

    @Option(
            names = "--batch",
            description = "Read lines refrigerant,psig,altitudeFt from standard input; answer a JSON line each.")
    private boolean batch;

    public SaturationCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (batch) {
            return answerLines();
        }
        if (refrigerant == null || gauge == null) {
            throw new CommandFailure("saturation needs --refrigerant and --gauge, or --batch.");
        }
        Unit stated = GaugeUnits.named(unit, true);
        BigDecimal pressure = Numbers.decimal("--gauge", gauge);
        console.out().println(line(refrigerant, pressure, stated, Numbers.altitudeFeet(altitude)));
        return 0;
    }

    private int answerLines() {
        try {
            for (String text = console.in().readLine();
                    text != null;
                    text = console.in().readLine()) {
                console.out().println(answer(text));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("standard input could not be read", e);
        }
        return 0;
    }

    /**
     * One line answered, a blank one too, so that answers stand beside their lines; a line that cannot be is answered
     * with its error and the next one is taken.
     */
    private static String answer(String text) {
        String[] fields = text.split(",", -1);
        try {
            if (fields.length < 2 || fields.length > 3) {
                throw new CommandFailure("A line is refrigerant,psig,altitudeFt, not '" + text + "'.");
            }
            String feet = fields.length == 3 ? fields[2] : "0";
            return line(
                    fields[0].strip(),
                    Numbers.decimal("psig", fields[1]),
                    Unit.PSIG,
                    Numbers.altitudeFeet(feet.strip()));
        } catch (CommandFailure e) {
            return JSON.createObjectNode()
                    .put("input", CommandFailure.readable(text))
                    .put("error", e.getMessage())
                    .toString();
        }
    }

    private static String line(String name, BigDecimal stated, Unit unit, BigDecimal feet) {
        String designation = SessionOptions.designation(name);
        Refrigerant fluid = ((Lookup.Found) Catalogue.standard().find(designation)).refrigerant();
        AbsolutePressure air = Atmosphere.atAltitude(Unit.FOOT.toBase(feet.doubleValue()));
        GaugePressure reading = GaugePressure.pascals(unit.toBase(stated.doubleValue()));
        try {
            AbsolutePressure absolute = reading.absoluteIn(air);
            ObjectNode line = JSON.createObjectNode();
            line.put("refrigerant", designation);
            line.put("psig", rounded(reading.psig()));
            line.put("psia", rounded(absolute.psia()));
            line.put("altitudeFt", feet);
            line.put("dewF", rounded(fluid.dewTemperature(absolute).fahrenheit()));
            line.put("bubbleF", rounded(fluid.bubbleTemperature(absolute).fahrenheit()));
            line.put("dewC", rounded(fluid.dewTemperature(absolute).celsius()));
            line.put("bubbleC", rounded(fluid.bubbleTemperature(absolute).celsius()));
            return line.toString();
        } catch (OutOfRangeException e) {
            throw new CommandFailure("There is no saturation temperature of " + designation + " at "
                    + stated.toPlainString() + " " + unit.symbol() + ": give a gauge pressure from "
                    + range(fluid, air, unit) + " at " + feet.toPlainString() + " ft.");
        }
    }

    /** The gauge pressures that have both a dew and a bubble temperature, rounded inwards to four figures. */
    private static String range(Refrigerant fluid, AbsolutePressure air, Unit unit) {
        double one = limit(fluid.saturationPressure(Side.BUBBLE, fluid.lowestTemperature()), air, unit);
        double other = limit(fluid.saturationPressure(Side.DEW, fluid.highestTemperature()), air, unit);
        // in inches of vacuum the higher number is the lower pressure
        double low = Math.min(one, other);
        double high = unit == Unit.INCH_MERCURY_VACUUM ? Math.max(one, 0) : Math.max(one, other);
        return figures(unit == Unit.INCH_MERCURY_VACUUM ? Math.max(low, 0) : low, RoundingMode.CEILING) + " to "
                + figures(high, RoundingMode.FLOOR) + " " + unit.symbol();
    }

    private static double limit(AbsolutePressure pressure, AbsolutePressure air, Unit unit) {
        return unit.fromBase(pressure.gaugeIn(air).pascals());
    }

    private static String figures(double value, RoundingMode towards) {
        BigDecimal figures = new BigDecimal(value, new MathContext(4, towards));
        return figures.stripTrailingZeros().toPlainString();
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    }
}
