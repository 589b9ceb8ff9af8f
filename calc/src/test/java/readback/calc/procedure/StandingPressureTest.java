package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.procedure.StandingPressure.Outcome;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;

/** The gas law by hand: P2 = (P1 + 14.696) (T2 + 459.67) / (T1 + 459.67) − 14.696, psig and °F. */
class StandingPressureTest {

    @ParameterizedTest
    @CsvSource({"500, 90, 70, 481.3", "300, 70, 60, 294.1", "150, 70, 70, 150.0"})
    void a_tight_circuit_follows_the_absolute_temperature(double psig, double start, double end, double expected) {
        assertThat(expected(psig, start, end).psig()).isCloseTo(expected, within(0.06));
    }

    /** UFGS 15652A: 0.3 psi a degree, right near 150 psig only. */
    @Test
    void a_degree_is_worth_three_tenths_of_a_psi_at_150_psig_and_three_times_that_at_500() {
        assertThat(expected(150, 70, 71).psig() - 150).isCloseTo(0.31, within(0.005));
        assertThat(expected(500, 90, 91).psig() - 500).isCloseTo(0.94, within(0.005));
    }

    @Test
    void nine_psi_below_the_expectation_is_a_leak() {
        StandingPressure.Result result = judge(300, 70, 285, 60);

        assertThat(result.outcome()).isEqualTo(Outcome.LEAKING);
        assertThat(result.expected().psig()).isCloseTo(294.1, within(0.06));
        assertThat(result.loss().psig()).isCloseTo(9.1, within(0.06));
        // two readings each of a gauge within 1 psi and a probe within 1.8 °F at 0.594 psi a degree
        assertThat(result.allowance().psig())
                .isCloseTo(2 * Math.sqrt(2.0 / 3) * Math.hypot(1, 0.594 * 1.8), within(0.01));
    }

    @Test
    void a_fall_that_cooling_explains_is_no_leak() {
        assertThat(judge(500, 90, 481, 70).outcome()).isEqualTo(Outcome.TIGHT);
        assertThat(judge(300, 70, 300, 70).outcome()).isEqualTo(Outcome.TIGHT);
    }

    @Test
    void a_rise_beyond_explanation_means_that_the_temperature_has_not_settled() {
        assertThat(judge(300, 70, 304, 70).outcome()).isEqualTo(Outcome.NOT_SETTLED);
        assertThat(judge(300, 70, 302, 70).outcome()).isEqualTo(Outcome.TIGHT);
        assertThat(judge(300, 70, 298, 70).outcome()).isEqualTo(Outcome.TIGHT);
        assertThat(judge(300, 70, 296, 70).outcome()).isEqualTo(Outcome.LEAKING);
    }

    private static StandingPressure.Result judge(double start, double startF, double end, double endF) {
        return StandingPressure.judge(
                GaugePressure.psig(start),
                Temperature.fahrenheit(startF),
                GaugePressure.psig(end),
                Temperature.fahrenheit(endF),
                Atmosphere.SEA_LEVEL);
    }

    private static GaugePressure expected(double psig, double start, double end) {
        return StandingPressure.expected(
                GaugePressure.psig(psig),
                Temperature.fahrenheit(start),
                Temperature.fahrenheit(end),
                Atmosphere.SEA_LEVEL);
    }

    /** Absolute pressure counts: in thin air the same gauge pressure is less gas. */
    @Test
    void the_local_air_pressure_is_part_of_the_gas_law() {
        GaugePressure high = StandingPressure.expected(
                GaugePressure.psig(150),
                Temperature.fahrenheit(70),
                Temperature.fahrenheit(100),
                AbsolutePressure.psia(10.107));

        assertThat(high.psig()).isCloseTo((150 + 10.107) * (559.67 / 529.67) - 10.107, within(1e-6));
    }
}
