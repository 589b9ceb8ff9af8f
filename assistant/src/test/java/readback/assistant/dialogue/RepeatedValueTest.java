package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Hypothesis;

/**
 * What was heard in whole calls by voice beside a fan at 5 dB: the same words are easily misheard the same way again.
 */
class RepeatedValueTest {

    private final Rehearsal rehearsal =
            new Rehearsal().says("r 22", "piston", "understood", "yes", "yes", "outdoor 75.9", "wet bulb 70.7");

    private void hears(String first, double share, String second) {
        rehearsal.hears(new Hypothesis(first, share, List.of()), new Hypothesis(second, 0.99 - share, List.of()));
    }

    private Optional<BigDecimal> taken(Quantity quantity) {
        return rehearsal.state().sheet().reading(quantity).map(Reading::value);
    }

    /** A liquid pressure below the suction pressure; "five" is often heard as "psi". */
    private void isAskedWhetherSeventeenOrMore() {
        rehearsal.says("suction 60", "suction line 72");
        hears("one seven psi", 0.86, "one seven size");
        assertThat(rehearsal.shown()).contains("17 psig, or 175 psig?");
    }

    @Test
    void of_two_values_the_one_that_something_speaks_against_is_still_asked_about() {
        isAskedWhetherSeventeenOrMore();

        hears("liquid pressure one seven psi", 0.97, "liquid pressure one seventy psi");

        assertThat(taken(Quantity.LIQUID_PRESSURE)).isEmpty();
        assertThat(rehearsal.state().conversation().pending()).get().isInstanceOf(Pending.Confirm.class);
    }

    @Test
    void said_again_and_again_it_is_not_taken_without_a_yes() {
        isAskedWhetherSeventeenOrMore();

        hears("liquid pressure one seven psi", 0.97, "liquid pressure one seventy psi");
        hears("liquid pressure one seven psi", 0.97, "liquid pressure one seventy psi");
        assertThat(taken(Quantity.LIQUID_PRESSURE)).isEmpty();

        hears("yes", 0.98, "no");
        assertThat(taken(Quantity.LIQUID_PRESSURE)).get().isEqualTo(BigDecimal.valueOf(17));
    }

    @Test
    void the_one_that_was_meant_is_taken_at_once() {
        isAskedWhetherSeventeenOrMore();

        rehearsal.hears(new Hypothesis("liquid pressure one seventy five", 0.98, List.of()));

        assertThat(taken(Quantity.LIQUID_PRESSURE)).get().isEqualTo(BigDecimal.valueOf(175));
    }

    @Test
    void a_weak_word_does_not_settle_which_of_two_was_meant() {
        rehearsal.says("suction 60");
        hears("fifty five point two", 0.6, "fifty five point three");
        assertThat(rehearsal.state().conversation().pending()).get().isInstanceOf(Pending.Between.class);

        rehearsal.hears(
                new Hypothesis("suction line size five point two", 0.46, List.of()),
                new Hypothesis("suction line fifty five point two", 0.3, List.of()));
        assertThat(rehearsal.shown()).contains("suction line 55.2 °F, yes or no?");
        assertThat(taken(Quantity.SUCTION_LINE_TEMPERATURE)).isEmpty();

        rehearsal.hears(new Hypothesis("suction line fifty five point two", 0.98, List.of()));
        assertThat(taken(Quantity.SUCTION_LINE_TEMPERATURE)).get().isEqualTo(new BigDecimal("55.2"));
    }
}
