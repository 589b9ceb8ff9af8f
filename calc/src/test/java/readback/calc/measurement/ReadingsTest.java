package readback.calc.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.reading;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;

class ReadingsTest {

    private static final Readings SUCTION = Readings.of(reading(Quantity.SUCTION_PRESSURE, 118));

    @Test
    void a_later_reading_replaces_an_earlier_one_and_leaves_the_original_alone() {
        Readings changed = SUCTION.with(reading(Quantity.SUCTION_PRESSURE, 110));

        assertThat(changed.gaugePressure(Quantity.SUCTION_PRESSURE)
                        .orElseThrow()
                        .psig())
                .isCloseTo(110, within(1e-9));
        assertThat(SUCTION.gaugePressure(Quantity.SUCTION_PRESSURE)
                        .orElseThrow()
                        .psig())
                .isCloseTo(118, within(1e-9));
    }

    @Test
    void removing_a_reading_leaves_no_trace() {
        assertThat(SUCTION.without(Quantity.SUCTION_PRESSURE)).isEqualTo(Readings.none());
        assertThat(SUCTION.without(List.of(Quantity.SUCTION_PRESSURE, Quantity.ALTITUDE)))
                .isEqualTo(Readings.none());
        assertThat(SUCTION.withUnknown(Quantity.ALTITUDE).without(Quantity.ALTITUDE))
                .isEqualTo(SUCTION);
    }

    @Test
    void what_cannot_be_known_is_remembered_until_it_is_read() {
        Readings unknown = SUCTION.withUnknown(Quantity.PLATE_SUBCOOLING);

        assertThat(unknown.cannotBeKnown(Quantity.PLATE_SUBCOOLING)).isTrue();
        assertThat(unknown.unknown()).containsExactly(Quantity.PLATE_SUBCOOLING);
        assertThat(SUCTION.cannotBeKnown(Quantity.PLATE_SUBCOOLING)).isFalse();
        assertThat(unknown.with(reading(Quantity.PLATE_SUBCOOLING, 10)).cannotBeKnown(Quantity.PLATE_SUBCOOLING))
                .isFalse();
        assertThat(SUCTION.withUnknown(Quantity.SUCTION_PRESSURE).has(Quantity.SUCTION_PRESSURE))
                .isFalse();
    }

    @Test
    void readings_come_in_their_physical_types() {
        Readings readings = SUCTION.with(reading(Quantity.OUTDOOR_TEMPERATURE, 95))
                .with(reading(Quantity.PLATE_SUBCOOLING, 10))
                .with(reading(Quantity.VACUUM_LEVEL, 500))
                .with(reading(Quantity.LINE_LENGTH, 10));

        assertThat(readings.temperature(Quantity.OUTDOOR_TEMPERATURE)
                        .orElseThrow()
                        .fahrenheit())
                .isCloseTo(95, within(1e-9));
        assertThat(readings.difference(Quantity.PLATE_SUBCOOLING).orElseThrow().fahrenheit())
                .isCloseTo(10, within(1e-9));
        assertThat(readings.absolutePressure(Quantity.SUCTION_PRESSURE, Atmosphere.SEA_LEVEL)
                        .orElseThrow()
                        .psia())
                .isCloseTo(132.696, within(1e-3));
        assertThat(readings.absolutePressure(Quantity.VACUUM_LEVEL, Atmosphere.SEA_LEVEL)
                        .orElseThrow()
                        .pascals())
                .isCloseTo(66.66, within(1e-2));
        assertThat(readings.base(Quantity.LINE_LENGTH).orElseThrow()).isCloseTo(3.048, within(1e-12));
        assertThat(readings.base(Quantity.RUN_TIME)).isEmpty();
        assertThat(readings.temperature(Quantity.RETURN_WET_BULB)).isEmpty();
    }

    @Test
    void equal_readings_are_equal_however_they_were_collected() {
        Readings other = Readings.none().with(reading(Quantity.SUCTION_PRESSURE, 118));

        assertThat(other).isEqualTo(SUCTION).hasSameHashCodeAs(SUCTION);
        assertThat(other.withUnknown(Quantity.ALTITUDE)).isNotEqualTo(SUCTION);
        assertThat(SUCTION).isNotEqualTo(null).isNotEqualTo("118");
        assertThat(SUCTION.withUnknown(Quantity.ALTITUDE).toString()).contains("118", "unknown", "ALTITUDE");
        assertThat(SUCTION.toString()).doesNotContain("unknown");
        assertThat(SUCTION.asMap()).containsOnlyKeys(Quantity.SUCTION_PRESSURE);
    }
}
