package readback.assistant.command;

import picocli.CommandLine.Option;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;

/** Where the gauges stand and which units are printed. */
final class Places {

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
        return GaugeUnits.named(unit, false);
    }

    Unit temperature() {
        return celsius ? Unit.CELSIUS : Unit.FAHRENHEIT;
    }
}
