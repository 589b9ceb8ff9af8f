package readback.assistant.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import readback.assistant.session.SteadyClock;

class PracticeTimeTest {

    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");

    private long real;

    private final PracticeTime time = new PracticeTime(Clock.fixed(MORNING, ZoneOffset.UTC), () -> real);
    private final SteadyClock clock = time.clock();

    private void passes(Duration really) {
        real += really.toNanos();
    }

    @Test
    void it_passes_as_fast_as_real_time_until_it_is_told_otherwise() {
        passes(Duration.ofSeconds(10));
        assertThat(clock.instant()).isEqualTo(MORNING.plusSeconds(10));

        time.pace(60);
        passes(Duration.ofSeconds(15));
        assertThat(clock.instant()).isEqualTo(MORNING.plusSeconds(10 + 900));

        time.pace(1);
        passes(Duration.ofSeconds(5));
        assertThat(clock.instant()).isEqualTo(MORNING.plusSeconds(10 + 900 + 5));
    }

    @Test
    void a_leap_is_over_at_once_and_is_no_clock_that_was_set() {
        time.leap(Duration.ofMinutes(15));

        assertThat(clock.instant()).isEqualTo(MORNING.plus(Duration.ofMinutes(15)));
        assertThat(clock.changed()).isEmpty();
    }
}
