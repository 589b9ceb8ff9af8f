package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.charge.Settling.Sample;
import readback.calc.charge.Settling.Steadiness;
import readback.calc.quantity.TemperatureDifference;

/** Limits: common practice, no source. */
class SettlingTest {

    @Test
    void a_value_that_stays_is_steady() {
        assertThat(settling(12.0, 12.1, 11.9, 12.0, 12.1, 12.0).steadiness()).isEqualTo(Steadiness.STEADY);
    }

    @Test
    void a_value_that_falls_by_half_a_degree_a_minute_is_still_drifting() {
        Settling settling = settling(20.0, 19.5, 19.0, 18.5, 18.0, 17.5);

        assertThat(settling.steadiness()).isEqualTo(Steadiness.DRIFTING);
        assertThat(settling.perMinute().fahrenheit()).isCloseTo(-0.5, within(1e-9));
        assertThat(settling.scatter().fahrenheit()).isCloseTo(0, within(1e-6));
    }

    /** Common practice: a hunting valve is judged by its mean, never by one sample. */
    @Test
    void regular_swings_of_more_than_three_degrees_are_hunting() {
        assertThat(settling(6, 14, 6, 14, 6, 14).steadiness()).isEqualTo(Steadiness.HUNTING);
        assertThat(settling(9, 11, 9, 11, 9, 11).steadiness()).isNotEqualTo(Steadiness.HUNTING);
    }

    @Test
    void scatter_in_which_a_trend_could_hide_is_unclear() {
        assertThat(settling(10, 12, 11, 9, 12, 10).steadiness()).isEqualTo(Steadiness.UNCLEAR);
    }

    @Test
    void three_samples_or_a_single_minute_are_too_few() {
        assertThat(settling(12, 12, 12).steadiness()).isEqualTo(Steadiness.TOO_FEW);
        assertThat(settling().steadiness()).isEqualTo(Steadiness.TOO_FEW);
        assertThat(Settling.of(List.of(at(0, 12), at(20, 12), at(40, 12), at(60, 12)))
                        .steadiness())
                .isEqualTo(Steadiness.TOO_FEW);
        assertThat(Settling.of(List.of(at(0, 12), at(40, 12), at(80, 12), at(120, 12)))
                        .steadiness())
                .isEqualTo(Steadiness.STEADY);
    }

    /** By hand, a line through 0, 1, 0, 1 at unit steps: slope 0.2, residual variance 0.4, standard error √(0.4/5). */
    @Test
    void slope_and_scatter_are_those_of_least_squares() {
        Settling settling = settling(0, 1, 0, 1);

        assertThat(settling.perMinute().fahrenheit()).isCloseTo(0.2, within(1e-9));
        assertThat(settling.scatter().fahrenheit()).isCloseTo(Math.sqrt(0.4), within(1e-9));
        assertThat(settling.slopeUncertainty().fahrenheit()).isCloseTo(Math.sqrt(0.4 / 5), within(1e-9));
    }

    @Test
    void uneven_times_count_as_they_are() {
        Settling settling = Settling.of(List.of(at(0, 10), at(60, 11), at(240, 14), at(300, 15)));

        assertThat(settling.perMinute().fahrenheit()).isCloseTo(1, within(1e-9));
        assertThat(settling.scatter().fahrenheit()).isCloseTo(0, within(1e-6));
        assertThat(settling.steadiness()).isEqualTo(Steadiness.DRIFTING);
    }

    @Test
    void a_tenth_of_a_degree_a_minute_is_where_drifting_begins() {
        assertThat(settling(10, 10.09, 10.18, 10.27, 10.36).steadiness()).isEqualTo(Steadiness.STEADY);
        assertThat(settling(10, 10.11, 10.22, 10.33, 10.44).steadiness()).isEqualTo(Steadiness.DRIFTING);
        assertThat(settling(10.44, 10.33, 10.22, 10.11, 10).steadiness()).isEqualTo(Steadiness.DRIFTING);
    }

    @Test
    void a_single_jump_is_not_hunting() {
        assertThat(settling(10, 10, 20, 10, 10).steadiness()).isNotEqualTo(Steadiness.HUNTING);
    }

    @Test
    void the_order_in_which_samples_come_makes_no_difference() {
        List<Sample> samples =
                new ArrayList<>(List.of(at(0, 20), at(60, 19), at(120, 18.2), at(180, 17.1), at(240, 16)));
        Settling inOrder = Settling.of(samples);
        Collections.reverse(samples);

        assertThat(Settling.of(samples)).isEqualTo(inOrder);
    }

    private static Settling settling(double... onePerMinute) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < onePerMinute.length; i++) {
            samples.add(at(60L * i, onePerMinute[i]));
        }
        return Settling.of(samples);
    }

    private static Sample at(long seconds, double fahrenheit) {
        return new Sample(Duration.ofSeconds(seconds), TemperatureDifference.fahrenheit(fahrenheit));
    }
}
