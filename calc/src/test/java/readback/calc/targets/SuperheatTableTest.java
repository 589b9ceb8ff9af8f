package readback.calc.targets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.fact.FactTable;
import readback.calc.quantity.Temperature;
import readback.calc.targets.SuperheatTable.Answer;

class SuperheatTableTest {

    private final SuperheatTable table = SuperheatTable.standard();

    /** The charging grid that two independent equipment manuals print alike: charging-grid.txt. */
    @Test
    void agrees_with_the_published_charging_grid_within_one_degree() {
        List<List<String>> grid = FactTable.lines(SuperheatTableTest.class, "charging-grid.txt");
        List<String> wetBulbs = grid.get(0);
        int shared = 0;
        for (List<String> row : grid.subList(1, grid.size())) {
            for (int column = 1; column < row.size(); column++) {
                double wetBulb = Double.parseDouble(wetBulbs.get(column));
                double outdoor = Double.parseDouble(row.get(0));
                if (row.get(column).equals("-") || !(at(wetBulb, outdoor) instanceof Answer.Usable usable)) {
                    continue;
                }
                shared++;
                assertThat(usable.target().fahrenheit())
                        .as("wet bulb %s, outdoor %s", wetBulb, outdoor)
                        .isCloseTo(Double.parseDouble(row.get(column)), within(1.0 + 1e-9));
            }
        }
        assertThat(shared).isEqualTo(115);
    }

    /** The same grid: where it forbids the test, so does the table. */
    @Test
    void forbids_the_test_wherever_the_published_grid_does() {
        List<List<String>> grid = FactTable.lines(SuperheatTableTest.class, "charging-grid.txt");
        int forbidden = 0;
        for (List<String> row : grid.subList(1, grid.size())) {
            for (int column = 1; column < row.size(); column++) {
                if (row.get(column).equals("-")) {
                    forbidden++;
                    assertThat(at(Double.parseDouble(grid.get(0).get(column)), Double.parseDouble(row.get(0))))
                            .isInstanceOf(Answer.TooLow.class);
                }
            }
        }
        assertThat(forbidden).isGreaterThan(50);
    }

    /** California Energy Commission RA3.2, table of target superheat, recalled; the grid gives 16 at 70/60. */
    @ParameterizedTest
    @CsvSource({"67, 95, 12.0", "60, 70, 15.7", "64, 95, 5.6", "76, 115, 22.9", "50, 55, 8.8", "76, 55, 45.0"})
    void gives_the_printed_value_at_table_points(double wetBulb, double outdoor, double target) {
        assertThat(usable(wetBulb, outdoor).target().fahrenheit()).isCloseTo(target, within(1e-9));
    }

    @Test
    void weights_the_four_points_around_a_value_between_them() {
        // 66 and 67 °F wet bulb, 95 and 96 °F outdoor: 10.0, 12.0, 9.5, 11.4
        assertThat(usable(66.5, 95).target().fahrenheit()).isCloseTo(11.0, within(1e-9));
        assertThat(usable(66, 95.5).target().fahrenheit()).isCloseTo(9.75, within(1e-9));
        assertThat(usable(66.25, 95.5).target().fahrenheit())
                .isCloseTo(0.5 * (0.75 * 10.0 + 0.25 * 12.0) + 0.5 * (0.75 * 9.5 + 0.25 * 11.4), within(1e-9));
    }

    @Test
    void tells_how_the_target_answers_to_either_temperature() {
        Answer.Usable between = usable(66.5, 95.5);

        assertThat(between.perWetBulb()).isCloseTo(0.5 * (12.0 - 10.0) + 0.5 * (11.4 - 9.5), within(1e-9));
        assertThat(between.perOutdoor()).isCloseTo(0.5 * (9.5 - 10.0) + 0.5 * (11.4 - 12.0), within(1e-9));
    }

    /** RA3.2.2.6.1, step 3: a dash is a target below 5 °F. */
    @Test
    void has_no_target_at_62_inside_and_100_outside() {
        assertThat(at(62, 100)).isInstanceOf(Answer.TooLow.class);
    }

    @Test
    void has_no_target_between_a_usable_and_a_forbidden_point() {
        // usable at 65/100, forbidden at 64/100
        assertThat(at(65, 100)).isInstanceOf(Answer.Usable.class);
        assertThat(at(64.9, 100)).isInstanceOf(Answer.TooLow.class);
        assertThat(at(65, 100.1)).isInstanceOf(Answer.TooLow.class);
    }

    @Test
    void says_which_side_of_the_weather_is_not_in_the_table() {
        assertThat(at(49.9, 95)).isEqualTo(new Answer.OffTable(true, false));
        assertThat(at(76.1, 95)).isEqualTo(new Answer.OffTable(true, false));
        assertThat(at(67, 54.9)).isEqualTo(new Answer.OffTable(false, true));
        assertThat(at(67, 115.1)).isEqualTo(new Answer.OffTable(false, true));
        assertThat(at(40, 120)).isEqualTo(new Answer.OffTable(true, true));
    }

    /** More humid return air loads the coil; warmer outdoor air feeds the orifice: both in every charging chart. */
    @Test
    void rises_with_the_wet_bulb_and_falls_with_the_outdoor_temperature() {
        for (int outdoor = 55; outdoor < 115; outdoor++) {
            for (int wetBulb = 50; wetBulb < 76; wetBulb++) {
                if (at(wetBulb, outdoor) instanceof Answer.Usable here) {
                    assertThat(usable(wetBulb + 1, outdoor).target()).isGreaterThan(here.target());
                    if (at(wetBulb, outdoor + 1) instanceof Answer.Usable warmer) {
                        assertThat(warmer.target()).isLessThan(here.target());
                    }
                } else {
                    assertThat(at(wetBulb, outdoor + 1)).isInstanceOf(Answer.TooLow.class);
                }
            }
        }
    }

    private Answer at(double wetBulb, double outdoor) {
        return table.target(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor));
    }

    private Answer.Usable usable(double wetBulb, double outdoor) {
        return (Answer.Usable) at(wetBulb, outdoor);
    }
}
