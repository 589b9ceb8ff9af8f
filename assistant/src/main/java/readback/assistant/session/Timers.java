package readback.assistant.session;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;

/** The timers that the dialogue started and that have not run out. Owned by one thread; knows no clock. */
public final class Timers {

    private final Map<String, Instant> due = new TreeMap<>();

    /** Begins and forgets the timers that a turn wants begun and forgotten. */
    public void follow(Event event, Turn turn) {
        for (Effect effect : turn.effects()) {
            if (effect instanceof Effect.StartTimer start) {
                start(start.timer(), event.at(), start.duration());
            } else if (effect instanceof Effect.StopTimer stop) {
                stop(stop.timer());
            }
        }
    }

    /** Begins a timer; an earlier one of the name is replaced. */
    public void start(String timer, Instant now, Duration duration) {
        due.put(timer, now.plus(duration));
    }

    /** Forgets a timer. */
    public void stop(String timer) {
        due.remove(timer);
    }

    /** The timers that have run out, the earliest first; they are forgotten. */
    public List<String> elapsed(Instant now) {
        List<String> over = new ArrayList<>(due.entrySet().stream()
                .filter(timer -> !timer.getValue().isAfter(now))
                .sorted(Comparator.comparing(Map.Entry<String, Instant>::getValue))
                .map(Map.Entry::getKey)
                .toList());
        over.forEach(due::remove);
        return over;
    }

    /** What is left of each, by name. */
    public Map<String, Duration> left(Instant now) {
        Map<String, Duration> left = new TreeMap<>();
        due.forEach((timer, at) -> left.put(timer, Duration.between(now, at)));
        return left;
    }
}
