package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Instrument;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Known;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.Saturation;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.TemperatureDifference;

/** JCGM 100:2008 (first order) against JCGM 101:2008 (Monte Carlo). */
class UncertaintyTest {

    private static final long SEED = 20260401;
    private static final int TRIALS = 20_000;

    private final ChargeJudge judge = new ChargeJudge();

    @Test
    void first_order_agrees_with_monte_carlo_within_five_percent_over_a_grid() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (Refrigerant refrigerant : new Refrigerant[] {Known.R410A, Known.R22}) {
            for (double evaporating : new double[] {20, 35, 50}) {
                check(refrigerant, Side.DEW, evaporating, 3.5, random);
            }
            for (double condensing : new double[] {85, 110, 135}) {
                check(refrigerant, Side.BUBBLE, condensing, 7, random);
            }
        }
    }

    private void check(
            Refrigerant refrigerant,
            Side side,
            double saturationFahrenheit,
            double gaugeLimit,
            SplittableRandom random) {
        double psig = refrigerant
                .saturationPressure(side, readback.calc.quantity.Temperature.fahrenheit(saturationFahrenheit))
                .gaugeIn(Atmosphere.SEA_LEVEL)
                .psig();
        boolean low = side == Side.DEW;
        SystemUnderTest system = SystemUnderTest.of(
                refrigerant, low ? MeteringDevice.PISTON : MeteringDevice.THERMOSTATIC_EXPANSION_VALVE);
        double line = saturationFahrenheit + (low ? 12 : -10);
        Judgement judgement = judge.judge(
                system,
                Readings.of(
                        reading(low ? Quantity.SUCTION_PRESSURE : Quantity.LIQUID_PRESSURE, psig),
                        reading(low ? Quantity.SUCTION_LINE_TEMPERATURE : Quantity.LIQUID_LINE_TEMPERATURE, line)));
        Estimate estimate = (low ? judgement.superheat() : judgement.subcooling()).orElseThrow();

        double sum = 0;
        double squares = 0;
        for (int i = 0; i < TRIALS; i++) {
            AbsolutePressure pressure = GaugePressure.psig(psig + random.nextDouble(-gaugeLimit, gaugeLimit))
                    .absoluteIn(Atmosphere.SEA_LEVEL);
            double probe = line + random.nextDouble(-1.8, 1.8);
            double value =
                    (probe - refrigerant.saturationTemperature(side, pressure).fahrenheit()) * (low ? 1 : -1);
            sum += value;
            squares += value * value;
        }
        double mean = sum / TRIALS;
        double deviation = Math.sqrt(squares / TRIALS - mean * mean);

        assertThat(estimate.standardUncertainty().fahrenheit())
                .as("%s %s at %s °F, seed %s", refrigerant, side, saturationFahrenheit, SEED)
                .isCloseTo(deviation, within(0.05 * deviation));
        assertThat(estimate.value().fahrenheit()).isCloseTo(mean, within(0.05));
    }

    /** JCGM 100:2008, 4.3.7 and 5.1.2, by hand: R-410A gains about 2.25 psi a degree at 40 °F (printed table). */
    @Test
    void gauge_and_probe_combine_as_a_root_of_squares() {
        Estimate superheat =
                judge.judge(PISTON, pistonWithLineAt(52)).superheat().orElseThrow();

        double byHand = Math.hypot(3.5 / 2.25, 1.8) / Math.sqrt(3);
        assertThat(superheat.standardUncertainty().fahrenheit()).isCloseTo(byHand, within(0.02));
        assertThat(superheat.expandedUncertainty().fahrenheit()).isCloseTo(2 * byHand, within(0.04));
    }

    /** The slope of the saturation line, where it can only be taken on one side. */
    @Test
    void the_slope_exists_at_both_ends_of_the_saturation_line() {
        for (Side side : Side.values()) {
            AbsolutePressure lowest = Known.R410A.lowestPressure(side);
            AbsolutePressure above = AbsolutePressure.pascals(lowest.pascals() * 1.002);
            double byHand = Known.R410A
                            .saturationTemperature(side, above)
                            .minus(Known.R410A.saturationTemperature(side, lowest))
                            .kelvins()
                    / (above.pascals() - lowest.pascals());

            assertThat(Saturation.at(lowest, Known.R410A, side).orElseThrow().kelvinsPerPascal())
                    .isCloseTo(byHand, within(0.01 * byHand));
            assertThat(Saturation.at(Known.R410A.highestPressure(side), Known.R410A, side))
                    .isPresent();
            assertThat(Saturation.at(AbsolutePressure.pascals(lowest.pascals() * 0.99), Known.R410A, side))
                    .isEmpty();
        }
    }

    @Test
    void the_instrument_that_contributes_most_is_named() {
        InstrumentAccuracy coarseGauges = new InstrumentAccuracy(
                GaugePressure.psig(10),
                GaugePressure.psig(20),
                TemperatureDifference.fahrenheit(0.5),
                TemperatureDifference.fahrenheit(0.5),
                TemperatureDifference.fahrenheit(0.5));

        assertThat(judge.judge(PISTON, pistonWithLineAt(52))
                        .superheat()
                        .orElseThrow()
                        .dominating())
                .contains(Instrument.SUCTION_LINE_PROBE);
        assertThat(judge.judge(PISTON.measuredWith(coarseGauges), pistonWithLineAt(52))
                        .superheat()
                        .orElseThrow()
                        .dominating())
                .contains(Instrument.SUCTION_GAUGE);
        assertThat(judge.judge(VALVE, valveWithLineAt(100))
                        .subcooling()
                        .orElseThrow()
                        .dominating())
                .contains(Instrument.LIQUID_LINE_PROBE);
        assertThat(judge.judge(VALVE.measuredWith(coarseGauges), valveWithLineAt(100))
                        .subcooling()
                        .orElseThrow()
                        .dominating())
                .contains(Instrument.LIQUID_GAUGE);
    }

    @Test
    void perfect_instruments_leave_no_doubt_and_dominate_nothing() {
        TemperatureDifference none = TemperatureDifference.kelvins(0);
        InstrumentAccuracy perfect =
                new InstrumentAccuracy(GaugePressure.psig(0), GaugePressure.psig(0), none, none, none);

        Judgement judgement = judge.judge(PISTON.measuredWith(perfect), pistonWithLineAt(45));

        assertThat(judgement.superheat().orElseThrow().dominating()).isEmpty();
        assertThat(((Verdict.Compared) judgement.verdict()).deviation().probability())
                .isEqualTo(1);
        assertThat(judgement.verdict().borderline()).isFalse();
    }

    @Test
    void a_negative_accuracy_is_refused_with_its_name() {
        TemperatureDifference good = TemperatureDifference.fahrenheit(1);
        TemperatureDifference bad = TemperatureDifference.fahrenheit(-1);
        GaugePressure gauge = GaugePressure.psig(1);

        assertRefused("suction gauge", () -> new InstrumentAccuracy(GaugePressure.psig(-1), gauge, good, good, good));
        assertRefused("liquid gauge", () -> new InstrumentAccuracy(gauge, GaugePressure.psig(-1), good, good, good));
        assertRefused("line probe", () -> new InstrumentAccuracy(gauge, gauge, bad, good, good));
        assertRefused("wet-bulb probe", () -> new InstrumentAccuracy(gauge, gauge, good, bad, good));
        assertRefused("air probe", () -> new InstrumentAccuracy(gauge, gauge, good, good, bad));
    }

    private static void assertRefused(String what, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        org.assertj.core.api.Assertions.assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(call)
                .withMessageContaining(what);
    }
}
