package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.calc.caution.CautionRule;
import readback.prompts.checklist.Slot;
import readback.prompts.text.Message;

/**
 * One turn while it is being worked out: the state so far and what will be said. Lives inside one call of
 * {@link Dialogue} and is owned by it.
 */
final class Draft {

    private final State before;
    private State state;
    private final List<Message> said = new ArrayList<>();
    private final List<Effect> effects = new ArrayList<>();
    private final List<CautionRule> cautions = new ArrayList<>();
    private Understood understood = Understood.Occurrence.STARTED;

    Draft(State before) {
        this.before = before;
        this.state = before;
    }

    /** The state that the event found. */
    State before() {
        return before;
    }

    State state() {
        return state;
    }

    Sheet sheet() {
        return state.sheet();
    }

    Assessment assessment() {
        return state.assessment();
    }

    Conversation conversation() {
        return state.conversation();
    }

    void become(State next) {
        state = next;
    }

    void become(Sheet next) {
        state = state.with(next);
    }

    void become(Conversation next) {
        state = state.with(next);
    }

    void say(Message message) {
        said.add(message);
    }

    void say(List<Message> messages) {
        said.addAll(messages);
    }

    void doing(Effect effect) {
        effects.add(effect);
    }

    void understoodAs(Understood meaning) {
        understood = meaning;
    }

    /** Gives cautions: says them, and keeps that they were given. */
    void give(CautionNotice notice) {
        state = state.with(notice.given());
        said.addAll(notice.messages());
        cautions.addAll(notice.rules());
    }

    /** Closes the turn: speech first, then the other effects, then listening. */
    Turn turn(java.util.Optional<Effect.Listen> listen) {
        List<Effect> all = new ArrayList<>();
        if (!said.isEmpty()) {
            all.add(new Effect.Say(said));
            become(conversation().having(said));
        }
        all.addAll(effects);
        listen.ifPresent(all::add);
        return new Turn(state, all, new Turn.Outcome(understood, changes(), state.standing(), cautions));
    }

    private List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        before.sheet().answers().forEach((slot, answer) -> {
            if (!state.sheet().answers().containsKey(slot)) {
                changes.add(change(slot));
            }
        });
        state.sheet().answers().forEach((slot, answer) -> {
            if (!answer.equals(before.sheet().answers().get(slot))) {
                changes.add(change(slot));
            }
        });
        return changes;
    }

    private Change change(Slot slot) {
        return new Change(
                slot,
                before.sheet().answer(slot).map(Answer::content),
                state.sheet().answer(slot).map(Answer::content));
    }
}
