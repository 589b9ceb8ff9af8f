package readback.assistant.command;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import readback.calc.quantity.Unit;

/** Units of gauge pressure as they are named on the command line. */
final class GaugeUnits {

    private static final String VACUUM = "inhg";
    private static final Map<String, Unit> ABOVE_AIR = new TreeMap<>(Map.of(
            "psig", Unit.PSIG,
            "bar", Unit.BAR_GAUGE,
            "kpa", Unit.KILOPASCAL_GAUGE,
            "mpa", Unit.MEGAPASCAL_GAUGE,
            "kg/cm2", Unit.KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_GAUGE));

    private GaugeUnits() {}

    /** The unit of this name; {@code vacuum} admits inches of mercury below the local air too. */
    static Unit named(String name, boolean vacuum) {
        Map<String, Unit> units = new TreeMap<>(ABOVE_AIR);
        if (vacuum) {
            units.put(VACUUM, Unit.INCH_MERCURY_VACUUM);
        }
        Unit unit = units.get(name.toLowerCase(Locale.ROOT));
        if (unit == null) {
            throw new CommandFailure("--unit is one of " + String.join(", ", units.keySet()) + ", not '" + name + "'.");
        }
        return unit;
    }
}
