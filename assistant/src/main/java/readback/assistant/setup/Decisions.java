package readback.assistant.setup;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;

/**
 * What is decided so far. Immutable.
 *
 * @param stated what the file says already
 * @param settings what was decided now, without the instruments
 * @param accuracies of the instruments, as they were stated now
 */
record Decisions(Map<Name, String> stated, Map<Name, String> settings, Map<Quantity, Reading> accuracies) {

    private static final String US = "us";
    private static final String METRIC = "metric";

    Decisions {
        stated = Map.copyOf(stated);
        settings = Map.copyOf(settings);
        accuracies = Map.copyOf(accuracies);
    }

    /** Nothing but what the file says. */
    static Decisions of(Map<Name, String> stated) {
        return new Decisions(stated, Map.of(), Map.of());
    }

    Decisions with(Name name, String value) {
        Map<Name, String> more = new TreeMap<>(settings);
        more.put(name, value);
        return new Decisions(stated, more, accuracies);
    }

    Decisions with(Name name, boolean value) {
        return with(name, String.valueOf(value));
    }

    /** As if this had not been decided now. */
    Decisions without(Name name) {
        Map<Name, String> fewer = new TreeMap<>(settings);
        fewer.remove(name);
        return new Decisions(stated, fewer, accuracies);
    }

    Decisions with(UnitSetting units) {
        return with(Name.UNITS, units.equals(UnitSetting.METRIC) ? METRIC : US);
    }

    /** With the accuracy of an instrument; gauges are good to a pressure or to a share of the reading, not to both. */
    Decisions stating(Reading accuracy) {
        Map<Quantity, Reading> more = new TreeMap<>(accuracies);
        more.remove(Accuracies.instead(accuracy.quantity()));
        more.put(accuracy.quantity(), accuracy);
        return new Decisions(stated, settings, more);
    }

    /** The units that numbers are meant in. */
    UnitSetting units() {
        return units(Optional.ofNullable(settings.getOrDefault(Name.UNITS, stated.get(Name.UNITS))));
    }

    private static UnitSetting units(Optional<String> name) {
        return name.filter(METRIC::equals).isPresent() ? UnitSetting.METRIC : UnitSetting.US;
    }

    /** Everything that was decided now, with numbers in the units that were decided. */
    Map<Name, String> all() {
        Map<Name, String> all = new TreeMap<>(settings);
        UnitSetting before = units(Optional.ofNullable(stated.get(Name.UNITS)));
        if (!before.equals(units())) {
            all.putAll(Accuracies.converted(stated, before, units()));
        }
        accuracies.values().forEach(each -> all.put(Accuracies.name(each.quantity()), Accuracies.text(each, units())));
        return all;
    }
}
