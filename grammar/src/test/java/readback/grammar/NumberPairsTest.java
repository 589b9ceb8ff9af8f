package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.quantity.Quantity.LIQUID_PRESSURE;
import static readback.calc.quantity.Quantity.OUTDOOR_TEMPERATURE;
import static readback.calc.quantity.Quantity.RETURN_DRY_BULB;
import static readback.calc.quantity.Quantity.RETURN_WET_BULB;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** Two numbers in one breath. Ways of saying: common practice, no source. */
class NumberPairsTest {

    private static final Grammar GRAMMAR = Grammar.standard();

    private static Meaning only(String words, Expectation expectation) {
        return GRAMMAR.understand(words, expectation).get(0).meaning();
    }

    private static Expectation asked(Quantity quantity) {
        return Expectation.of(quantity, UnitSetting.US);
    }

    private static Meaning values(Reading... readings) {
        return new Meaning.Values(List.of(readings));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "one eighteen over three forty",
                "one one eight over three four zero",
                "118/340",
                "118 / 340",
                "118 over 340",
                "118, 340",
                "one eighteen and three forty",
                "one eighteen over three forty psi",
                "low one eighteen high three forty"
            })
    void both_gauges_are_read_where_the_low_side_is_asked_for(String words) {
        assertThat(only(words, asked(SUCTION_PRESSURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118"), Reading.of(LIQUID_PRESSURE, "340")));
    }

    @Test
    void the_larger_is_the_high_side_in_whichever_order() {
        assertThat(only("three forty over one eighteen", asked(LIQUID_PRESSURE)))
                .isEqualTo(values(Reading.of(LIQUID_PRESSURE, "340"), Reading.of(SUCTION_PRESSURE, "118")));
    }

    @Test
    void at_any_other_step_over_means_the_gauges_and_and_means_nothing() {
        assertThat(only("118/340", Expectation.open(UnitSetting.US)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118"), Reading.of(LIQUID_PRESSURE, "340")));
        assertThat(only("one eighteen over three forty", asked(OUTDOOR_TEMPERATURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118"), Reading.of(LIQUID_PRESSURE, "340")));
        assertThat(only("one eighteen and three forty", asked(OUTDOOR_TEMPERATURE)))
                .isInstanceOf(Meaning.NotUnderstood.class);
    }

    @Test
    void the_bulbs_are_meant_where_one_of_them_is_asked_for() {
        assertThat(only("75 over 63", asked(RETURN_WET_BULB)))
                .isEqualTo(values(Reading.of(RETURN_DRY_BULB, "75"), Reading.of(RETURN_WET_BULB, "63")));
        assertThat(only("seventy five over sixty three degrees", asked(RETURN_DRY_BULB)))
                .isEqualTo(values(Reading.of(RETURN_DRY_BULB, "75"), Reading.of(RETURN_WET_BULB, "63")));
    }

    @Test
    void metric_gauges_are_read_in_their_unit() {
        assertThat(only("eight point one over twenty three", Expectation.of(SUCTION_PRESSURE, UnitSetting.METRIC)))
                .isEqualTo(values(
                        new Reading(SUCTION_PRESSURE, new BigDecimal("8.1"), Unit.BAR_GAUGE),
                        new Reading(LIQUID_PRESSURE, new BigDecimal("23"), Unit.BAR_GAUGE)));
    }

    @Test
    void equal_numbers_and_numbers_that_are_one_are_no_pair() {
        assertThat(only("118 over 118", asked(SUCTION_PRESSURE))).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(only("one hundred and eighteen", asked(SUCTION_PRESSURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118")));
        assertThat(only("3/8", asked(Quantity.LIQUID_TUBE_SIZE)))
                .isEqualTo(values(Reading.of(Quantity.LIQUID_TUBE_SIZE, "0.375")));
        assertThat(only("one, one, eight", asked(SUCTION_PRESSURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118")));
    }
}
