package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.grammar.Hypothesis;

class WeaklyHeardTest {

    private final Rehearsal rehearsal = new Rehearsal()
            .says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67", "suction 70");

    private void hears(String first, double share, String second) {
        rehearsal.hears(new Hypothesis(first, share, List.of()), new Hypothesis(second, 0.99 - share, List.of()));
    }

    @Test
    void a_weakly_heard_yes_confirms_no_unusual_value() {
        hears("yes", 0.55, "no");

        assertThat(rehearsal.state().sheet().reading(Quantity.SUCTION_PRESSURE)).isEmpty();
        assertThat(rehearsal.state().conversation().pending()).isPresent();
    }

    @Test
    void a_clear_yes_confirms_it() {
        hears("yes", 0.98, "no");

        assertThat(rehearsal.state().sheet().reading(Quantity.SUCTION_PRESSURE)).isPresent();
    }

    @Test
    void after_three_weak_answers_another_way_is_offered() {
        hears("yes", 0.55, "no");
        hears("yes", 0.55, "no");
        assertThat(rehearsal.keys()).doesNotContain("again.another-way");
        hears("yes", 0.55, "no");

        assertThat(rehearsal.keys()).contains("again.another-way");
    }
}
