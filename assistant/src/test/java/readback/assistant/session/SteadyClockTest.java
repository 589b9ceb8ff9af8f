package readback.assistant.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class SteadyClockTest {

    private static final Instant NINE = Instant.parse("2026-07-14T09:00:00Z");

    private Duration passed = Duration.ZERO;
    private Duration setBy = Duration.ZERO;
    private final SteadyClock clock = SteadyClock.from(wall(), () -> passed.toNanos());

    /** The clock on the wall: it goes, and somebody sets it. */
    private Clock wall() {
        Clock wall = mock(Clock.class);
        when(wall.instant()).then(call -> NINE.plus(passed).plus(setBy));
        return wall;
    }

    @Test
    void it_begins_with_the_wall_clock_and_counts_what_passes() {
        passed = Duration.ofMinutes(15);

        assertThat(clock.instant()).isEqualTo(NINE.plus(Duration.ofMinutes(15)));
        assertThat(clock.changed()).isEmpty();
    }

    @Test
    void a_wall_clock_that_is_set_back_or_forward_does_not_move_it_and_is_told_once() {
        passed = Duration.ofMinutes(5);
        setBy = Duration.ofHours(-2);
        assertThat(clock.instant()).isEqualTo(NINE.plus(Duration.ofMinutes(5)));
        assertThat(clock.changed()).contains(Duration.ofHours(-2));
        assertThat(clock.changed()).isEmpty();

        setBy = Duration.ofHours(1);
        assertThat(clock.instant()).isEqualTo(NINE.plus(Duration.ofMinutes(5)));
        assertThat(clock.changed()).contains(Duration.ofHours(3));
    }

    @Test
    void a_wall_clock_that_is_kept_right_by_seconds_is_no_change_until_they_add_up() {
        setBy = Duration.ofSeconds(6);
        assertThat(clock.changed()).isEmpty();
        setBy = Duration.ofSeconds(12);
        assertThat(clock.changed()).contains(Duration.ofSeconds(12));
    }

    @Test
    void the_next_process_goes_on_in_the_time_of_the_session() {
        setBy = Duration.ofHours(2);
        SteadyClock next = SteadyClock.from(wall(), () -> passed.toNanos());

        next.goOnAs(Duration.ofHours(2));

        assertThat(next.instant()).isEqualTo(NINE);
        assertThat(next.changed()).isEmpty();
    }
}
