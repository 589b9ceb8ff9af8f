package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.measurement.Known;
import readback.calc.procedure.RecoveryLevel.PressureClass;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Unit;

class RecoveryTest {

    private static final RecoveryCylinder FIFTY_POUND = new RecoveryCylinder(Mass.pounds(47.7), Mass.pounds(28), 1.06);

    /** 0.8 × 47.7 × 1.06, 49 CFR 173.304a and AHRI Guideline K (from memory). */
    @Test
    void a_cylinder_of_47_7_pounds_water_capacity_takes_40_4_pounds_of_r410a() {
        assertThat(FIFTY_POUND.netLimit().pounds()).isCloseTo(40.4, within(0.06));
        assertThat(FIFTY_POUND.grossLimit().pounds()).isCloseTo(68.4, within(0.06));
    }

    /** Liquid at 77 °F against water: 1.06 for R-410A, 1.19 for R-22 (trade tables, from memory, to two digits). */
    @ParameterizedTest
    @CsvSource({"R-410A, 1.06", "R-22, 1.19", "R-32, 0.96"})
    void the_specific_gravity_follows_from_the_equation_of_state(String refrigerant, double gravity) {
        RecoveryCylinder cylinder = RecoveryCylinder.of(
                        Known.refrigerant(refrigerant), Mass.pounds(47.7), Mass.pounds(28))
                .orElseThrow();

        assertThat(cylinder.specificGravity()).isCloseTo(gravity, within(0.01));
    }

    @Test
    void room_and_share_follow_the_scale() {
        assertThat(FIFTY_POUND.room(Mass.pounds(48)).pounds()).isCloseTo(20.45, within(0.01));
        assertThat(FIFTY_POUND.share(Mass.pounds(48))).isCloseTo(20 / 40.4496, within(1e-4));
        assertThat(FIFTY_POUND.share(FIFTY_POUND.grossLimit())).isCloseTo(1, within(1e-12));
        assertThat(FIFTY_POUND.room(Mass.pounds(70))).isEqualTo(Mass.NONE);
        assertThat(FIFTY_POUND.share(Mass.pounds(70))).isGreaterThan(1);
    }

    @Test
    void a_cylinder_without_its_stamps_is_refused() {
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new RecoveryCylinder(Mass.NONE, Mass.pounds(28), 1.06))
                .withMessageContaining("water capacity");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new RecoveryCylinder(Mass.pounds(47), Mass.NONE, 1.06))
                .withMessageContaining("tare");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> new RecoveryCylinder(Mass.pounds(47), Mass.pounds(28), 0))
                .withMessageContaining("specific gravity");
    }

    /** 40 CFR 82.156(a), table 1. */
    @ParameterizedTest
    @CsvSource({
        "VERY_HIGH, 8, 0",
        "VERY_HIGH, 300, 0",
        "HIGH, 8, 0",
        "HIGH, 199, 0",
        "HIGH, 200, 10",
        "MEDIUM, 199, 10",
        "MEDIUM, 200, 15"
    })
    void recovery_levels_are_those_of_the_regulation(PressureClass pressureClass, double pounds, double inches) {
        assertThat(Unit.INCH_MERCURY_VACUUM.fromBase(RecoveryLevel.required(pressureClass, Mass.pounds(pounds))
                        .pascals()))
                .isCloseTo(inches, within(1e-9));
    }

    /** 40 CFR 82.152 (from memory) with published liquid pressures at 104 °F. */
    @ParameterizedTest
    @CsvSource({"R-410A, HIGH", "R-22, HIGH", "R-454B, HIGH", "R-32, VERY_HIGH", "R-134a, MEDIUM"})
    void refrigerants_are_classed_by_their_liquid_pressure(String refrigerant, PressureClass pressureClass) {
        assertThat(RecoveryLevel.pressureClass(Known.refrigerant(refrigerant))).isEqualTo(pressureClass);
    }
}
