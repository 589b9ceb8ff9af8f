package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.measurement.ChargeMethod;

/**
 * Which way each fault moves what is measured, against the rules of Rossi and Braun, HVAC&R Research 3(1), 19 (1997),
 * for a unit with a fixed orifice (reprinted as table 1-1 of Li and Braun's Purdue report on rooftop units). In this
 * order: evaporating, superheat, condensing, subcooling, discharge, air rise over the condenser, air split.
 */
class FaultSignsTest {

    private static final String[] NAMES = {
        "evaporating", "superheat", "condensing", "subcooling", "discharge", "condenser air rise", "air split"
    };

    /** °F. A movement against the rule by less is none: no field instrument shows it. */
    private static final double UNNOTICED = 0.25;

    static Stream<Arguments> rules() {
        List<Arguments> rules = new ArrayList<>();
        for (AirConditioner unit : Built.all()) {
            if (unit.plate().meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT) {
                rules.add(Arguments.of(unit, PlantFault.UNDERCHARGE, 0.15, "-+--+--"));
                rules.add(Arguments.of(unit, PlantFault.COMPRESSOR_LEAKAGE, 0.2, "+------"));
                rules.add(Arguments.of(unit, PlantFault.LIQUID_LINE_RESTRICTION, 0.4, "-+-++--"));
                rules.add(Arguments.of(unit, PlantFault.DIRTY_OUTDOOR_COIL, 0.4, "+-+-++-"));
                rules.add(Arguments.of(unit, PlantFault.LOW_INDOOR_AIR, 0.3, "------+"));
            }
        }
        return rules.stream();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void every_fault_of_an_orifice_unit_moves_what_it_should(
            AirConditioner unit, PlantFault fault, double size, String signs) {
        double[] sound = features(unit, FaultSet.none());
        double[] faulty = features(unit, FaultSet.of(fault, size));

        for (int i = 0; i < NAMES.length; i++) {
            double moved = (faulty[i] - sound[i]) * (signs.charAt(i) == '+' ? 1 : -1);
            assertThat(moved)
                    .as(unit + " " + fault + ": " + NAMES[i] + " moves by " + (faulty[i] - sound[i]) + " °F")
                    .isGreaterThan(-UNNOTICED);
        }
    }

    /** What separates the faults must be more than unnoticed. */
    @Test
    void superheat_and_subcooling_move_by_degrees() {
        for (Arguments rule : rules().toList()) {
            Object[] of = rule.get();
            if (of[1] != PlantFault.DIRTY_OUTDOOR_COIL) {
                double[] sound = features((AirConditioner) of[0], FaultSet.none());
                double[] faulty = features((AirConditioner) of[0], FaultSet.of((PlantFault) of[1], (double) of[2]));
                assertThat(Math.abs(faulty[1] - sound[1]))
                        .as(of[0] + " " + of[1])
                        .isGreaterThan(3);
            }
        }
    }

    /** Trade charts and textbooks, from memory: a valve keeps its superheat, and fouling does not raise subcooling. */
    @Test
    void a_dirty_condenser_raises_pressure_and_never_subcooling() {
        for (AirConditioner unit : Built.all()) {
            OperatingPoint.Running sound = Built.running(unit, FaultSet.none());
            double before = sound.subcooling().fahrenheit();
            for (double size : new double[] {0.1, 0.2, 0.3, 0.4}) {
                OperatingPoint.Running dirty = Built.running(unit, FaultSet.of(PlantFault.DIRTY_OUTDOOR_COIL, size));
                assertThat(dirty.subcooling().fahrenheit())
                        .as(unit + " " + size)
                        .isLessThanOrEqualTo(before + UNNOTICED);
                assertThat(dirty.at().liquidPressure()).isGreaterThan(sound.at().liquidPressure());
                before = dirty.subcooling().fahrenheit();
            }
        }
    }

    /** As above: pressure and apparent subcooling high, so that it looks like an overcharge. */
    @Test
    void non_condensables_raise_liquid_pressure_and_apparent_subcooling() {
        for (AirConditioner unit : Built.all()) {
            OperatingPoint.Running sound = Built.running(unit, FaultSet.none());
            OperatingPoint.Running faulty = Built.running(unit, FaultSet.of(PlantFault.NON_CONDENSABLES, 0.3));
            assertThat(faulty.at().liquidPressure().psia())
                    .as(unit.name())
                    .isGreaterThan(sound.at().liquidPressure().psia() + 10);
            assertThat(faulty.subcooling().fahrenheit())
                    .as(unit.name())
                    .isGreaterThan(sound.subcooling().fahrenheit() + 1);
            assertThat(faulty.condensing()).isGreaterThan(sound.condensing());
        }
    }

    /** As above. */
    @Test
    void a_valve_stuck_open_or_with_a_loose_bulb_floods_and_a_starving_one_starves() {
        for (AirConditioner unit : Built.all()) {
            if (unit.plate().meteringDevice().chargeMethod() == ChargeMethod.SUBCOOLING) {
                OperatingPoint.Running sound = Built.running(unit, FaultSet.none());
                for (PlantFault flooding : List.of(PlantFault.VALVE_STUCK_OPEN, PlantFault.BULB_LOOSE)) {
                    OperatingPoint.Running faulty = Built.running(unit, FaultSet.of(flooding, 0.8));
                    assertThat(faulty.superheat().kelvins()).as(unit.name()).isLessThan(0);
                    assertThat(faulty.evaporating()).isGreaterThan(sound.evaporating());
                    assertThat(faulty.subcooling()).isLessThan(sound.subcooling());
                }
                OperatingPoint.Running starving = Built.running(unit, FaultSet.of(PlantFault.VALVE_STARVING, 0.8));
                assertThat(starving.superheat().fahrenheit())
                        .as(unit.name())
                        .isGreaterThan(sound.superheat().fahrenheit() + 5);
                assertThat(starving.evaporating()).isLessThan(sound.evaporating());
                assertThat(starving.subcooling()).isGreaterThan(sound.subcooling());
            }
        }
    }

    /** As above. */
    @Test
    void an_orifice_too_large_floods_and_one_too_small_starves() {
        OperatingPoint.Running sound = Built.running(Built.PISTON, FaultSet.none());
        OperatingPoint.Running large = Built.running(Built.PISTON, FaultSet.of(PlantFault.OVERSIZED_ORIFICE, 0.15));
        OperatingPoint.Running small = Built.running(Built.PISTON, FaultSet.of(PlantFault.UNDERSIZED_ORIFICE, 0.1));

        assertThat(large.superheat()).isLessThan(sound.superheat());
        assertThat(large.evaporating()).isGreaterThan(sound.evaporating());
        assertThat(large.subcooling()).isLessThan(sound.subcooling());
        assertThat(small.superheat()).isGreaterThan(sound.superheat());
        assertThat(small.evaporating()).isLessThan(sound.evaporating());
        assertThat(small.subcooling()).isGreaterThan(sound.subcooling());
    }

    @Test
    void a_restricted_line_is_colder_behind_the_restriction_when_it_boils_there() {
        OperatingPoint.Running faulty =
                Built.running(Built.PISTON, FaultSet.of(PlantFault.LIQUID_LINE_RESTRICTION, 0.7));

        assertThat(faulty.beyondRestriction()).isLessThan(faulty.at().liquidLine());
        assertThat(Built.running(Built.PISTON, FaultSet.none()).beyondRestriction())
                .isEqualTo(Built.running(Built.PISTON, FaultSet.none()).at().liquidLine());
    }

    @Test
    void ice_on_the_coil_lets_it_boil_below_freezing() {
        for (AirConditioner unit : Built.all()) {
            assertThat(Built.running(unit, FaultSet.of(PlantFault.FROSTED_COIL, 0.7))
                            .evaporating()
                            .fahrenheit())
                    .as(unit.name())
                    .isLessThan(32);
        }
    }

    private static double[] features(AirConditioner unit, FaultSet faults) {
        OperatingPoint.Running at = Built.running(unit, faults);
        double air = unit.circuit().condenser().airFlow() * 1_006 * faults.disturbance().outdoorAir;
        return new double[] {
            at.evaporating().fahrenheit(),
            at.superheat().fahrenheit(),
            at.condensing().fahrenheit(),
            at.subcooling().fahrenheit(),
            at.at().dischargeLine().fahrenheit(),
            at.heat().rejected() / air * 1.8,
            -at.at().supplyAir().fahrenheit()
        };
    }
}
