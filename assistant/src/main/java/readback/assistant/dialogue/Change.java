package readback.assistant.dialogue;

import java.util.Optional;
import readback.prompts.checklist.Slot;

/**
 * What an event did to one slot.
 *
 * @param before what filled it until then; empty for a first answer
 * @param after what fills it now; empty where the answer was taken back or put aside
 */
public record Change(Slot slot, Optional<Content> before, Optional<Content> after) {

    /** What fills the slot now in one line for a reader; empty where nothing does. */
    public String line() {
        return after.map(Content::line).orElse("");
    }
}
