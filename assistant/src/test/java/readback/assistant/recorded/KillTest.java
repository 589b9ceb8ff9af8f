package readback.assistant.recorded;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed without warning. {@link KillRepeatedly} does the same a thousand times. */
@Tag("slow")
class KillTest {

    @Test
    void nothing_answered_is_lost_when_the_process_is_killed_and_the_session_goes_on(@TempDir Path sessions)
            throws Exception {
        long seed = System.nanoTime();
        System.out.println("kill seed " + seed);
        KillRepeatedly.Outcome outcome = KillRepeatedly.run(sessions, 5, seed);
        assertThat(outcome.kills()).isEqualTo(5);
        assertThat(outcome.acknowledged())
                .as("answers checked against the record")
                .isPositive();
    }
}
