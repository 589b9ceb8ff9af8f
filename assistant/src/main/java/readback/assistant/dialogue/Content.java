package readback.assistant.dialogue;

import java.time.Duration;
import java.util.Optional;
import readback.calc.quantity.Reading;

/** What an answer says, whenever it was given: made in the dialogue, kept by the record, read by everyone after. */
public sealed interface Content {

    /** In one line for a reader, the same for equal contents. */
    String line();

    /** The value that was called out or taken from a probe; empty for everything else. */
    default Optional<Reading> reading() {
        return Optional.empty();
    }

    /** The probe that a value was taken from; empty where nobody took it from one. */
    default Optional<ProbeSource> probe() {
        return Optional.empty();
    }

    /**
     * A value called out, or taken from a probe.
     *
     * @param probe where a value came from that was taken from a probe
     */
    record Value(Reading stated, Optional<ProbeSource> probe) implements Content {

        /** A value that was called out or typed. */
        public Value(Reading stated) {
            this(stated, Optional.empty());
        }

        @Override
        public String line() {
            return stated.value().toPlainString() + " " + stated.unit().symbol();
        }

        @Override
        public Optional<Reading> reading() {
            return Optional.of(stated);
        }
    }

    /** An option of a choice set, or "yes", "no" or "done". */
    record Option(String option) implements Content {

        /** A step is done, a caution was understood. */
        public static final Option DONE = new Option("done");

        @Override
        public String line() {
            return option;
        }
    }

    /**
     * A wait that is over.
     *
     * @param missing what was left of it when the technician cut it short; zero when the time was over
     */
    record Passed(Duration missing) implements Content {
        @Override
        public String line() {
            return missing.isZero() ? Intake.DONE : "cut short by " + missing;
        }
    }

    /** Passed over on request, or not known. */
    record Skipped() implements Content {
        @Override
        public String line() {
            return "skipped";
        }
    }
}
