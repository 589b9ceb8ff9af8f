package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.reading;

import org.junit.jupiter.api.Test;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Known;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;

class FunctionalCheckTest {

    private static final Readings RUNNING = Readings.of(
            reading(Quantity.SUCTION_PRESSURE, 118),
            reading(Quantity.SUCTION_LINE_TEMPERATURE, 52),
            reading(Quantity.LIQUID_PRESSURE, 365),
            reading(Quantity.LIQUID_LINE_TEMPERATURE, 100),
            reading(Quantity.RETURN_DRY_BULB, 75),
            reading(Quantity.SUPPLY_DRY_BULB, 56));

    /** A printed pressure table of R-410A: 118 psig is 40 °F, 365 psig 110 °F. */
    @Test
    void the_figures_are_those_of_a_pressure_table() {
        FunctionalCheck check = of(RUNNING);

        assertThat(check.superheat().orElseThrow().fahrenheit()).isCloseTo(12, within(0.5));
        assertThat(check.subcooling().orElseThrow().fahrenheit()).isCloseTo(10, within(0.5));
        assertThat(check.split().orElseThrow().fahrenheit()).isCloseTo(19, within(1e-9));
        assertThat(check.unusual()).isEmpty();
    }

    @Test
    void what_was_not_measured_is_missing_and_nothing_more() {
        FunctionalCheck air =
                of(Readings.of(reading(Quantity.RETURN_DRY_BULB, 75), reading(Quantity.SUPPLY_DRY_BULB, 70)));

        assertThat(air.superheat()).isEmpty();
        assertThat(air.subcooling()).isEmpty();
        assertThat(air.unusual()).containsExactly(FunctionalCheck.Aspect.SPLIT);
        assertThat(of(Readings.none()).empty()).isTrue();
    }

    /**
     * Superheat of some 0 °F and subcooling of some 30 °F: no system is meant to run so. Common practice, no source.
     */
    @Test
    void what_few_systems_show_is_named() {
        FunctionalCheck flooded = of(RUNNING.with(reading(Quantity.SUCTION_LINE_TEMPERATURE, 40))
                .with(reading(Quantity.LIQUID_LINE_TEMPERATURE, 80)));

        assertThat(flooded.unusual())
                .containsExactly(FunctionalCheck.Aspect.SUPERHEAT, FunctionalCheck.Aspect.SUBCOOLING);
    }

    private static FunctionalCheck of(Readings readings) {
        return FunctionalCheck.of(Known.R410A, Atmosphere.SEA_LEVEL, readings, InstrumentAccuracy.STANDARD);
    }
}
