package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SheetTest {

    private static final Answer FIRST = new Answer.Option(Instant.EPOCH, "first");
    private static final Answer SECOND = new Answer.Option(Instant.EPOCH, "second");

    @Test
    void undoing_goes_back_change_by_change_to_the_empty_sheet() {
        Sheet one = Sheet.EMPTY.with("a", FIRST);
        Sheet two = one.with("b", FIRST);
        Sheet three = two.with("a", SECOND).without("b");

        assertThat(three.undone().undone()).isEqualTo(two);
        assertThat(three.undone().undone().undone()).isEqualTo(one).hasSameHashCodeAs(one);
        assertThat(one.undone()).isEqualTo(Sheet.EMPTY);
        assertThat(Sheet.EMPTY.undone()).isEqualTo(Sheet.EMPTY);
    }

    @Test
    void sheets_with_other_histories_differ() {
        assertThat(Sheet.EMPTY.with("a", SECOND).with("a", FIRST)).isNotEqualTo(Sheet.EMPTY.with("a", FIRST));
    }

    @Test
    void what_time_filled_is_not_what_was_said_last() {
        Sheet sheet = Sheet.EMPTY.with("amount", FIRST).passed("settle", SECOND);

        assertThat(sheet.answer("settle")).contains(SECOND);
        assertThat(sheet.undone().answer("amount")).isEmpty();
        assertThat(sheet.undone().answer("settle")).contains(SECOND);
    }

    @Test
    void another_round_begins_with_nothing_to_take_back() {
        Sheet sheet = Sheet.EMPTY.with("plate", FIRST).with("suction", FIRST).withoutAll(Set.of("suction"));

        assertThat(sheet.answers()).containsOnlyKeys("plate");
        assertThat(sheet.last()).isEmpty();
    }

    @Test
    void a_very_long_history_is_compared_without_trouble() {
        Sheet left = Sheet.EMPTY;
        Sheet right = Sheet.EMPTY;
        for (int i = 0; i < 100_000; i++) {
            left = left.with("a", i % 2 == 0 ? FIRST : SECOND);
            right = right.with("a", i % 2 == 0 ? FIRST : SECOND);
        }

        assertThat(left).isEqualTo(right).hasSameHashCodeAs(right);
    }
}
