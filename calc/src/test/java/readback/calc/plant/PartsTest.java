package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/** The parts of the simulation, each alone. */
class PartsTest {

    private static final FluidTable R410A = Built.PISTON.circuit().fluid();

    /** The table against the equation of state between its own points. */
    @ParameterizedTest
    @EnumSource
    void the_table_follows_the_equation_of_state(TrainingUnit unit) {
        FluidTable table = Built.of(unit).circuit().fluid();
        Refrigerant refrigerant = table.refrigerant();
        Random random = new Random(3);
        for (int i = 0; i < 100; i++) {
            double kelvin = 250 + 80 * random.nextDouble();
            double superheat = 45 * random.nextDouble();
            var saturation = Temperature.kelvin(kelvin);
            var vapour = refrigerant.superheatedVapour(
                    Temperature.kelvin(kelvin + superheat), refrigerant.dewPressure(saturation));
            assertThat(table.vapourEnthalpy(kelvin, superheat)).isCloseTo(vapour.enthalpy(), within(250.0));
            assertThat(table.vapourDensity(kelvin, superheat) / vapour.density())
                    .isCloseTo(1, within(0.003));
            assertThat(table.liquidEnthalpy(kelvin))
                    .isCloseTo(refrigerant.saturatedLiquid(saturation).enthalpy(), within(100.0));
            assertThat(table.superheat(kelvin, table.vapourEnthalpy(kelvin, superheat)))
                    .isCloseTo(superheat, within(1e-3));
            assertThat(table.liquidTemperature(table.liquidEnthalpy(kelvin))).isCloseTo(kelvin, within(1e-3));
        }
    }

    /** Against Zivi's formula summed over ten thousand steps. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.2, 1", "0.25, 0.8", "0, 0.01"})
    void mean_density_is_the_integral_of_the_void_fraction(double from, double to) {
        double liquid = 1_050;
        double vapour = 40;
        double sum = 0;
        int steps = 10_000;
        for (int i = 0; i < steps; i++) {
            double quality = from + (to - from) * (i + 0.5) / steps;
            double voids = 1 / (1 + (1 - quality) / quality * Math.pow(vapour / liquid, 2.0 / 3));
            sum += liquid * (1 - voids) + vapour * voids;
        }
        assertThat(VoidFraction.density(liquid, vapour, from, to)).isCloseTo(sum / steps, within(0.01));
    }

    /**
     * The published orifice correlation worked out by hand with a pocket calculator's arithmetic for one state: 2,500
     * kPa, 5 K subcooled, 1.6 mm by 12.7 mm. Its groups are taken from this table's own properties.
     */
    @Test
    void an_orifice_passes_what_the_published_correlation_says() {
        double upstream = 2.5e6;
        double bubble = R410A.bubbleTemperature(upstream);
        double inlet = bubble - 5;
        double p3 = (upstream - R410A.bubblePressure(inlet)) / R410A.criticalPressure();
        double p9 = 5 / R410A.criticalTemperature();
        double p6 =
                R410A.vapourDensity(R410A.dewTemperature(R410A.bubblePressure(inlet)), 0) / R410A.liquidDensity(inlet);
        double group = (.38811 + 11.427 * p3 - 14.194 * p9 + 1.0703 * p6 - .091928 * Math.log(12.7 / 1.6))
                / (1 + 21.425 * p3 - 581.95 * p9 * p9);
        double expected = Math.PI
                / 4
                * 1.6e-3
                * 1.6e-3
                * group
                * Math.sqrt(R410A.liquidDensity(inlet) * R410A.criticalPressure());

        assertThat(new ShortTube(1.6e-3, 0)
                        .flow(R410A, upstream, R410A.liquidEnthalpy(inlet), 1e6, 5, 308.15, new Disturbance()))
                .isCloseTo(expected, within(1e-4 * expected));
    }

    @Test
    void an_orifice_passes_less_with_less_subcooling_and_least_with_bubbles() {
        double upstream = 2.5e6;
        double bubble = R410A.bubbleTemperature(upstream);
        double boiling = R410A.liquidEnthalpy(bubble);
        double before = Double.POSITIVE_INFINITY;
        for (double beyond = -25_000; beyond <= 60_000; beyond += 1_000) {
            double flow =
                    new ShortTube(1.6e-3, 0).flow(R410A, upstream, boiling + beyond, 1e6, 5, 308.15, new Disturbance());
            assertThat(flow)
                    .as("%f J/kg above boiling", beyond)
                    .isLessThan(before)
                    .isPositive();
            before = flow;
        }
    }

    @Test
    void a_valve_opens_with_superheat_until_it_is_wide_open() {
        ExpansionValve valve = new ExpansionValve(7e-7);
        double before = 0;
        for (double superheat = 0; superheat <= 20; superheat += 1) {
            double flow =
                    valve.flow(R410A, 2.5e6, R410A.liquidEnthalpy(305), 1e6, superheat, 308.15, new Disturbance());
            assertThat(flow).isGreaterThan(before);
            before = flow;
        }
        double wide = valve.flow(R410A, 2.5e6, R410A.liquidEnthalpy(305), 1e6, 40, 308.15, new Disturbance());
        assertThat(wide).isCloseTo(before, within(0.02 * before));
    }

    /** A 3-ton compressor moves about 3 tons between 45 and 115 °F; from memory, that is how they are named. */
    @ParameterizedTest
    @EnumSource
    void a_published_map_gives_its_nominal_capacity(MappedCompressor.Map map) {
        double evaporating = Temperature.fahrenheit(45).kelvin();
        double condensing = Temperature.fahrenheit(115).kelvin();
        double heat =
                R410A.vapourEnthalpy(evaporating, Compressor.RATED_SUPERHEAT) - R410A.liquidEnthalpy(condensing - 8);

        assertThat(new MappedCompressor(map, 1).flow(evaporating, condensing) * heat / 3_516.85)
                .isBetween(2.4, 3.6);
    }

    @Test
    void weather_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> Weather.fahrenheit(95, 75, 80)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Weather.fahrenheit(20, 75, 63)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Weather.fahrenheit(95, 120, 63)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void a_fault_larger_than_the_equations_admit_is_refused_and_one_of_no_size_is_none() {
        assertThatThrownBy(() -> FaultSet.of(PlantFault.LOW_INDOOR_AIR, 0.9)).isInstanceOf(OutOfRangeException.class);
        assertThat(FaultSet.of(PlantFault.LOW_INDOOR_AIR, 0.2).with(PlantFault.LOW_INDOOR_AIR, 0))
                .isEqualTo(FaultSet.none());
    }

    @Test
    void every_fault_changes_something() {
        for (PlantFault fault : PlantFault.values()) {
            AirConditioner unit =
                    fault.possibleWith(Built.PISTON.plate().meteringDevice().chargeMethod())
                            ? Built.PISTON
                            : Built.VALVE;
            Measurands sound = Built.running(unit, FaultSet.none()).at();
            boolean moves = !Built.running(unit, FaultSet.of(fault, 0.2)).at().equals(sound);
            assertThat(moves || fault == PlantFault.VALVE_HUNTING)
                    .as(fault.name())
                    .isTrue();
        }
    }

    @Test
    void a_design_that_no_coil_can_reach_is_refused() {
        TrainingUnit unit = TrainingUnit.THREE_TON_R410A_PISTON;
        Design plausible = unit.design();
        Design design = new Design(
                Temperature.fahrenheit(79),
                plausible.condensing(),
                plausible.superheat(),
                plausible.compressor(),
                plausible.orificeGrowth(),
                plausible.coils());

        assertThatThrownBy(() -> AirConditioner.balanced("impossible", unit.plate(), design))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_switch_of_the_high_side_opens_where_it_usually_does() {
        // 610 psig for R-410A: common practice, from memory
        assertThat(Built.PISTON
                        .highPressureSwitch()
                        .gaugeIn(AbsolutePressure.pascals(101_325))
                        .psig())
                .isBetween(590.0, 630.0);
    }
}
