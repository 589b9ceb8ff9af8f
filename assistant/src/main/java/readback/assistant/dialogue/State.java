package readback.assistant.dialogue;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that a session knows at one moment. Immutable; made only by {@link Dialogue} from the session's events.
 *
 * @param at time of the latest event
 * @param settings fixed at the start
 * @param job name of the job being done
 * @param sheet what was answered
 * @param conversation where the talk stands
 * @param warnings which cautions were given and which wait for an acknowledgement
 * @param announced the verdict that was spoken last, in its recorded form
 */
public record State(
        Instant at,
        Settings settings,
        String job,
        Sheet sheet,
        Conversation conversation,
        Warnings warnings,
        Optional<String> announced) {

    static State opened(Event.Started started) {
        return new State(
                started.at(),
                started.settings(),
                started.settings().job(),
                Sheet.EMPTY,
                Conversation.opened(started.settings().brief()),
                Warnings.NONE,
                Optional.empty());
    }

    /** Whether the session is over. */
    public boolean closed() {
        return conversation.mode() == Conversation.Mode.CLOSED;
    }

    /** Whether values and verdicts only are spoken. */
    public boolean brief() {
        return conversation.brief();
    }

    /** Whether "hold on" was said and "carry on" not yet. */
    public boolean held() {
        return conversation.mode() == Conversation.Mode.HELD;
    }

    /** The step asked last, by its name. */
    public Optional<String> asked() {
        return conversation.asked();
    }

    /** Whether a value waits for an explicit yes or for a choice between two that sound alike. */
    public boolean inDoubt() {
        return conversation
                .pending()
                .filter(pending -> !(pending instanceof Pending.Leave))
                .isPresent();
    }

    /** Cautions that wait for the technician's word that they were understood, by name. */
    public Set<String> unheeded() {
        return warnings.unheeded();
    }

    State at(Instant now) {
        return new State(now, settings, job, sheet, conversation, warnings, announced);
    }

    State with(Sheet next) {
        return new State(at, settings, job, next, conversation, warnings, announced);
    }

    State with(Conversation next) {
        return new State(at, settings, job, sheet, next, warnings, announced);
    }

    State with(Warnings next) {
        return new State(at, settings, job, sheet, conversation, next, announced);
    }

    State announcing(Optional<String> verdict) {
        return new State(at, settings, job, sheet, conversation, warnings, verdict);
    }
}
