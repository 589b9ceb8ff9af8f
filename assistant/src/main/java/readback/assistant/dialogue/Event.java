package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import readback.grammar.Hypothesis;

/** Something that happened to a session. A session is the list of its events. */
public sealed interface Event {

    /** When it happened; the dialogue knows no other clock. */
    Instant at();

    /** The session begins. Always the first event. */
    record Started(Instant at, SessionSettings settings) implements Event {}

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
    }

    /** A timer that the dialogue started has run out. */
    record TimerElapsed(Instant at, String timer) implements Event {}

    /** The name of the record as a device that can be lost: everything is kept in memory while it is. */
    String RECORD = "record";

    /** The name of the timer that tells of a long silence. */
    String SILENCE = "silence";

    /** A microphone or loudspeaker stopped working, or the disk does not take the record. */
    record DeviceLost(Instant at, String device) implements Event {}

    /** It works again. */
    record DeviceFound(Instant at, String device) implements Event {}

    /**
     * The device's clock was set while the session ran. The times of events go on as if it had not been.
     *
     * @param by positive when it was set forward
     */
    record ClockChanged(Instant at, Duration by) implements Event {}

    /** The process was started again on a recorded session. */
    record Resumed(Instant at) implements Event {}

    /** The input ended, which closed a session in earlier versions; it stands in their records only. */
    record Ended(Instant at) implements Event {}
}
