package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import readback.calc.quantity.Reading;

/** What fills a slot of the checklist. */
public sealed interface Answer {

    /** When it was given. */
    Instant at();

    /** What the case of this kind makes of the answer. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of answer. */
    interface Cases<T> {

        T value(Value value);

        T option(Option option);

        T passed(Passed passed);

        T skipped(Skipped skipped);
    }

    /** What it says, whenever it was given. */
    Content content();

    /**
     * A value called out, or taken from a probe.
     *
     * @param confirmed whether it was in doubt and an explicit yes was given
     * @param probe where a value came from that was taken from a probe
     */
    record Value(Instant at, Reading reading, boolean confirmed, Optional<ProbeSource> probe) implements Answer {

        /** A value that was called out, typed or set. */
        Value(Instant at, Reading reading, boolean confirmed) {
            this(at, reading, confirmed, Optional.empty());
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.value(this);
        }

        @Override
        public Content content() {
            return new Content.Value(reading, probe);
        }
    }

    /** An option of a choice set, or "yes", "no" or "done". */
    record Option(Instant at, String option) implements Answer {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.option(this);
        }

        @Override
        public Content content() {
            return new Content.Option(option);
        }
    }

    /**
     * A wait that is over.
     *
     * @param since when it began
     * @param missing what was left of it when the technician cut it short; zero when the time was over
     */
    record Passed(Instant at, Instant since, Duration missing) implements Answer {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.passed(this);
        }

        @Override
        public Content content() {
            return new Content.Passed(missing);
        }
    }

    /** Passed over on request, or not known. */
    record Skipped(Instant at) implements Answer {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.skipped(this);
        }

        @Override
        public Content content() {
            return new Content.Skipped();
        }
    }
}
