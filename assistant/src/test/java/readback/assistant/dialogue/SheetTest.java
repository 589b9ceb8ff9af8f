package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;
import readback.prompts.checklist.Slot;

class SheetTest {

    private static final Answer FIRST = new Answer.Option(Instant.EPOCH, "first");
    private static final Answer SECOND = new Answer.Option(Instant.EPOCH, "second");

    @Test
    void undoing_goes_back_change_by_change_to_the_empty_sheet() {
        Sheet one = Sheet.EMPTY.with(slot("a"), FIRST);
        Sheet two = one.with(slot("b"), FIRST);
        Sheet three = two.with(slot("a"), SECOND).without(slot("b"));

        assertThat(three.undone().undone()).isEqualTo(two);
        assertThat(three.undone().undone().undone()).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(one.undone()).isEqualTo(Sheet.EMPTY);
        assertThat(Sheet.EMPTY.undone()).isEqualTo(Sheet.EMPTY);
    }

    @Test
    void sheets_with_other_histories_differ() {
        assertThat(Sheet.EMPTY.with(slot("a"), SECOND).with(slot("a"), FIRST))
                .isNotEqualTo(Sheet.EMPTY.with(slot("a"), FIRST));
    }

    @Test
    void what_time_filled_is_not_what_was_said_last() {
        Sheet sheet = Sheet.EMPTY.with(slot("amount"), FIRST).passed(slot("settle"), SECOND);

        assertThat(sheet.answer(slot("settle"))).contains(SECOND);
        assertThat(sheet.undone().answer(slot("amount"))).isEmpty();
        assertThat(sheet.undone().answer(slot("settle"))).contains(SECOND);
    }

    @Test
    void another_round_begins_with_nothing_to_take_back() {
        Sheet sheet = Sheet.EMPTY
                .with(slot("plate"), FIRST)
                .with(slot("suction"), FIRST)
                .withoutAll(Set.of(slot("suction")));

        assertThat(sheet.answers()).containsOnlyKeys(slot("plate"));
        assertThat(sheet.last()).isEmpty();
    }

    @Test
    void a_very_long_history_is_compared_without_trouble() {
        Sheet left = Sheet.EMPTY;
        Sheet right = Sheet.EMPTY;
        for (int i = 0; i < 100_000; i++) {
            left = left.with(slot("a"), i % 2 == 0 ? FIRST : SECOND);
            right = right.with(slot("a"), i % 2 == 0 ? FIRST : SECOND);
        }

        assertThat(left).isEqualTo(right).hasSameHashCodeAs(right);
    }

    private static Slot slot(String id) {
        return new Slot(id);
    }
}
