package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
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

    /** Heard at 10 dB of a synthetic voice, five times in one call: "three eighteen" as "three eighty eight". */
    @Test
    void a_correction_heard_as_the_value_that_stands_is_asked_about_as_what_else_it_may_be() {
        rehearsal.says("suction 60", "suction line 72", "liquid pressure 288");

        hears("correction liquid pressure two eighty eight", 0.8, "correction liquid pressure two eighteen");

        assertThat(rehearsal.shown()).contains("liquid pressure 218 psig, yes or no?");
        assertThat(taken(Quantity.LIQUID_PRESSURE)).get().isEqualTo(BigDecimal.valueOf(288));
        hears("yes", 0.98, "no");
        assertThat(taken(Quantity.LIQUID_PRESSURE)).get().isEqualTo(BigDecimal.valueOf(218));
    }

    @Test
    void corrections_that_leave_doubt_are_asked_about_by_their_values() {
        rehearsal.says("suction 60", "suction line 72", "liquid pressure 250");

        hears("correction liquid pressure two eighty", 0.5, "correction liquid pressure two eighteen");

        assertThat(rehearsal.shown()).contains("280 psig, or 218 psig?");
    }

    /** Told to take refrigerant out for the second time. */
    private static Rehearsal toldToRecover() {
        Rehearsal valve = new Rehearsal()
                .says("four fifty four b", "txv", "understood", "yes", "yes", "outdoor 86", "plate subcooling 10")
                .says("liquid pressure 342", "liquid line 86", "suction 127", "suction line 58", "no", "114 ounces")
                .says("yes", "understood", "5.5 ounces")
                .passes(Duration.ofMinutes(15));
        valve.happens(new Event.TimerElapsed(valve.now(), "settle"));
        valve.says("liquid pressure 329", "liquid line 86", "suction 126", "suction line 57");
        assertThat(valve.shown()).contains("recover");
        return valve;
    }

    @Test
    void decimals_said_before_the_next_question_can_be_heard_belong_to_the_value_before_them() {
        Rehearsal valve = toldToRecover();

        valve.hearsAtOnce(new Hypothesis("point five", 0.98, List.of()));

        assertThat(valve.state()
                        .sheet()
                        .reading(Quantity.SUCTION_LINE_TEMPERATURE)
                        .map(Reading::value))
                .contains(new BigDecimal("57.5"));
        assertThat(valve.state().sheet().reading(Quantity.REFRIGERANT_RECOVERED))
                .isEmpty();
    }

    /** "Four nine point zero, no, four eight point nine", of which the ear cut off "eight" behind the verdict. */
    @Test
    void nobody_moves_refrigerant_in_the_breath_that_brings_the_verdict() {
        Rehearsal valve = toldToRecover();

        valve.hearsAtOnce(new Hypothesis("eight", 0.99, List.of()));

        assertThat(valve.state().sheet().reading(Quantity.REFRIGERANT_RECOVERED))
                .isEmpty();
        assertThat(valve.state().conversation().pending()).get().isInstanceOf(Pending.Confirm.class);

        Rehearsal later = toldToRecover();
        later.hears(new Hypothesis("eight", 0.99, List.of()));
        assertThat(later.state().sheet().reading(Quantity.REFRIGERANT_RECOVERED))
                .isPresent();
    }

    @Test
    void decimals_and_their_correction_belong_to_the_value_before_them() {
        rehearsal.says("wet bulb 70");

        rehearsal.hearsAtOnce(new Hypothesis("point five i mean seven zero point six", 0.8, List.of()));

        assertThat(taken(Quantity.RETURN_WET_BULB)).contains(new BigDecimal("70.6"));
        assertThat(taken(Quantity.SUCTION_PRESSURE)).isEmpty();
    }

    @Test
    void a_value_finer_than_any_instrument_shows_is_asked_about_when_heard() {
        rehearsal.says("suction 60");

        rehearsal.hears(new Hypothesis("four nine point zero zero four", 0.9, List.of()));

        assertThat(taken(Quantity.SUCTION_LINE_TEMPERATURE)).isEmpty();
        assertThat(rehearsal.state().conversation().pending()).isPresent();
    }

    @Test
    void decimals_that_were_heard_weakly_are_asked_about() {
        rehearsal.says("suction 60", "suction line 72");

        rehearsal.hearsAtOnce(
                new Hypothesis("point five", 0.55, List.of()), new Hypothesis("point nine", 0.42, List.of()));

        assertThat(taken(Quantity.SUCTION_LINE_TEMPERATURE)).get().isEqualTo(BigDecimal.valueOf(72));
        assertThat(rehearsal.state().conversation().pending()).get().isInstanceOf(Pending.Confirm.class);
    }
}
