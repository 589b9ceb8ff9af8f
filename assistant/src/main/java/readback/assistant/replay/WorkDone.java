package readback.assistant.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.Entry;
import readback.grammar.Command;

/**
 * Follows a session's record and keeps what was put right besides the charge, and every part that was put in: the slot
 * holds the last one told, a session has several. What was scratched is dropped. One thread.
 */
public final class WorkDone {

    private final List<Told> told = new ArrayList<>();

    /**
     * One piece of work, or one part.
     *
     * @param event number of the event that told it
     * @param content the option that was told, as in "capacitor"
     */
    public record Told(int event, Instant at, Content content) {}

    /** Takes the next entry. */
    public void follow(Entry entry) {
        entry.outcome().change(Slots.WORK_DONE).ifPresent(change -> {
            if (entry.outcome().understood().orders(Command.SCRATCH_THAT)) {
                if (!told.isEmpty()) {
                    told.remove(told.size() - 1);
                }
            } else {
                change.after()
                        .ifPresent(content ->
                                told.add(new Told(entry.number(), entry.event().at(), content)));
            }
        });
    }

    /** Everything told so far, in order; the same part twice where two were put in. */
    public List<Told> all() {
        return List.copyOf(told);
    }
}
