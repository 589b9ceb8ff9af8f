package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.prompts.checklist.Slot;

/**
 * The changes of a {@link Sheet}, the latest first in hand. Immutable; a longer history shares the shorter one, so that
 * a session of ten thousand answers does not copy all of them at each.
 */
public final class History {

    static final History NONE = new History(null, null);

    private final @Nullable Edit latest;
    private final @Nullable History earlier;

    /** One slot before and after. */
    public record Edit(Slot slot, Optional<Answer> before, Optional<Answer> after) {}

    private History(@Nullable Edit latest, @Nullable History earlier) {
        this.latest = latest;
        this.earlier = earlier;
    }

    History and(Edit edit) {
        return new History(edit, this);
    }

    /** The last change; empty when nothing was changed. */
    Optional<Edit> latest() {
        return Optional.ofNullable(latest);
    }

    /** What led to the last change. */
    History earlier() {
        return earlier == null ? NONE : earlier;
    }

    private List<Edit> changes() {
        List<Edit> changes = new ArrayList<>();
        for (History at = this; at.latest != null; at = at.earlier()) {
            changes.add(at.latest);
        }
        return changes;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof History that && changes().equals(that.changes());
    }

    @Override
    public int hashCode() {
        return changes().hashCode();
    }
}
