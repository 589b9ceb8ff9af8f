package readback.assistant.replay;

import java.util.List;
import java.util.function.Predicate;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;

/** Runs recorded events through the dialogue again. */
public final class Replay {

    private Replay() {}

    /**
     * Shows every scene in order until the viewer has seen enough, or up to an event that no session has there: a
     * second start.
     *
     * @param viewer false ends the replay
     * @throws IllegalArgumentException when the entries do not begin with a session's start
     */
    public static void through(Dialogue dialogue, List<Entry> entries, Predicate<Scene> viewer) {
        if (entries.isEmpty()) {
            return;
        }
        if (!(entries.get(0).event() instanceof Event.Started started)) {
            throw new IllegalArgumentException("a session begins with its start");
        }
        Turn turn = dialogue.begin(started);
        State before = turn.state();
        boolean goOn = viewer.test(new Scene(entries.get(0), before, turn));
        for (int i = 1; i < entries.size() && goOn; i++) {
            if (entries.get(i).event() instanceof Event.Started) {
                return;
            }
            before = turn.state();
            turn = dialogue.on(before, entries.get(i).event());
            goOn = viewer.test(new Scene(entries.get(i), before, turn));
        }
    }
}
