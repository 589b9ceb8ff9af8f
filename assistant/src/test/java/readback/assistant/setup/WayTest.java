package readback.assistant.setup;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class WayTest {

    @Test
    void a_step_that_nobody_takes_is_found_at_the_start() {
        List<SetupStep> menuAlone = List.of(new MenuStep());

        assertThatThrownBy(() -> new Way(menuAlone))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("MICROPHONE");
    }
}
