package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.diagnosis.Finding;

/** What is found at a unit, in the sense of the questions that the diagnosis asks. */
class InspectionTest {

    @ParameterizedTest
    @EnumSource
    void a_sound_unit_shows_nothing_and_its_valve_and_compressor_work(Finding finding) {
        boolean works = finding == Finding.VALVE_ANSWERS_TO_BULB || finding == Finding.COMPRESSOR_PUMPS_DOWN;

        assertThat(found(finding, Built.VALVE, FaultSet.none())).isEqualTo(works);
    }

    @ParameterizedTest
    @CsvSource({
        "ICE_ON_COIL, FROSTED_COIL, 0.5, true",
        "RESTING_PRESSURE_ABOVE_SATURATION, NON_CONDENSABLES, 0.3, true",
        "TEMPERATURE_DROP_IN_LIQUID_LINE, LIQUID_LINE_RESTRICTION, 0.7, true",
        "CONDENSER_DIRTY_OR_AIR_BLOCKED, DIRTY_OUTDOOR_COIL, 0.4, true",
        "FILTER_OR_INDOOR_COIL_DIRTY, LOW_INDOOR_AIR, 0.4, true",
        "ORIFICE_DIFFERS_FROM_PLATE, OVERSIZED_ORIFICE, 0.2, true",
        "COMPRESSOR_PUMPS_DOWN, COMPRESSOR_LEAKAGE, 0.3, false"
    })
    void a_fault_of_an_orifice_unit_shows(Finding finding, PlantFault fault, double size, boolean there) {
        assertThat(found(finding, Built.PISTON, FaultSet.of(fault, size))).isEqualTo(there);
    }

    @ParameterizedTest
    @CsvSource({
        "SUCTION_SWINGS, VALVE_HUNTING, 0.3, true",
        "VALVE_ANSWERS_TO_BULB, VALVE_STUCK_OPEN, 0.5, false",
        "VALVE_ANSWERS_TO_BULB, VALVE_STARVING, 0.5, false",
        "VALVE_ANSWERS_TO_BULB, BULB_LOOSE, 0.5, true"
    })
    void a_fault_of_a_valve_shows(Finding finding, PlantFault fault, double size, boolean there) {
        assertThat(found(finding, Built.VALVE, FaultSet.of(fault, size))).isEqualTo(there);
    }

    @Test
    void a_coil_far_below_freezing_ices_whatever_the_cause() {
        assertThat(found(Finding.ICE_ON_COIL, Built.PISTON, FaultSet.of(PlantFault.UNDERCHARGE, 0.35)))
                .isTrue();
    }

    private static boolean found(Finding finding, AirConditioner unit, FaultSet faults) {
        return Inspection.finds(finding, faults, Built.running(unit, faults));
    }
}
