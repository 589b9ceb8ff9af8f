package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.Temperature;

/**
 * Rightly charged units with an orifice against the table of target superheat of the California Energy Commission
 * (RA3.2, recalled from memory, as the judgement uses it). A calibration: the designs were fitted to half of its nodes;
 * the other half took no part.
 */
class ChargingChartTest {

    static Stream<AirConditioner> units() {
        return Built.all().stream()
                .filter(unit -> unit.plate().meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT);
    }

    @ParameterizedTest
    @MethodSource("units")
    void nodes_that_were_not_fitted_to_are_met(AirConditioner unit) {
        ChartDeviation heldOut = ChartDeviation.of(unit, ChartDeviation.Nodes.HELD_OUT);

        assertThat(heldOut.nodes()).isEqualTo(33);
        assertThat(heldOut.unsolved()).isZero();
        assertThat(heldOut.rootMeanSquare()).as(heldOut.toString()).isLessThan(2);
        assertThat(heldOut.largest()).as(heldOut.toString()).isLessThan(5.5);
    }

    @ParameterizedTest
    @MethodSource("units")
    void all_nodes_are_met(AirConditioner unit) {
        ChartDeviation all = ChartDeviation.of(unit, ChartDeviation.Nodes.ALL);

        assertThat(all.nodes()).isEqualTo(67);
        assertThat(all.rootMeanSquare()).as(all.toString()).isLessThan(2);
        assertThat(all.largest()).as(all.toString()).isLessThan(5.5);
    }

    /**
     * The table of temperature split (RA3.2-3, recalled), which the judgement takes for a sign of the airflow. Fitted
     * for the first unit, not for the others.
     */
    @Test
    void a_sound_unit_has_the_split_of_the_table() {
        for (AirConditioner unit : Built.all()) {
            for (int wetBulb = 60; wetBulb <= 68; wetBulb += 2) {
                Weather weather = ChartDeviation.weather(90, wetBulb);
                Temperature dryBulb = weather.returnAir().dryBulb();
                Temperature supply =
                        Built.running(unit, weather, FaultSet.none()).at().supplyAir();
                double target = TemperatureSplit.target(
                                dryBulb, weather.returnAir().wetBulb())
                        .orElseThrow()
                        .fahrenheit();
                assertThat(dryBulb.minus(supply).fahrenheit())
                        .as(unit + " at a wet bulb of " + wetBulb + " °F")
                        .isCloseTo(target, within(1.5));
            }
        }
    }

    /** Without the growth of the orifice the chart is missed: the test can fail. */
    @Test
    void an_orifice_that_does_not_grow_misses_the_chart() {
        TrainingUnit unit = TrainingUnit.THREE_TON_R410A_PISTON;
        Design grown = unit.design();
        AirConditioner plain = AirConditioner.balanced(
                "plain",
                unit.plate(),
                new Design(
                        grown.evaporating(),
                        grown.condensing(),
                        grown.superheat(),
                        grown.compressor(),
                        0,
                        grown.coils()));

        assertThat(ChartDeviation.of(plain, ChartDeviation.Nodes.ALL).rootMeanSquare())
                .isGreaterThan(3);
    }
}
