package readback.assistant.live;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.session.Audience;
import readback.assistant.session.Timers;

/**
 * What a session waits for: the timers that the dialogue started, and a technician who is silent. Owned by the
 * session's thread.
 */
final class Timeouts implements Audience {

    private final Timers timers = new Timers();
    private final NoInputTimer noInput = new NoInputTimer();

    @Override
    public void happened(Event event, Turn turn) {
        timers.follow(event, turn);
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.Listen listen) {
                noInput.restart(listen.noInputTimeout());
            }
        }
    }

    /**
     * What is over now.
     *
     * @param quiet whether Readback listens and nobody speaks
     */
    List<Event> over(boolean quiet, Instant now) {
        List<Event> over = new ArrayList<>();
        timers.elapsed(now).forEach(timer -> over.add(new Event.TimerElapsed(now, timer)));
        if (noInput.over(quiet, now)) {
            over.add(new Event.TimerElapsed(now, Event.SILENCE));
        }
        return over;
    }

    /** The timers as they are shown, as in "steady running 12:05". */
    List<String> shown(Instant now) {
        List<String> shown = new ArrayList<>();
        timers.left(now).forEach((timer, left) -> {
            // Part of another timer: a reminder, say.
            if (timer.contains(".")) {
                return;
            }
            long seconds = Math.max(0, left.toSeconds());
            shown.add(timer.replace('-', ' ') + String.format(Locale.ROOT, " %d:%02d", seconds / 60, seconds % 60));
        });
        return shown;
    }
}
