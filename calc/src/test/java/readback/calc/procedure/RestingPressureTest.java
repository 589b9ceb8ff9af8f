package readback.calc.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Known;
import readback.calc.procedure.RestingPressure.Outcome;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** Printed R-410A table: 235.3 psig at 80 °F, 3.7 psi a degree; Dalton's law for the rest. */
class RestingPressureTest {

    @Test
    void fifteen_psi_above_saturation_is_air_or_nitrogen() {
        RestingPressure.Result result = judge(Known.R410A, 250, 80);

        assertThat(result.outcome()).isEqualTo(Outcome.NON_CONDENSABLES);
        // the printed table and the equation of Lemmon 2003 lie 1.2 psi, or 0.3 °F, apart here
        assertThat(result.saturation().psig()).isCloseTo(235.3, within(1.3));
        assertThat(result.excess().psig()).isCloseTo(14.7, within(1.3));
        assertThat(result.allowance().psig()).isCloseTo(2 / Math.sqrt(3) * Math.hypot(7, 3.7 * 1.8), within(0.2));
    }

    @Test
    void saturation_pressure_means_nothing_but_refrigerant() {
        assertThat(judge(Known.R410A, 236, 80).outcome()).isEqualTo(Outcome.SATURATION);
        assertThat(judge(Known.R410A, 246, 80).outcome()).isEqualTo(Outcome.SATURATION);
        assertThat(judge(Known.R410A, 225, 80).outcome()).isEqualTo(Outcome.SATURATION);
    }

    @Test
    void far_below_saturation_no_liquid_is_left_or_it_is_something_else() {
        RestingPressure.Result result = judge(Known.R410A, 140, 80);

        assertThat(result.outcome()).isEqualTo(Outcome.BELOW_SATURATION);
        assertThat(result.excess().psig()).isNegative();
    }

    /** R-454B glides: any pressure between dew and bubble point is saturation. */
    @Test
    void a_blend_rests_anywhere_between_dew_and_bubble_point() {
        Refrigerant blend = Known.refrigerant("R-454B");
        Temperature eighty = Temperature.fahrenheit(80);
        double bubble =
                blend.bubblePressure(eighty).gaugeIn(Atmosphere.SEA_LEVEL).psig();
        double dew = blend.dewPressure(eighty).gaugeIn(Atmosphere.SEA_LEVEL).psig();

        assertThat(bubble).isGreaterThan(dew + 3);
        assertThat(exact(blend, bubble - 0.1).outcome()).isEqualTo(Outcome.SATURATION);
        assertThat(exact(blend, dew + 0.1).outcome()).isEqualTo(Outcome.SATURATION);
        assertThat(exact(blend, bubble + 0.1).outcome()).isEqualTo(Outcome.NON_CONDENSABLES);
        assertThat(exact(blend, dew - 0.1).outcome()).isEqualTo(Outcome.BELOW_SATURATION);
    }

    @Test
    void a_temperature_without_saturation_is_refused() {
        org.assertj.core.api.Assertions.assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> judge(Known.R410A, 250, 200));
    }

    private static RestingPressure.Result exact(Refrigerant refrigerant, double psig) {
        return RestingPressure.judge(
                refrigerant,
                GaugePressure.psig(psig),
                Temperature.fahrenheit(80),
                Atmosphere.SEA_LEVEL,
                GaugePressure.psig(0),
                TemperatureDifference.kelvins(0));
    }

    private static RestingPressure.Result judge(Refrigerant refrigerant, double psig, double fahrenheit) {
        return RestingPressure.judge(
                refrigerant,
                GaugePressure.psig(psig),
                Temperature.fahrenheit(fahrenheit),
                Atmosphere.SEA_LEVEL,
                InstrumentAccuracy.STANDARD.liquidGauge().at(GaugePressure.psig(psig)),
                InstrumentAccuracy.STANDARD.lineProbe());
    }
}
