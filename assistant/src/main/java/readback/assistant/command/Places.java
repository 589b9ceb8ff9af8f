package readback.assistant.command;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Option;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;

/** Where the gauges stand and which units are printed. */
final class Places {

    private static final Map<String, Unit> PRESSURES = new TreeMap<>(Map.of(
            "psig", Unit.PSIG,
            "bar", Unit.BAR_GAUGE,
            "kpa", Unit.KILOPASCAL_GAUGE,
            "mpa", Unit.MEGAPASCAL_GAUGE,
            "kg/cm2", Unit.KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_GAUGE));

    @Option(names = "--altitude-ft", paramLabel = "FEET", description = "Height above sea level. Default: 0.")
    private String altitude = "0";

    @Option(names = "--unit", paramLabel = "UNIT", description = "psig, bar, kpa, mpa or kg/cm2. Default: psig.")
    private String unit = "psig";

    @Option(names = "--celsius", description = "Temperatures in degrees Celsius instead of Fahrenheit.")
    private boolean celsius;

    AbsolutePressure air() {
        return Atmosphere.atAltitude(
                Unit.FOOT.toBase(Numbers.altitudeFeet(altitude).doubleValue()));
    }

    String altitudeFeet() {
        return altitude;
    }

    Unit pressure() {
        Unit stated = PRESSURES.get(unit.toLowerCase(Locale.ROOT));
        if (stated == null) {
            throw new CommandFailure(
                    "--unit is one of " + String.join(", ", PRESSURES.keySet()) + ", not '" + unit + "'.");
        }
        return stated;
    }

    Unit temperature() {
        return celsius ? Unit.CELSIUS : Unit.FAHRENHEIT;
    }
}
