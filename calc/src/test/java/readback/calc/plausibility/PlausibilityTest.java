package readback.calc.plausibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.R22;
import static readback.calc.measurement.Known.R410A;
import static readback.calc.measurement.Known.reading;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Known;
import readback.calc.measurement.Readings;
import readback.calc.plausibility.Grade.Doubt;
import readback.calc.plausibility.Grade.Impossible;
import readback.calc.plausibility.Grade.Refusal;
import readback.calc.plausibility.Grade.Typical;
import readback.calc.plausibility.Grade.Unusual;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/** The bands are common practice, no source, unless a test says otherwise. */
class PlausibilityTest {

    @ParameterizedTest
    @CsvSource({"84.9, below", "85, typical", "118, typical", "180, typical", "180.1, above", "400, above"})
    void a_suction_pressure_of_r410a_is_asked_again_outside_85_to_180_psig(double psig, String expected) {
        Grade grade = grade(Quantity.SUCTION_PRESSURE, psig);

        if (expected.equals("typical")) {
            assertThat(grade).isEqualTo(new Typical());
        } else {
            assertThat(grade)
                    .isEqualTo(new Unusual(new Doubt.OutsideUsual(
                            Quantity.SUCTION_PRESSURE, expected.equals("above"), new Grade.Span(85, 180, Unit.PSIG))));
        }
    }

    @ParameterizedTest(name = "{0} {1} °F: cooling {2}, heating {3}")
    @CsvSource({
        "SUPPLY_DRY_BULB, 95, Unusual, Typical",
        "SUPPLY_DRY_BULB, 55, Typical, Unusual",
        "SUPPLY_DRY_BULB, 130, Impossible, Unusual",
        "OUTDOOR_TEMPERATURE, 30, Unusual, Typical",
        "SUCTION_LINE_TEMPERATURE, 15, Unusual, Typical",
        "LIQUID_LINE_TEMPERATURE, 30, Unusual, Unusual"
    })
    void a_heat_pump_that_heats_shows_other_values(Quantity quantity, double value, String cooling, String heating) {
        Reading reading = reading(quantity, value);

        assertThat(Plausibility.grade(reading, Optional.of(R410A), Readings.none())
                        .getClass()
                        .getSimpleName())
                .isEqualTo(cooling);
        assertThat(Plausibility.gradeHeating(reading, Optional.of(R410A), Readings.none())
                        .getClass()
                        .getSimpleName())
                .isEqualTo(heating);
    }

    /** R-410A boils at 60 psig at about 10 °F: ordinary while a heat pump heats, starved while it cools. */
    @ParameterizedTest(name = "{0} psig: {1}")
    @CsvSource({"60, Typical", "20, Unusual", "150, Typical", "200, Unusual", "420, Impossible"})
    void a_suction_pressure_while_heating(double psig, String expected) {
        assertThat(Plausibility.gradeHeating(
                                reading(Quantity.SUCTION_PRESSURE, psig), Optional.of(R410A), Readings.none())
                        .getClass()
                        .getSimpleName())
                .isEqualTo(expected);
    }

    @Test
    void the_same_pressure_is_judged_by_the_refrigerant() {
        Reading reading = reading(Quantity.SUCTION_PRESSURE, 68);

        assertThat(Plausibility.grade(reading, Optional.of(R22), Readings.none()))
                .isEqualTo(new Typical());
        assertThat(Plausibility.grade(reading, Optional.of(R410A), Readings.none()))
                .isInstanceOf(Unusual.class);
        assertThat(Plausibility.grade(reading, Optional.empty(), Readings.none()))
                .isEqualTo(new Typical());
    }

    @Test
    void a_value_that_no_system_can_show_is_refused_with_its_limits() {
        assertThat(grade(Quantity.LIQUID_PRESSURE, 701))
                .isEqualTo(new Impossible(new Refusal.OutsidePossible(
                        Quantity.LIQUID_PRESSURE, true, new Grade.Span(0, 700, Unit.PSIG))));
        assertThat(grade(Quantity.RETURN_WET_BULB, 19))
                .isEqualTo(new Impossible(new Refusal.OutsidePossible(
                        Quantity.RETURN_WET_BULB, false, new Grade.Span(20, 95, Unit.FAHRENHEIT))));
    }

    @Test
    void a_value_that_nothing_can_show_is_refused_as_unphysical() {
        assertThat(grade(Quantity.SUCTION_LINE_TEMPERATURE, -460))
                .isEqualTo(new Impossible(new Refusal.Unphysical(Quantity.SUCTION_LINE_TEMPERATURE)));
        assertThat(grade(Quantity.SUCTION_PRESSURE, -14.8))
                .isEqualTo(new Impossible(new Refusal.Unphysical(Quantity.SUCTION_PRESSURE)));
        assertThat(grade(Quantity.LINE_LENGTH, -1))
                .isEqualTo(new Impossible(new Refusal.Unphysical(Quantity.LINE_LENGTH)));
        assertThat(grade(Quantity.ALTITUDE, -200)).isEqualTo(new Typical());
    }

    /** U.S. Standard Atmosphere: 12.2 psia at 5,000 ft, so that no vacuum can be deeper than -12.2 psig there. */
    @Test
    void the_deepest_vacuum_depends_on_the_altitude() {
        Readings high = Readings.of(reading(Quantity.ALTITUDE, 5000));
        Reading vacuum = reading(Quantity.RESTING_PRESSURE, -13);

        assertThat(Plausibility.grade(vacuum, Optional.of(R410A), Readings.none()))
                .isInstanceOf(Unusual.class);
        assertThat(Plausibility.grade(vacuum, Optional.of(R410A), high)).isInstanceOf(Impossible.class);
    }

    @Test
    void an_unbelievable_altitude_does_not_stop_the_grading() {
        Readings moon = Readings.of(reading(Quantity.ALTITUDE, 1_000_000));

        assertThat(Plausibility.grade(reading(Quantity.SUCTION_PRESSURE, 118), Optional.of(R410A), moon))
                .isEqualTo(new Typical());
    }

    @Test
    void the_unit_stated_makes_no_difference() {
        Reading bar = new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("8.14"), Unit.BAR_GAUGE);
        Reading cold = new Reading(Quantity.OUTDOOR_TEMPERATURE, new BigDecimal("12"), Unit.CELSIUS);

        assertThat(Plausibility.grade(bar, Optional.of(R410A), Readings.none())).isEqualTo(new Typical());
        assertThat(Plausibility.grade(cold, Optional.empty(), Readings.none()))
                .isEqualTo(new Unusual(new Doubt.OutsideUsual(
                        Quantity.OUTDOOR_TEMPERATURE, false, new Grade.Span(55, 115, Unit.FAHRENHEIT))));
    }

    @Test
    void a_reading_that_contradicts_an_earlier_one_needs_a_yes() {
        Readings dryBulb = Readings.of(reading(Quantity.RETURN_DRY_BULB, 66));

        Grade grade = Plausibility.grade(reading(Quantity.RETURN_WET_BULB, 67), Optional.empty(), dryBulb);

        assertThat(grade.contradiction().orElseThrow().kind()).isEqualTo(Contradiction.Kind.WET_BULB_ABOVE_DRY_BULB);
        assertThat(Plausibility.grade(reading(Quantity.RETURN_WET_BULB, 65), Optional.empty(), dryBulb)
                        .contradiction())
                .isEmpty();
    }

    @Test
    void a_corrected_reading_is_not_held_against_the_one_it_replaces() {
        Readings wrong = Readings.of(reading(Quantity.RETURN_WET_BULB, 76), reading(Quantity.RETURN_DRY_BULB, 75));

        assertThat(Plausibility.grade(reading(Quantity.RETURN_WET_BULB, 67), Optional.empty(), wrong))
                .isEqualTo(new Typical());
    }

    @Test
    void a_contradiction_among_other_readings_does_not_doubt_this_one() {
        Readings wrong = Readings.of(reading(Quantity.RETURN_WET_BULB, 76), reading(Quantity.RETURN_DRY_BULB, 75));

        assertThat(Plausibility.grade(reading(Quantity.SUCTION_PRESSURE, 118), Optional.of(R410A), wrong))
                .isEqualTo(new Typical());
    }

    @Test
    void a_suction_line_below_saturation_is_doubted_only_when_the_refrigerant_is_known() {
        Readings suction = Readings.of(reading(Quantity.SUCTION_PRESSURE, 145));
        Reading line = reading(Quantity.SUCTION_LINE_TEMPERATURE, 46);

        assertThat(Plausibility.grade(line, Optional.of(R410A), suction).contradiction())
                .map(Contradiction::kind)
                .contains(Contradiction.Kind.SUCTION_LINE_COLDER_THAN_EVAPORATING);
        assertThat(Plausibility.grade(line, Optional.empty(), suction)).isEqualTo(new Typical());
    }

    /** The bands stated for R-410A, carried over by saturation temperature, land near those stated for R-22. */
    @Test
    void refrigerants_without_bands_of_their_own_get_them_from_saturation_temperatures() {
        Refrigerant r134a = Known.refrigerant("R-134a");
        // R-134a boils at 40 °F and 35.0 psig, condenses at 110 °F and 146.4 psig: ASHRAE Handbook of Fundamentals
        assertThat(Plausibility.grade(reading(Quantity.SUCTION_PRESSURE, 35), Optional.of(r134a), Readings.none()))
                .isEqualTo(new Typical());
        assertThat(Plausibility.grade(reading(Quantity.LIQUID_PRESSURE, 146.4), Optional.of(r134a), Readings.none()))
                .isEqualTo(new Typical());
        assertThat(Plausibility.grade(reading(Quantity.SUCTION_PRESSURE, 118), Optional.of(r134a), Readings.none()))
                .isInstanceOf(Unusual.class);
        assertThat(Plausibility.grade(reading(Quantity.LIQUID_PRESSURE, 365), Optional.of(r134a), Readings.none()))
                .isInstanceOf(Impossible.class);
    }

    /** A zeotropic blend: the suction band follows the dew point, the liquid band the bubble point. */
    @Test
    void bands_from_saturation_take_the_side_that_is_read() {
        Refrigerant blend = Known.refrigerant("R-407C");

        assertThat(usualHigh(Quantity.SUCTION_PRESSURE, blend))
                .isCloseTo(
                        blend.dewPressure(Temperature.fahrenheit(63))
                                .gaugeIn(Atmosphere.SEA_LEVEL)
                                .psig(),
                        within(0.5));
        assertThat(usualHigh(Quantity.LIQUID_PRESSURE, blend))
                .isCloseTo(
                        blend.bubblePressure(Temperature.fahrenheit(142))
                                .gaugeIn(Atmosphere.SEA_LEVEL)
                                .psig(),
                        within(0.5));
    }

    private static double usualHigh(Quantity quantity, Refrigerant refrigerant) {
        return PlausibleBand.of(quantity, Optional.of(refrigerant), Optional.empty(), Atmosphere.SEA_LEVEL)
                .orElseThrow()
                .usual()
                .high();
    }

    @Test
    void a_capacity_of_nothing_does_not_stop_the_grading() {
        Readings nothing = Readings.of(reading(Quantity.CAPACITY, 0));

        assertThat(Plausibility.grade(reading(Quantity.AIRFLOW, 1200), Optional.empty(), nothing))
                .isEqualTo(new Typical());
    }

    /** 300 cfm a ton is the floor of California Energy Commission RA3.2; 400 is usual. */
    @Test
    void airflow_is_graded_by_the_capacity_once_it_is_known() {
        Readings fiveTons = Readings.of(reading(Quantity.CAPACITY, 5));
        Reading flow = reading(Quantity.AIRFLOW, 800);

        assertThat(Plausibility.grade(flow, Optional.empty(), Readings.none())).isEqualTo(new Typical());
        assertThat(Plausibility.grade(flow, Optional.empty(), fiveTons))
                .isEqualTo(new Unusual(new Doubt.OutsideUsual(
                        Quantity.AIRFLOW, false, new Grade.Span(1375, 2500, Unit.CUBIC_FOOT_PER_MINUTE))));
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void every_quantity_has_limits(Quantity quantity) {
        double absurd = quantity.dimension() == Dimension.ABSOLUTE_PRESSURE ? 1e9 : 1e6;

        assertThat(Plausibility.grade(reading(quantity, absurd), Optional.empty(), Readings.none()))
                .isInstanceOf(Impossible.class);
        assertThat(Plausibility.grade(reading(quantity, absurd), Optional.of(R410A), Readings.none()))
                .isInstanceOf(Impossible.class);
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void every_band_is_in_order(Quantity quantity) {
        for (Optional<Refrigerant> refrigerant : java.util.List.of(
                Optional.<Refrigerant>empty(),
                Optional.of(R410A),
                Optional.of(R22),
                Optional.of(Known.refrigerant("R-32")),
                Optional.of(Known.refrigerant("R-134a")))) {
            PlausibleBand band = PlausibleBand.of(quantity, refrigerant, Optional.empty(), Atmosphere.SEA_LEVEL)
                    .orElseThrow();

            assertThat(band.limits())
                    .as("%s %s", quantity, refrigerant)
                    .hasSize(6)
                    .isSorted();
            assertThat(band.askBelow())
                    .isCloseTo(band.unit().toBase(band.usual().low()), within(1e-6));
            assertThat(band.refuseAbove())
                    .isCloseTo(band.unit().toBase(band.possible().high()), within(1e-6));
        }
    }

    private static Grade grade(Quantity quantity, double value) {
        return Plausibility.grade(reading(quantity, value), Optional.of(R410A), Readings.none());
    }
}
