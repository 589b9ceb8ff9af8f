package readback.assistant.session;

import java.util.List;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/**
 * Someone who follows a session: a screen, a voice. Called on the session's thread, after the record has kept the
 * event; must not call back into the session and must not fail: trouble of its own stays its own.
 */
public interface Audience {

    /** An event was recorded; called before anything is said about it. */
    default void happened(Event event, Turn turn) {}

    /** These are said now, in order. */
    default void says(List<Line> lines) {}

    /** Stop speaking. */
    default void hush() {}

    /** The session is over. */
    default void closed() {}
}
