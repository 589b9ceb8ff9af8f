package readback.calc.procedure;

import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * A circuit filled with nitrogen and left standing: does it lose gas, or did the gas only cool?
 *
 * <p>At constant volume the absolute pressure follows the absolute temperature of the gas: P2 = P1 T2 / T1. The fixed
 * 0.3 psi a degree Fahrenheit of older guide specifications (UFGS 15652A, 15182 3.3.2) is right near 150 psig only. The
 * temperature is that of the line, not of the air, and must have settled.
 */
public final class StandingPressure {

    /**
     * How well one digital gauge repeats itself; its common error is the same at both readings and cancels. Common
     * practice, no source.
     */
    private static final GaugePressure GAUGE_REPEATS_WITHIN = GaugePressure.psig(1);

    /** The probe, moved or lifted between the two readings. Common practice, no source. */
    private static final TemperatureDifference PROBE_REPEATS_WITHIN = TemperatureDifference.fahrenheit(1.8);

    private StandingPressure() {}

    /** What the readings mean. */
    public enum Outcome {
        /** No loss beyond what gauge and probe explain. */
        TIGHT,
        /** Gas was lost. */
        LEAKING,
        /** More pressure than warming explains: the line temperature was not that of the gas, or is not settled. */
        NOT_SETTLED
    }

    /**
     * What came of it.
     *
     * @param expected the pressure of a tight circuit at the later temperature
     * @param loss expected less measured; negative when the gauge reads high
     * @param allowance the 95 % uncertainty of the loss
     */
    public record Result(Outcome outcome, GaugePressure expected, GaugePressure loss, GaugePressure allowance) {}

    /** The gauge pressure that the same gas shows at another temperature. */
    public static GaugePressure expected(
            GaugePressure start, Temperature startGas, Temperature endGas, AbsolutePressure atmosphere) {
        double absolute = start.absoluteIn(atmosphere).pascals() * endGas.kelvin() / startGas.kelvin();
        return AbsolutePressure.pascals(absolute).gaugeIn(atmosphere);
    }

    /** Compares the pressure after the wait with that of a tight circuit. */
    public static Result judge(
            GaugePressure start,
            Temperature startGas,
            GaugePressure end,
            Temperature endGas,
            AbsolutePressure atmosphere) {
        GaugePressure expected = expected(start, startGas, endGas, atmosphere);
        double loss = expected.pascals() - end.pascals();
        double pascalsPerKelvin = start.absoluteIn(atmosphere).pascals() / startGas.kelvin();
        // two readings of each instrument, each a rectangular limit: JCGM 100:2008, 4.3.7; coverage factor 2
        double allowance = 2
                * Math.sqrt(2.0 / 3)
                * Math.hypot(GAUGE_REPEATS_WITHIN.pascals(), pascalsPerKelvin * PROBE_REPEATS_WITHIN.kelvins());
        Outcome outcome = loss > allowance ? Outcome.LEAKING : loss < -allowance ? Outcome.NOT_SETTLED : Outcome.TIGHT;
        return new Result(outcome, expected, GaugePressure.pascals(loss), GaugePressure.pascals(allowance));
    }
}
