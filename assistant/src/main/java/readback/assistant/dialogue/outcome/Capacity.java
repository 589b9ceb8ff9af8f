package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * How much the system cools: information, compared with the plate where it was read.
 *
 * @param totalWatts taken out of the air, not above zero where it is not cooled
 * @param sensibleWatts the part that cools it, without its moisture
 * @param percentOfPlate of the capacity on the plate
 * @param wattsPerHundredVoltAmperes cooling for the apparent power of the compressor
 */
public record Capacity(
        long totalWatts, long sensibleWatts, Optional<Long> percentOfPlate, Optional<Long> wattsPerHundredVoltAmperes)
        implements JobOutcome {

    /** Whether the air is cooled at all. */
    public boolean cools() {
        return totalWatts > 0;
    }

    @Override
    public Judged judged() {
        return Judged.CAPACITY;
    }

    @Override
    public String name() {
        return cools() ? "capacity measured" : "capacity no-cooling";
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.cooling("total-cooling", totalWatts, units));
        figures.add(Figure.cooling("sensible-cooling", sensibleWatts, units));
        percentOfPlate.ifPresent(percent -> figures.add(Figure.percent("of-plate", percent)));
        wattsPerHundredVoltAmperes.ifPresent(watts -> figures.add(Figure.percent("cooling-for-apparent-power", watts)));
        return figures;
    }

    @Override
    public String line() {
        StringJoiner line = new StringJoiner(" ");
        line.add(name());
        line.add("total=" + totalWatts + "W sensible=" + sensibleWatts + "W");
        percentOfPlate.ifPresent(percent -> line.add("of-plate=" + percent + "%"));
        wattsPerHundredVoltAmperes.ifPresent(watts -> line.add("per-100VA=" + watts + "W"));
        return line.toString();
    }
}
