package readback.assistant.setup;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** How far instruments may be off, as the settings have it: a number in the units of the settings, or a share. */
final class Accuracies {

    private static final String PERCENT = "%";

    /** An accuracy is known to two digits, if that. */
    private static final MathContext DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    private static final Map<Quantity, Name> NAMES = Map.of(
            Quantity.GAUGE_ACCURACY,
            Name.GAUGES,
            Quantity.GAUGE_ACCURACY_OF_READING,
            Name.GAUGES,
            Quantity.CLAMP_ACCURACY,
            Name.CLAMPS,
            Quantity.WET_BULB_ACCURACY,
            Name.WET_BULB,
            Quantity.AIR_PROBE_ACCURACY,
            Name.AIR_PROBES);

    private Accuracies() {}

    /** Whether it is one. */
    static boolean among(Quantity quantity) {
        return NAMES.containsKey(quantity);
    }

    static Name name(Quantity quantity) {
        Name name = NAMES.get(quantity);
        if (name == null) {
            throw new IllegalArgumentException(quantity + " is no accuracy");
        }
        return name;
    }

    /** The other way to state the same; the quantity itself where there is none. */
    static Quantity instead(Quantity quantity) {
        return switch (quantity) {
            case GAUGE_ACCURACY -> Quantity.GAUGE_ACCURACY_OF_READING;
            case GAUGE_ACCURACY_OF_READING -> Quantity.GAUGE_ACCURACY;
            default -> quantity;
        };
    }

    /** As the settings have it. */
    static String text(Reading accuracy, UnitSetting units) {
        if (accuracy.quantity() == Quantity.GAUGE_ACCURACY_OF_READING) {
            return accuracy.value().toPlainString() + PERCENT;
        }
        Unit unit = units.unitOf(accuracy.quantity());
        return accuracy.unit() == unit
                ? accuracy.value().toPlainString()
                : BigDecimal.valueOf(accuracy.in(unit)).round(DIGITS).toPlainString();
    }

    /** The numbers of a file whose units are changed, in the new ones; what is no number stays out. */
    static Map<Name, String> converted(Map<Name, String> stated, UnitSetting from, UnitSetting to) {
        Map<Name, String> converted = new TreeMap<>();
        NAMES.forEach((quantity, name) -> {
            if (quantity != Quantity.GAUGE_ACCURACY_OF_READING) {
                number(stated.get(name))
                        .ifPresent(number ->
                                converted.put(name, text(new Reading(quantity, number, from.unitOf(quantity)), to)));
            }
        });
        return converted;
    }

    private static Optional<BigDecimal> number(@org.jspecify.annotations.Nullable String text) {
        try {
            return text == null ? Optional.empty() : Optional.of(new BigDecimal(text.strip()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
