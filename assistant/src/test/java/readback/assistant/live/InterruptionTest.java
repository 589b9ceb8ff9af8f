package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class InterruptionTest {
    private static final long SECOND = 1_000_000_000;
    private static final long START = 5 * SECOND;

    private final Interruption interruption = new Interruption();

    @Test
    void what_a_passer_by_cut_short_is_said_again_once_he_is_quiet() {
        interruption.cut(List.of("Add two ounces.", "Then wait."));
        assertThat(interruption.due(true, START)).isEmpty();
        assertThat(interruption.due(true, START + 4 * SECOND)).isEmpty();
        assertThat(interruption.due(false, START + 5 * SECOND)).isEmpty();

        assertThat(interruption.due(false, START + 6 * SECOND)).contains(List.of("Add two ounces.", "Then wait."));
        assertThat(interruption.due(false, START + 9 * SECOND))
                .as("it is said once")
                .isEmpty();
    }

    @Test
    void what_was_cut_short_by_an_order_is_not_said_again() {
        interruption.cut(List.of("Add two ounces."));
        assertThat(interruption.due(false, START)).isEmpty();

        interruption.meant();

        assertThat(interruption.due(false, START + 9 * SECOND)).isEmpty();
    }

    @Test
    void silencing_it_twice_loses_nothing() {
        interruption.cut(List.of("Add two ounces."));

        interruption.cut(List.of());

        assertThat(interruption.due(false, START)).isEmpty();
        assertThat(interruption.due(false, START + 2 * SECOND)).contains(List.of("Add two ounces."));
    }
}
