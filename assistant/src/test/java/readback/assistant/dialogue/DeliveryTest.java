package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The limits are those of the options: a volume of 0 to 2, a speed of 0.5 to 2. */
class DeliveryTest {

    private static Delivery often(Delivery from, UnaryOperator<Delivery> step) {
        Delivery now = from;
        for (int i = 0; i < 20; i++) {
            now = step.apply(now);
        }
        return now;
    }

    @Test
    void steps_end_at_the_limits() {
        assertThat(often(Delivery.PLAIN, Delivery::louder)).isEqualTo(new Delivery(200, 100));
        assertThat(often(Delivery.PLAIN, Delivery::faster)).isEqualTo(new Delivery(100, 200));
        assertThat(often(Delivery.PLAIN, Delivery::slower)).isEqualTo(new Delivery(100, 50));
    }

    @Test
    void the_quietest_is_still_heard() {
        assertThat(often(Delivery.PLAIN, Delivery::quieter)).isEqualTo(new Delivery(20, 100));
    }

    @Test
    void a_voice_that_was_set_silent_stays_so_until_it_is_asked_to_be_louder() {
        Delivery silent = new Delivery(0, 100);

        assertThat(silent.quieter()).isEqualTo(silent);
        assertThat(silent.louder()).isEqualTo(new Delivery(20, 100));
    }

    @Test
    void a_step_back_undoes_a_step() {
        assertThat(Delivery.PLAIN.louder().quieter()).isEqualTo(Delivery.PLAIN);
        assertThat(Delivery.PLAIN.slower().faster()).isEqualTo(Delivery.PLAIN);
    }

    @Test
    void nothing_beyond_the_limits_is_a_delivery() {
        assertThatThrownBy(() -> new Delivery(201, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Delivery(100, 49)).isInstanceOf(IllegalArgumentException.class);
    }
}
