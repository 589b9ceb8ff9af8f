package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Step;

/**
 * What is known: the answers by slot, in the order they were given, and every change that led there. Immutable.
 *
 * @param answers by slot
 * @param history oldest first; undoing takes from the end
 */
public record Sheet(Map<String, Answer> answers, List<Change> history) {

    /** One slot before and after. */
    public record Change(String slot, Optional<Answer> before, Optional<Answer> after) {}

    static final Sheet EMPTY = new Sheet(Map.of(), List.of());

    public Sheet {
        answers = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        history = List.copyOf(history);
    }

    /** What fills the slot now. */
    public Optional<Answer> answer(String slot) {
        return Optional.ofNullable(answers.get(slot));
    }

    Optional<Reading> reading(Quantity quantity) {
        return answer(Step.slotOf(quantity)).flatMap(Sheet::readingOf);
    }

    Optional<String> option(String slot) {
        return answer(slot).filter(Answer.Option.class::isInstance).map(answer -> ((Answer.Option) answer).option());
    }

    /** All values, in the order in which they were first given. */
    Stream<Answer.Value> values() {
        return answers.values().stream().filter(Answer.Value.class::isInstance).map(Answer.Value.class::cast);
    }

    Sheet with(String slot, Answer answer) {
        return changed(slot, Optional.of(answer));
    }

    Sheet without(String slot) {
        return answers.containsKey(slot) ? changed(slot, Optional.empty()) : this;
    }

    /** Clears slots for another round of measurements; the history keeps what was there. */
    Sheet withoutAll(Set<String> slots) {
        Sheet sheet = this;
        for (String slot : slots) {
            sheet = sheet.without(slot);
        }
        return sheet;
    }

    /** The last change that can be undone. */
    Optional<Change> last() {
        return history.isEmpty() ? Optional.empty() : Optional.of(history.get(history.size() - 1));
    }

    /** The quantity of the value given last, if the last change gave one. */
    Optional<Quantity> lastQuantity() {
        return last().flatMap(Change::after).flatMap(Sheet::readingOf).map(Reading::quantity);
    }

    /** As it was before the last change. */
    Sheet undone() {
        Change change = history.get(history.size() - 1);
        Map<String, Answer> back = new LinkedHashMap<>(answers);
        change.before().ifPresentOrElse(before -> back.put(change.slot(), before), () -> back.remove(change.slot()));
        return new Sheet(back, history.subList(0, history.size() - 1));
    }

    private Sheet changed(String slot, Optional<Answer> after) {
        Map<String, Answer> next = new LinkedHashMap<>(answers);
        after.ifPresentOrElse(answer -> next.put(slot, answer), () -> next.remove(slot));
        List<Change> longer = new ArrayList<>(history);
        longer.add(new Change(slot, answer(slot), after));
        return new Sheet(next, longer);
    }

    static Optional<Reading> readingOf(Answer answer) {
        return answer instanceof Answer.Value value ? Optional.of(value.reading()) : Optional.empty();
    }
}
