package readback.assistant.recorded;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed without warning. {@link KillRepeatedly} does the same a thousand times. */
@Tag("slow")
class KillTest {

    /**
     * The same moments in the work of each process, as far as the machine is as quick; a failure can be tried again.
     */
    private static final long START = 20261128;

    @Test
    void nothing_answered_is_lost_when_the_process_is_killed_and_the_session_goes_on(@TempDir Path sessions)
            throws Exception {
        KillRepeatedly.Outcome outcome = KillRepeatedly.run(sessions, 5, START);
        assertThat(outcome.kills()).as("start number %d", START).isEqualTo(5);
        assertThat(outcome.acknowledged())
                .as("answers checked against the record, start number %d", START)
                .isPositive();
    }
}
