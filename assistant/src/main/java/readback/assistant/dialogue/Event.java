package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import readback.grammar.Hypothesis;

/** Something that happened to a session. A session is the list of its events. */
public sealed interface Event {

    /** When it happened; the dialogue knows no other clock. */
    Instant at();

    /** What the case of this kind makes of the event. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of event. */
    interface Cases<T> {

        T started(Started started);

        T heard(Heard heard);

        T timerElapsed(TimerElapsed timerElapsed);

        T deviceLost(DeviceLost deviceLost);

        T deviceFound(DeviceFound deviceFound);

        T clockChanged(ClockChanged clockChanged);

        T measured(Measured measured);

        T resumed(Resumed resumed);

        T ended(Ended ended);
    }

    /** The session begins. Always the first event. */
    record Started(Instant at, SessionSettings settings) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.started(this);
        }
    }

    /** Where words came from. */
    enum Source {
        /** The recogniser. */
        VOICE,
        /** The keyboard or a touched choice. */
        KEYS
    }

    /**
     * Something was said or typed.
     *
     * @param hypotheses the likeliest first; empty when sound was heard but no words
     */
    record Heard(Instant at, Source source, List<Hypothesis> hypotheses) implements Event {
        public Heard {
            hypotheses = List.copyOf(hypotheses);
        }

        /** Seconds from the first word of the likeliest to its last, where the recogniser tells; else zero. */
        double seconds() {
            List<Hypothesis.Word> words =
                    hypotheses.isEmpty() ? List.of() : hypotheses.get(0).details();
            return words.isEmpty()
                    ? 0
                    : words.get(words.size() - 1).end() - words.get(0).start();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.heard(this);
        }
    }

    /** A timer that the dialogue started has run out. */
    record TimerElapsed(Instant at, String timer) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.timerElapsed(this);
        }
    }

    /** The name of the record as a device that can be lost: everything is kept in memory while it is. */
    String RECORD = "record";

    /** The name of the timer that tells of a long silence. */
    String SILENCE = "silence";

    /** A microphone or loudspeaker stopped working, or the disk does not take the record. */
    record DeviceLost(Instant at, String device) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.deviceLost(this);
        }
    }

    /** It works again. */
    record DeviceFound(Instant at, String device) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.deviceFound(this);
        }
    }

    /**
     * The device's clock was set while the session ran. The times of events go on as if it had not been.
     *
     * @param by positive when it was set forward
     */
    record ClockChanged(Instant at, Duration by) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.clockChanged(this);
        }
    }

    /**
     * What probes show is no longer what was told before: a value stands still, moves, is missing.
     *
     * @param reports of those of which something changed
     */
    record Measured(Instant at, List<ProbeReport> reports) implements Event {
        public Measured {
            reports = List.copyOf(reports);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.measured(this);
        }
    }

    /** The process was started again on a recorded session. */
    record Resumed(Instant at) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.resumed(this);
        }
    }

    /** The input ended, which closed a session in earlier versions; it stands in their records only. */
    record Ended(Instant at) implements Event {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.ended(this);
        }
    }
}
