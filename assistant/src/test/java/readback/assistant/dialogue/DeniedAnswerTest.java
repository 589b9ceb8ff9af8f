package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Judged;

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
    void an_amount_that_was_moved_is_asked_for_again() {
        Rehearsal valve = new Rehearsal()
                .says("four fifty four b", "txv", "understood", "yes", "yes", "outdoor 86", "plate subcooling 10")
                .says("liquid pressure 342", "liquid line 86", "suction 127", "suction line 58", "no", "114 ounces")
                .says("yes", "understood", "55 ounces");
        assertThat(valve.state().sheet().reading(Quantity.REFRIGERANT_RECOVERED))
                .isPresent();

        valve.says("no");

        assertThat(valve.state().sheet().reading(Quantity.REFRIGERANT_RECOVERED))
                .isEmpty();
        assertThat(step(valve)).isEqualTo("amount-recovered");
    }

    /** "Target subcooling on the rating plate?" "No." */
    @Test
    void where_there_may_be_nothing_to_read_it_denies_nothing() {
        Rehearsal valve = new Rehearsal().says("r 22", "txv", "understood", "yes", "yes", "outdoor 95", "no");

        assertThat(valve.state().sheet().reading(Quantity.OUTDOOR_TEMPERATURE)).isPresent();
        assertThat(valve.shown()).contains("Say skip to go on without it.");
    }

    @Test
    void who_is_not_ready_denies_nothing() {
        Rehearsal fresh = new Rehearsal().says("r 22", "piston", "txv", "no");

        assertThat(fresh.state().sheet().option(Slots.METERING_DEVICE)).contains("thermostatic-expansion-valve");
    }

    @Test
    void what_is_scratched_or_read_again_by_its_name_is_found_in_the_slot_of_its_step() {
        Rehearsal vacuum = new Rehearsal().says("start evacuation", "understood", "skip", "vacuum 250");

        vacuum.says("say again vacuum");
        assertThat(vacuum.shown()).contains("250 micron");
        vacuum.says("scratch vacuum");

        assertThat(vacuum.state().sheet().answer(Slots.VACUUM_ISOLATED)).isEmpty();
    }

    /** A reading of a step whose slot is not that of its quantity. */
    @Test
    void the_slot_that_was_filled_is_emptied() {
        Rehearsal vacuum = new Rehearsal().says("start evacuation", "understood", "skip", "vacuum 250");
        assertThat(vacuum.state().sheet().answer(Slots.VACUUM_ISOLATED)).isPresent();

        vacuum.says("no");

        assertThat(vacuum.state().sheet().answer(Slots.VACUUM_ISOLATED)).isEmpty();
        assertThat(step(vacuum)).isEqualTo("vacuum-isolated");
    }
}
