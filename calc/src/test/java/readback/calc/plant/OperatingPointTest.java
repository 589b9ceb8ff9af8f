package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;

/** What must hold wherever a unit runs. */
class OperatingPointTest {

    @ParameterizedTest
    @EnumSource
    void runs_at_rating_as_plate_and_design_say(TrainingUnit unit) {
        OperatingPoint.Running at = Built.running(Built.of(unit), FaultSet.none());

        assertThat(at.subcooling().fahrenheit())
                .isCloseTo(unit.plate().subcooling().fahrenheit(), within(0.05));
        assertThat(at.superheat().fahrenheit())
                .isCloseTo(unit.design().superheat().fahrenheit(), within(0.05));
        assertThat(at.evaporating().fahrenheit())
                .isCloseTo(unit.design().evaporating().fahrenheit(), within(0.05));
        assertThat(at.condensing().fahrenheit())
                .isCloseTo(unit.design().condensing().fahrenheit(), within(0.05));
        assertThat(Unit.TON_OF_REFRIGERATION.fromBase(at.heat().capacity()))
                .isCloseTo(unit.plate().tons(), within(0.01 * unit.plate().tons()));
        assertThat(at.heat().charge()).isCloseTo(unit.plate().charge().kilograms(), within(1e-4));
    }

    /** From memory: 2 to 5 W of heat moved for each of the compressor; two thirds to four fifths of it sensible. */
    @ParameterizedTest
    @EnumSource
    void efficiency_and_dryness_are_those_of_real_units(TrainingUnit unit) {
        OperatingPoint.Heat heat =
                Built.running(Built.of(unit), FaultSet.none()).heat();

        assertThat(heat.capacity() / heat.power()).isBetween(2.4, 5.0);
        assertThat(heat.sensible() / heat.capacity()).isBetween(0.65, 0.8);
    }

    /** First law: what goes in as heat and power comes out at condenser and shell. */
    @Test
    void energy_is_kept() {
        for (AirConditioner unit : Built.all()) {
            for (double charge : new double[] {0.75, 1, 1.15}) {
                OperatingPoint.Heat heat =
                        Built.running(unit, Wrong.charge(charge)).heat();
                double in = heat.capacity() + heat.suctionGain() + heat.power();
                assertThat(heat.rejected() + heat.shellLoss())
                        .as(unit + " " + charge)
                        .isCloseTo(in, within(1e-3 * in));
            }
        }
    }

    @Test
    void more_charge_is_more_subcooling_and_never_more_superheat() {
        for (AirConditioner unit : Built.all()) {
            double subcooling = -1;
            double superheat = Double.POSITIVE_INFINITY;
            for (double charge = 0.85; charge <= 1.2; charge += 0.05) {
                OperatingPoint.Running at = Built.running(unit, Wrong.charge(charge));
                assertThat(at.subcooling().kelvins()).as(unit + " " + charge).isGreaterThanOrEqualTo(subcooling);
                assertThat(at.superheat().kelvins()).as(unit + " " + charge).isLessThan(superheat + 0.05);
                subcooling = at.subcooling().kelvins();
                superheat = at.superheat().kelvins();
            }
            assertThat(subcooling).as(unit.name()).isGreaterThan(8);
        }
    }

    @Test
    void gauges_show_less_at_altitude_and_nothing_else_changes_much() {
        OperatingPoint.Running low = Built.running(Built.VALVE, FaultSet.none());
        OperatingPoint.Running high =
                Built.running(Built.VALVE, Weather.RATING.in(Atmosphere.atAltitude(1_500)), FaultSet.none());

        assertThat(high.superheat().fahrenheit()).isCloseTo(low.superheat().fahrenheit(), within(1.0));
        // thinner air: colder coil, hotter condenser
        assertThat(high.evaporating()).isLessThan(low.evaporating());
        assertThat(high.condensing()).isGreaterThan(low.condensing());
    }

    @Test
    void a_gross_overcharge_opens_the_high_pressure_switch() {
        assertThat(OperatingPoint.solve(
                        Built.VALVE, Weather.fahrenheit(110, 80, 67), FaultSet.of(PlantFault.OVERCHARGE, 0.4)))
                .isEqualTo(new OperatingPoint.NoSteadyState(OperatingPoint.Reason.HIGH_PRESSURE_CUT_OUT));
    }

    @Test
    void a_plugged_line_and_half_the_charge_pull_a_vacuum() {
        FaultSet faults = FaultSet.of(PlantFault.UNDERCHARGE, 0.45).with(PlantFault.UNDERSIZED_ORIFICE, 0.5);

        assertThat(OperatingPoint.solve(Built.of(TrainingUnit.TWO_TON_R134A_PISTON), Weather.RATING, faults))
                .isEqualTo(new OperatingPoint.NoSteadyState(OperatingPoint.Reason.SUCTION_IN_VACUUM));
    }

    @Test
    void a_fault_that_the_device_cannot_have_is_refused() {
        assertThatThrownBy(() ->
                        OperatingPoint.solve(Built.PISTON, Weather.RATING, FaultSet.of(PlantFault.BULB_LOOSE, 0.5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("BULB_LOOSE");
    }

    @Test
    @Tag("slow")
    void random_units_run_in_order_or_tell_why_not() {
        // another start is a search for new cases, not a condition for everybody's build
        long start = Long.getLong("random.start", 20_261_128L);
        System.out.println("random plants from " + start);
        Random random = new Random(start);
        List<String> unknown = new ArrayList<>();
        int running = 0;
        int count = 5_000;
        for (int i = 0; i < count; i++) {
            RandomPlant plant = RandomPlant.next(random, 1);
            OperatingPoint point = plant.solved();
            if (point instanceof OperatingPoint.Running at) {
                running++;
                plant.checkOrder(at);
            } else if (point.equals(new OperatingPoint.NoSteadyState(OperatingPoint.Reason.UNKNOWN))) {
                unknown.add(plant.toString());
            }
        }
        // a tenth of a percent is usual, and only with several faults near their largest size
        assertThat(unknown).as("from " + start).hasSizeLessThan(count / 200);
        assertThat(running).isGreaterThan(count * 9 / 10);
    }
}
