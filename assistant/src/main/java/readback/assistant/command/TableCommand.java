package readback.assistant.command;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.calc.fluid.AssessmentReport;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.SaturationTable;
import readback.calc.quantity.Unit;

/** A printable pressure-temperature table as the gauge reads it at the local altitude. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        description =
                "Prints the gauge pressures of a refrigerant by temperature at the local altitude, dew and bubble.")
public final class TableCommand implements Callable<Integer> {

    private final Console console;

    @Option(names = "--refrigerant", required = true, paramLabel = "NAME", description = "As on the plate.")
    private String refrigerant = "";

    @Option(names = "--from", paramLabel = "DEGREES", description = "First temperature. Default: -20 °F or -30 °C.")
    private String from = "";

    @Option(names = "--to", paramLabel = "DEGREES", description = "Last temperature. Default: 150 °F or 65 °C.")
    private String to = "";

    @Option(names = "--step", paramLabel = "DEGREES", description = "Distance of two lines. Default: 2 °F or 1 °C.")
    private String step = "";

    @Mixin
    private Places places = new Places();

    public TableCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        boolean celsius = places.temperature() == Unit.CELSIUS;
        double first = number("--from", from, celsius ? -30 : -20);
        double last = number("--to", to, celsius ? 65 : 150);
        double each = number("--step", step, celsius ? 1 : 2);
        if (!(each > 0) || last < first || (last - first) / each > 2000) {
            throw new CommandFailure("A table runs from a lower to a higher temperature in at most 2,000 steps.");
        }
        Lookup.Found found = (Lookup.Found) Catalogue.standard().find(SessionOptions.designation(refrigerant));
        print(found.refrigerant(), first, last, each);
        return 0;
    }

    private static double number(String option, String text, double otherwise) {
        return text.isEmpty() ? otherwise : Numbers.decimal(option, text).doubleValue();
    }

    private void print(Refrigerant fluid, double first, double last, double each) {
        String degrees = places.temperature().symbol();
        String pressure = places.pressure().symbol();
        console.out()
                .println(fluid.designation() + ", safety class " + fluid.safetyClass() + ", GWP "
                        + Math.round(fluid.globalWarmingPotential(AssessmentReport.AR4))
                        + " (IPCC AR4), gauge pressure at " + places.altitudeFeet() + " ft");
        console.out().println("Superheat counts from the dew column, subcooling from the bubble column.");
        console.out().printf(Locale.ROOT, "%8s  %12s  %12s%n", degrees, "dew " + pressure, "bubble " + pressure);
        SaturationTable table = new SaturationTable(fluid, places.air(), places.pressure(), places.temperature());
        for (SaturationTable.Row row : table.byTemperature(first, last, each)) {
            console.out().printf(Locale.ROOT, "%8.1f  %12s  %12s%n", row.given(), cell(row.dew()), cell(row.bubble()));
        }
    }

    private String cell(OptionalDouble value) {
        String format = switch (places.pressure()) {
            case PSIG, KILOPASCAL_GAUGE -> "%.1f";
            default -> "%.3f";
        };
        return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "-";
    }
}
