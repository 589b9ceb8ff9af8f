package readback.assistant.session;

import java.time.Instant;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/**
 * Keeps the dialogue's timers in a session whose time comes with its input: typed lines, recordings. A timer that has
 * run out rings before the next input. One thread.
 */
public final class Alarm implements Audience {

    private final Timers timers = new Timers();

    @Override
    public void happened(Event event, Turn turn) {
        timers.follow(event, turn);
    }

    /** Tells the session of every timer that has run out by now. */
    public void ring(Session session, Instant now) {
        timers.elapsed(now).forEach(timer -> session.on(new Event.TimerElapsed(now, timer)));
    }
}
