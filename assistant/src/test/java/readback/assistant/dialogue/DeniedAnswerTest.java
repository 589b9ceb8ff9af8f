package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/** "No" where no yes or no was asked for: it denies what was read back in the same breath as the question. */
class DeniedAnswerTest {

    private final Rehearsal rehearsal = new Rehearsal().says("r 22", "piston", "understood", "yes", "yes");

    private Optional<BigDecimal> taken(Quantity quantity) {
        return rehearsal.state().sheet().reading(quantity).map(Reading::value);
    }

    private String asked() {
        return step(rehearsal);
    }

    private static String step(Rehearsal rehearsal) {
        return Rehearsal.DIALOGUE.expectation(rehearsal.state()).step();
    }

    @Test
    void a_value_that_was_read_back_is_asked_for_again() {
        rehearsal.says("outdoor 95", "no");

        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).isEmpty();
        assertThat(rehearsal.shown()).contains("Scratched: outdoor.");
        assertThat(asked()).isEqualTo("outdoor-temperature");
        rehearsal.says("85");
        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).contains(new BigDecimal("85"));
    }

    @Test
    void so_is_an_option() {
        Rehearsal fresh = new Rehearsal().says("r 22", "no");

        assertThat(step(fresh)).isEqualTo("refrigerant");
    }

    @Test
    void of_a_correction_that_was_misheard_neither_value_stays() {
        rehearsal.says("outdoor 95", "correction 96", "no");

        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).isEmpty();
    }

    @Test
    void of_two_values_it_does_not_say_which() {
        rehearsal.says("outdoor 95 wet bulb 66", "no");

        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).contains(new BigDecimal("95"));
        assertThat(taken(Quantity.RETURN_WET_BULB)).contains(new BigDecimal("66"));
        assertThat(rehearsal.shown()).contains("To change a value, say correction and the right value.");
    }

    @Test
    void after_something_else_was_said_it_denies_nothing() {
        rehearsal.says("outdoor 95", "why", "no");

        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).contains(new BigDecimal("95"));
    }

    @Test
    void after_a_verdict_it_is_not_known_what_it_denies() {
        rehearsal.says("outdoor 95", "wet bulb 66", "suction 68", "suction line 52");
        assertThat(rehearsal.state().told(Judged.CHARGE)).isTrue();

        rehearsal.says("no");

        assertThat(taken(Quantity.SUCTION_LINE_TEMPERATURE)).contains(new BigDecimal("52"));
    }

    @Test
    void the_right_value_corrects_the_one_that_is_asked_about_and_not_the_one_before() {
        rehearsal.says("outdoor 95", "suction pressure 12", "make that 66");

        assertThat(taken(Quantity.SUCTION_PRESSURE)).contains(new BigDecimal("66"));
        assertThat(taken(Quantity.OUTDOOR_TEMPERATURE)).contains(new BigDecimal("95"));
        assertThat(rehearsal.state().conversation().pending()).isEmpty();
    }

    @Test
    void skip_the_wait_skips_no_question_where_nothing_is_awaited() {
        rehearsal.says("skip the wait");

        assertThat(asked()).isEqualTo("outdoor-temperature");
        assertThat(rehearsal.state().sheet().answer(Slot.of(Quantity.OUTDOOR_TEMPERATURE)))
                .isEmpty();
    }
}
