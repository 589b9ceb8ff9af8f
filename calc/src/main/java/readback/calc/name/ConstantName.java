package readback.calc.name;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The name of an enum constant outside the code: lower case with hyphens, as in {@code suction-pressure}. */
public final class ConstantName {

    private ConstantName() {}

    /** The name by which checklists, texts and records know a constant. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The names of several, with commas between; empty for none. */
    public static String list(Collection<? extends Enum<?>> constants) {
        return constants.stream().map(ConstantName::of).collect(Collectors.joining(", "));
    }

    /** The constant of a name, whatever its case; empty when the type has none of that name. */
    public static <E extends Enum<E>> Optional<E> find(Class<E> type, String name) {
        String wanted = name.strip().toUpperCase(Locale.ROOT).replace('-', '_');
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equals(wanted)) {
                return Optional.of(constant);
            }
        }
        return Optional.empty();
    }
}
