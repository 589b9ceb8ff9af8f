package readback.assistant.replay;

import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Content;
import readback.assistant.record.Entry;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.Slot;

/** What a supervisor looks for in a session. Told from the record alone, without replaying it. */
public enum Moment {
    /** Something was not understood, or a value was not taken at once. */
    DOUBT {
        @Override
        public boolean in(Entry entry, Optional<Entry> before) {
            return entry.outcome().understood().doubtful() || valueNotTaken(entry);
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
            return !entry.outcome().standing().isEmpty()
                    && !entry.outcome()
                            .standing()
                            .equals(before.map(earlier -> earlier.outcome().standing())
                                    .orElse(List.of()));
        }
    };

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

    private static boolean valueNotTaken(Entry entry) {
        return entry.outcome().understood().stated().stream().anyMatch(reading -> !taken(entry, reading.quantity()));
    }

    /** Whether a value of a quantity was filled in, whatever the slot is called that a procedure asks it for. */
    private static boolean taken(Entry entry, Quantity quantity) {
        return entry.outcome().changes().stream()
                .anyMatch(change -> change.slot().equals(Slot.of(quantity))
                        || change.after()
                                .flatMap(Content::reading)
                                .filter(reading -> reading.quantity() == quantity)
                                .isPresent());
    }
}
