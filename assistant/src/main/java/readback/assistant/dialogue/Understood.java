package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Meaning;

/** What an event was taken to mean: made once, in the dialogue, and read by record, screen, report and replay. */
public sealed interface Understood {

    /** What the case of this kind makes of what was understood. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of what was understood. */
    interface Cases<T> {

        T occurrence(Occurrence occurrence);

        T elapsed(Elapsed elapsed);

        T clockChanged(ClockChanged changed);

        T meant(Meant meant);

        T between(Between between);

        T ignored(Ignored ignored);
    }

    /** In one line that a supervisor can read, the same for equal meanings. */
    String line();

    /** The one meaning of the words; empty where there was none or more than one. */
    default Optional<Meaning> meaning() {
        return Optional.empty();
    }

    /** Whether words could not be taken as they were heard. */
    default boolean doubtful() {
        return false;
    }

    /** Whether nothing was to come of it: words that were not for us, or while on hold. */
    default boolean ignored() {
        return false;
    }

    /** Whether it was an order of this kind. */
    default boolean orders(Command command) {
        return meaning().filter(meaning -> meaning.orders(command)).isPresent();
    }

    /** The values that were stated, taken or not. */
    default List<Reading> stated() {
        return meaning().map(Meaning::readings).orElse(List.of());
    }

    /** Something happened to the session that nobody said. */
    enum Occurrence implements Understood {
        STARTED,
        RESUMED,
        ENDED,
        DEVICE_LOST,
        DEVICE_FOUND,
        SILENCE,
        /** What probes show. */
        MEASURED,
        /** Words while on hold: nothing is taken. */
        HELD;

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.occurrence(this);
        }

        @Override
        public String line() {
            return ConstantName.of(this).replace('-', ' ');
        }

        @Override
        public boolean ignored() {
            return this == HELD;
        }
    }

    /** A timer of the dialogue ran out. */
    record Elapsed(String timer) implements Understood {
        @Override
        public String line() {
            return "timer " + timer;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.elapsed(this);
        }
    }

    /**
     * The clock of the device was set.
     *
     * @param by negative when it was set back
     */
    record ClockChanged(Duration by) implements Understood {
        @Override
        public String line() {
            return "clock changed by " + by;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.clockChanged(this);
        }
    }

    /** Words with one meaning. */
    record Meant(Meaning words) implements Understood {
        @Override
        public String line() {
            return MeaningLine.line(words);
        }

        @Override
        public Optional<Meaning> meaning() {
            return Optional.of(words);
        }

        @Override
        public boolean doubtful() {
            return !words.understood();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.meant(this);
        }
    }

    /** Words with several meanings: which one was asked. */
    record Between(List<Meaning> candidates) implements Understood {
        public Between {
            candidates = List.copyOf(candidates);
        }

        @Override
        public String line() {
            return "between " + candidates.stream().map(MeaningLine::line).toList();
        }

        @Override
        public boolean doubtful() {
            return true;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.between(this);
        }
    }

    /** Words that were not for us, or came after the end. */
    record Ignored(Decision.Ignorance why) implements Understood {
        @Override
        public String line() {
            return "ignored: " + ConstantName.of(why);
        }

        @Override
        public boolean ignored() {
            return true;
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.ignored(this);
        }
    }
}
