package readback.assistant.command;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** How good the instruments are. */
final class InstrumentOptions {

    @Option(
            names = "--gauges",
            paramLabel = "LIMIT",
            description = "How far the gauges may be off: a pressure, or a share of the reading such as 1%%."
                    + " Default: 3.5 psi suction, 7 psi liquid.")
    private @Nullable String gauges;

    @Option(
            names = "--clamps",
            paramLabel = "DEGREES",
            description = "How far the pipe clamps may be off. Default: 1.8 °F.")
    private @Nullable String clamps;

    @Option(
            names = "--wet-bulb",
            paramLabel = "DEGREES",
            description = "How far the wet bulb may be off. Default: 1.8 °F.")
    private @Nullable String wetBulb;

    @Option(
            names = "--air-probes",
            paramLabel = "DEGREES",
            description = "How far the probes in air may be off. Default: 1.8 °F.")
    private @Nullable String airProbes;

    /**
     * What was stated, each once.
     *
     * @param units of numbers without one
     */
    List<Reading> stated(UnitSetting units) {
        List<Reading> stated = new ArrayList<>(4);
        if (gauges != null && gauges.strip().endsWith("%")) {
            String share = gauges.strip();
            add(
                    stated,
                    "--gauges",
                    Quantity.GAUGE_ACCURACY_OF_READING,
                    share.substring(0, share.length() - 1),
                    Unit.PERCENT);
        } else {
            add(stated, "--gauges", Quantity.GAUGE_ACCURACY, gauges, units.unitOf(Quantity.GAUGE_ACCURACY));
        }
        add(stated, "--clamps", Quantity.CLAMP_ACCURACY, clamps, units.unitOf(Quantity.CLAMP_ACCURACY));
        add(stated, "--wet-bulb", Quantity.WET_BULB_ACCURACY, wetBulb, units.unitOf(Quantity.WET_BULB_ACCURACY));
        add(stated, "--air-probes", Quantity.AIR_PROBE_ACCURACY, airProbes, units.unitOf(Quantity.AIR_PROBE_ACCURACY));
        return stated;
    }

    private static void add(List<Reading> stated, String option, Quantity quantity, @Nullable String value, Unit unit) {
        if (value == null) {
            return;
        }
        BigDecimal number = Numbers.decimal(option, value);
        Reading reading = new Reading(quantity, number, unit);
        Grade.Span possible = Plausibility.possible(quantity);
        double inItsUnit = reading.in(possible.unit());
        if (inItsUnit < possible.low() || inItsUnit > possible.high()) {
            throw new CommandFailure(option + " " + value + " cannot be: it lies outside " + possible.low() + " to "
                    + possible.high() + " " + possible.unit().symbol() + ".");
        }
        stated.add(reading);
    }
}
