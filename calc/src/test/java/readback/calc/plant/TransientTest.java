package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Mass;

/** The way to where a unit settles. */
class TransientTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    @Test
    void it_starts_with_equal_pressures_and_pulls_down() {
        Transient start = Transient.started(Built.PISTON, Weather.RATING, FaultSet.none());
        Transient later = start.after(MINUTE);

        assertThat(start.now().suctionPressure()).isEqualTo(start.now().liquidPressure());
        assertThat(later.now().suctionPressure()).isLessThan(start.now().suctionPressure());
        assertThat(later.now().liquidPressure()).isGreaterThan(start.now().liquidPressure());
    }

    /** California Energy Commission RA3.2.2: fifteen minutes of running before readings are taken. */
    @Test
    void after_fifteen_minutes_the_readings_are_good_and_after_three_they_are_not() {
        Transient start = Transient.started(Built.PISTON, Weather.RATING, FaultSet.none());
        Measurands steady = start.steady().running().orElseThrow().at();

        assertThat(start.after(Duration.ofMinutes(15)).now().suctionLine().fahrenheit())
                .isCloseTo(steady.suctionLine().fahrenheit(), within(0.5));
        assertThat(Math.abs(
                        start.after(Duration.ofMinutes(3)).now().suctionLine().fahrenheit()
                                - steady.suctionLine().fahrenheit()))
                .isGreaterThan(5);
    }

    @Test
    void two_steps_of_time_are_as_good_as_one() {
        Transient start = Transient.started(Built.VALVE, Weather.RATING, FaultSet.none());

        assertThat(start.after(MINUTE).after(MINUTE).now().liquidPressure().pascals())
                .isCloseTo(
                        start.after(MINUTE.plus(MINUTE)).now().liquidPressure().pascals(), within(1e-3));
    }

    @Test
    void added_charge_works_after_a_minute_and_raises_subcooling_in_the_end() {
        Transient low = Transient.started(Built.VALVE, Weather.RATING, FaultSet.of(PlantFault.UNDERCHARGE, 0.1))
                .after(Duration.ofMinutes(20));
        Transient charged = low.moved(Mass.ounces(10.6));

        assertThat(charged.after(Duration.ofSeconds(59)).steady()).isEqualTo(low.steady());
        OperatingPoint.Running settled =
                charged.after(Duration.ofMinutes(15)).steady().running().orElseThrow();
        assertThat(settled.subcooling().fahrenheit())
                .isCloseTo(Built.VALVE.plate().subcooling().fahrenheit(), within(0.1));
        assertThat(charged.after(Duration.ofMinutes(15)).now().liquidPressure())
                .isGreaterThan(low.now().liquidPressure());
    }

    @Test
    void what_was_added_can_be_taken_out_again() {
        Transient start = Transient.started(Built.VALVE, Weather.RATING, FaultSet.none());
        Transient back = start.moved(Mass.ounces(8))
                .after(Duration.ofMinutes(5))
                .moved(Mass.ounces(-8))
                .after(Duration.ofMinutes(5));

        assertThat(back.steady().running().orElseThrow().subcooling().fahrenheit())
                .isCloseTo(start.steady().running().orElseThrow().subcooling().fahrenheit(), within(0.01));
    }

    @Test
    void more_cannot_be_taken_out_than_half_the_charge() {
        Transient start = Transient.started(Built.VALVE, Weather.RATING, FaultSet.none());
        Mass charge = Built.VALVE.plate().charge();

        assertThat(start.moved(charge.times(-0.9)).after(MINUTE).steady())
                .isEqualTo(start.moved(charge.times(-0.6)).after(MINUTE).steady());
    }

    @Test
    void time_does_not_go_backwards() {
        Transient start = Transient.started(Built.VALVE, Weather.RATING, FaultSet.none());

        assertThatThrownBy(() -> start.after(Duration.ofSeconds(-1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_hunting_valve_swings_about_its_mean() {
        Transient hunting = Transient.started(Built.VALVE, Weather.RATING, FaultSet.of(PlantFault.VALVE_HUNTING, 0.3))
                .after(Duration.ofMinutes(30));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int second = 0; second < 120; second++) {
            Measurands now = hunting.after(Duration.ofSeconds(second)).now();
            double superheat = now.suctionLine().fahrenheit()
                    - Built.VALVE
                            .plate()
                            .refrigerant()
                            .dewTemperature(now.suctionPressure())
                            .fahrenheit();
            least = Math.min(least, superheat);
            most = Math.max(most, superheat);
        }
        assertThat(most - least).isCloseTo(2 * 5.4, within(0.3));
        assertThat((most + least) / 2).isCloseTo(10, within(0.3));
    }

    @Test
    void a_fault_that_is_put_right_leaves_the_unit_as_if_it_had_never_been_there() {
        Transient dirty = Transient.started(Built.PISTON, Weather.RATING, FaultSet.of(PlantFault.LOW_INDOOR_AIR, 0.4))
                .after(Duration.ofMinutes(20));
        Transient clean = dirty.without(PlantFault.LOW_INDOOR_AIR);
        OperatingPoint.Running sound = OperatingPoint.solve(Built.PISTON, Weather.RATING, FaultSet.none())
                .running()
                .orElseThrow();

        assertThat(clean.now()).isEqualTo(dirty.now());
        assertThat(clean.after(Duration.ofMinutes(40)).now().suctionPressure().pascals())
                .isCloseTo(sound.at().suctionPressure().pascals(), within(100.0));
        assertThat(clean.elapsed()).isEqualTo(dirty.elapsed());
    }

    @Test
    void a_unit_that_trips_goes_back_to_rest() {
        Transient tripping = Transient.started(
                        Built.VALVE, Weather.fahrenheit(110, 80, 67), FaultSet.of(PlantFault.OVERCHARGE, 0.4))
                .after(Duration.ofMinutes(20));

        assertThat(tripping.steady().running()).isEmpty();
        assertThat(tripping.now().suctionPressure()).isEqualTo(tripping.now().liquidPressure());
    }
}
