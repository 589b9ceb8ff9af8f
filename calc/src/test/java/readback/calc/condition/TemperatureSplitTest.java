package readback.calc.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.reading;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.fact.FactTable;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

class TemperatureSplitTest {

    /**
     * California Energy Commission RA3.2, table of target temperature split, 2008, from memory: temperature-split.txt.
     */
    @Test
    void reproduces_every_value_of_the_printed_table_within_its_rounding() {
        List<List<String>> table = FactTable.lines(TemperatureSplitTest.class, "temperature-split.txt");
        int checked = 0;
        for (List<String> row : table.subList(1, table.size())) {
            for (int column = 1; column < row.size(); column++) {
                double dryBulb = Double.parseDouble(row.get(0));
                double wetBulb = Double.parseDouble(table.get(0).get(column));
                // the table prints values for impossible air too
                if (!row.get(column).equals("-") && wetBulb <= dryBulb) {
                    checked++;
                    assertThat(target(dryBulb, wetBulb).orElseThrow().fahrenheit())
                            .isCloseTo(Double.parseDouble(row.get(column)), within(0.053));
                }
            }
        }
        assertThat(checked).isEqualTo(357 - 21);
    }

    @ParameterizedTest
    @CsvSource({"69.9, 60", "84.1, 60", "75, 49.9", "80, 76.1", "72, 72.1"})
    void has_no_target_outside_the_table_or_with_the_wet_bulb_above_the_dry_bulb(double dryBulb, double wetBulb) {
        assertThat(target(dryBulb, wetBulb)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"70, 50", "84, 76", "70, 70", "84, 50"})
    void has_a_target_at_the_corners_of_the_table(double dryBulb, double wetBulb) {
        assertThat(target(dryBulb, wetBulb)).isPresent();
    }

    /** The table gives 18.6 at 75/63. */
    @Test
    void deviation_is_actual_less_target() {
        Readings readings = Readings.of(
                reading(Quantity.RETURN_DRY_BULB, 75),
                reading(Quantity.RETURN_WET_BULB, 63),
                reading(Quantity.SUPPLY_DRY_BULB, 56));

        assertThat(TemperatureSplit.deviation(readings).orElseThrow().fahrenheit())
                .isCloseTo(0.4, within(0.06));
    }

    @Test
    void deviation_needs_all_three_air_temperatures() {
        Readings readings = Readings.of(
                reading(Quantity.RETURN_DRY_BULB, 75),
                reading(Quantity.RETURN_WET_BULB, 63),
                reading(Quantity.SUPPLY_DRY_BULB, 56));

        for (Quantity quantity :
                List.of(Quantity.RETURN_DRY_BULB, Quantity.RETURN_WET_BULB, Quantity.SUPPLY_DRY_BULB)) {
            assertThat(TemperatureSplit.deviation(readings.without(quantity))).isEmpty();
        }
    }

    /** The table gives 18.6 at 75/63. */
    @Test
    void a_stated_split_counts_where_supply_air_was_not_read() {
        Readings stated = Readings.of(
                reading(Quantity.RETURN_DRY_BULB, 75),
                reading(Quantity.RETURN_WET_BULB, 63),
                reading(Quantity.TEMPERATURE_SPLIT, 24));

        assertThat(TemperatureSplit.deviation(stated).orElseThrow().fahrenheit())
                .isCloseTo(5.4, within(0.06));
        assertThat(TemperatureSplit.deviation(stated.with(reading(Quantity.SUPPLY_DRY_BULB, 56)))
                        .orElseThrow()
                        .fahrenheit())
                .as("what was read at both ends counts more")
                .isCloseTo(0.4, within(0.06));
    }

    private static Optional<TemperatureDifference> target(double dryBulb, double wetBulb) {
        return TemperatureSplit.target(Temperature.fahrenheit(dryBulb), Temperature.fahrenheit(wetBulb));
    }
}
