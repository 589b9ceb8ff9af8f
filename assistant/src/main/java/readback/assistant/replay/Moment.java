package readback.assistant.replay;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import readback.assistant.record.Entry;

/** What a supervisor looks for in a session. Told from the record alone, without replaying it. */
public enum Moment {
    /** Something was not understood, or a value was not taken at once. */
    DOUBT {
        @Override
        public boolean in(Entry entry, Optional<Entry> before) {
            String understood = entry.outcome().understood();
            return understood.startsWith("between ")
                    || understood.startsWith("not understood")
                    || valueNotTaken(entry, understood);
        }
    },
    /** A caution was given. */
    CAUTION {
        @Override
        public boolean in(Entry entry, Optional<Entry> before) {
            return !entry.outcome().cautions().isEmpty();
        }
    },
    /** A verdict was reached, or another one. */
    VERDICT {
        @Override
        public boolean in(Entry entry, Optional<Entry> before) {
            return entry.outcome().verdict().isPresent()
                    && !entry.outcome()
                            .verdict()
                            .equals(before.flatMap(earlier -> earlier.outcome().verdict()));
        }
    };

    /** A reading as a meaning is written: the quantity with hyphens, a number, a unit. */
    private static final Pattern VALUE = Pattern.compile("(?:^|: |, )([a-z]+(?:-[a-z]+)*) -?[0-9.]+ ");

    /**
     * Whether an entry is such a moment.
     *
     * @param before the entry before it
     */
    public abstract boolean in(Entry entry, Optional<Entry> before);

    /** The moment of a name, as in "doubt". */
    public static Optional<Moment> named(String name) {
        for (Moment moment : values()) {
            if (moment.name().equalsIgnoreCase(name)) {
                return Optional.of(moment);
            }
        }
        return Optional.empty();
    }

    private static boolean valueNotTaken(Entry entry, String understood) {
        if (understood.startsWith("note: ") || understood.startsWith("saturation at ")) {
            return false;
        }
        Matcher values = VALUE.matcher(understood);
        while (values.find()) {
            String slot = values.group(1).toUpperCase(Locale.ROOT).replace('-', '_');
            if (Content.quantity(slot).isPresent() && !entry.outcome().changes().containsKey(slot)) {
                return true;
            }
        }
        return false;
    }
}
