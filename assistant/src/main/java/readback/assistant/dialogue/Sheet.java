package readback.assistant.dialogue;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Slot;

/**
 * What is known: the answers by slot, in the order they were given, and every change that led there. Immutable.
 *
 * @param answers by slot
 * @param history the changes that led here; undoing takes the latest back
 */
public record Sheet(Map<Slot, Answer> answers, History history) {

    static final Sheet EMPTY = new Sheet(Map.of(), History.NONE);

    public Sheet {
        answers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /** What fills the slot now. */
    public Optional<Answer> answer(Slot slot) {
        return Optional.ofNullable(answers.get(slot));
    }

    public Optional<Reading> reading(Quantity quantity) {
        return reading(Slot.of(quantity));
    }

    /** The value in the slot, if it holds one. */
    Optional<Reading> reading(Slot slot) {
        return answer(slot).flatMap(Sheet::readingOf);
    }

    /** The wait that is over in this slot. */
    Optional<Answer.Passed> waited(Slot slot) {
        return answer(slot).filter(Answer.Passed.class::isInstance).map(Answer.Passed.class::cast);
    }

    /** The slot that holds the value of the quantity, the later one where several steps measure it. */
    Slot slotOf(Quantity quantity) {
        return answers.entrySet().stream()
                .filter(entry -> readingOf(entry.getValue())
                        .filter(reading -> reading.quantity() == quantity)
                        .isPresent())
                .map(Map.Entry::getKey)
                .reduce((earlier, later) -> later)
                .orElseGet(() -> Slot.of(quantity));
    }

    Optional<String> option(Slot slot) {
        return answer(slot).filter(Answer.Option.class::isInstance).map(answer -> ((Answer.Option) answer).option());
    }

    /** All values, in the order in which they were first given. */
    Stream<Answer.Value> values() {
        return answers.values().stream().filter(Answer.Value.class::isInstance).map(Answer.Value.class::cast);
    }

    Sheet with(Slot slot, Answer answer) {
        return changed(slot, Optional.of(answer));
    }

    Sheet without(Slot slot) {
        return answers.containsKey(slot) ? changed(slot, Optional.empty()) : this;
    }

    /** Filled by time, not by the technician: "scratch that" does not mean it. */
    Sheet passed(Slot slot, Answer answer) {
        Map<Slot, Answer> next = new LinkedHashMap<>(answers);
        next.put(slot, answer);
        return new Sheet(next, history);
    }

    /** Cleared for another round of measurements. What was acted on is not taken back any more. */
    Sheet withoutAll(Set<Slot> slots) {
        Map<Slot, Answer> next = new LinkedHashMap<>(answers);
        next.keySet().removeAll(slots);
        return new Sheet(next, History.NONE);
    }

    /** The last change that can be undone. */
    Optional<History.Edit> last() {
        return history.latest();
    }

    /** The value given last, if the last change gave one. */
    Optional<Reading> lastReading() {
        return last().flatMap(History.Edit::after).flatMap(Sheet::readingOf);
    }

    /** As it was before the last change; as it is when there was none. */
    Sheet undone() {
        return last().map(this::without).orElse(this);
    }

    /** When the slot was first filled, however often its value was corrected since; empty while it is not filled. */
    Optional<Instant> firstGiven(Slot slot) {
        Optional<Instant> given = answer(slot).map(Answer::at);
        for (History at = history; at.latest().isPresent(); at = at.earlier()) {
            History.Edit change = at.latest().get();
            if (change.slot().equals(slot)) {
                given = change.after().map(Answer::at);
                if (change.before().isEmpty()) {
                    break;
                }
            }
        }
        return given;
    }

    private Sheet without(History.Edit change) {
        Map<Slot, Answer> back = new LinkedHashMap<>(answers);
        change.before().ifPresentOrElse(before -> back.put(change.slot(), before), () -> back.remove(change.slot()));
        return new Sheet(back, history.earlier());
    }

    private Sheet changed(Slot slot, Optional<Answer> after) {
        Map<Slot, Answer> next = new LinkedHashMap<>(answers);
        after.ifPresentOrElse(answer -> next.put(slot, answer), () -> next.remove(slot));
        return new Sheet(next, history.and(new History.Edit(slot, answer(slot), after)));
    }

    static Optional<Reading> readingOf(Answer answer) {
        return answer instanceof Answer.Value value ? Optional.of(value.reading()) : Optional.empty();
    }
}
