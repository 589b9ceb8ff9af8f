package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.GaugeAccuracy;
import readback.calc.measurement.Instrument;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.Known;
import readback.calc.measurement.Limits;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.Saturation;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.measurement.Undecided;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
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
            pressure = AbsolutePressure.pascals(pressure.pascals() + random.nextDouble(-2_500, 2_500));
            // the line was said to a tenth, and the clamp is a degree from what flows in the pipe
            double probe =
                    line + random.nextDouble(-1.8, 1.8) + random.nextDouble(-1, 1) + random.nextDouble(-0.05, 0.05);
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

    /**
     * JCGM 100:2008, 4.3.7 and 5.1.2, by hand: R-410A gains about 2.25 psi a degree at 40 °F (printed table); contact 1
     * °F, weather 0.36 psi.
     */
    @Test
    void everything_that_may_be_off_combines_as_a_root_of_squares() {
        Estimate superheat =
                judge.judge(PISTON, pistonWithLineAt(52)).superheat().orElseThrow();

        double byHand = rootOfSquares(3.5 / 2.25, 1.8, 1, 0.36 / 2.25) / Math.sqrt(3);
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
        InstrumentAccuracy coarseGauges =
                InstrumentAccuracy.STANDARD.withGauges(GaugeAccuracy.within(GaugePressure.psig(20)));

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
        Judgement judgement = judge.judge(PISTON.measuredWith(InstrumentAccuracy.PERFECT), pistonWithLineAt(45));

        assertThat(judgement.superheat().orElseThrow().contributions())
                .extracting(Estimate.Contribution::cause)
                .containsOnly(Estimate.Cause.RESOLUTION);
        assertThat(((Verdict.Compared) judgement.verdict()).deviation().probability())
                .isEqualTo(1);
        assertThat(judgement.verdict().borderline()).isFalse();
    }

    /**
     * JCGM 100:2008, F.2.2.1: a value said to the degree may be half a degree off, one said to the tenth a twentieth.
     */
    @Test
    void a_value_said_with_fewer_digits_is_less_sure() {
        Readings tenth = pistonWithLineAt(52);
        Readings degree = tenth.with(Reading.of(Quantity.SUCTION_LINE_TEMPERATURE, "52"));

        double fine = square(judge.judge(PISTON, tenth));
        double coarse = square(judge.judge(PISTON, degree));

        assertThat(coarse - fine).isCloseTo((0.5 * 0.5 - 0.05 * 0.05) / 3, within(1e-6));
    }

    private static double square(Judgement judgement) {
        double u = judgement.superheat().orElseThrow().standardUncertainty().fahrenheit();
        return u * u;
    }

    /** By hand: between 4,500 and 5,500 ft the air pressure falls by 0.46 psi (ASHRAE table), 0.2 °F of saturation. */
    @Test
    void a_round_altitude_is_less_sure_than_one_to_the_foot() {
        Readings feet = pistonWithLineAt(52).with(Reading.of(Quantity.ALTITUDE, "5001"));
        Readings thousand = feet.with(Reading.of(Quantity.ALTITUDE, "5000"));

        double more = square(judge.judge(PISTON, thousand)) - square(judge.judge(PISTON, feet));

        assertThat(Math.sqrt(3 * more)).isCloseTo(0.23 / 2.25, within(0.01));
    }

    /**
     * JCGM 100:2008, 5.1.2: measured and target are independent. 3 °F at 1.9 a degree of wet bulb is 5.7 °F of target.
     */
    @Test
    void the_wet_bulb_counts_in_the_verdict_and_is_named() {
        SystemUnderTest coarse =
                PISTON.measuredWith(InstrumentAccuracy.STANDARD.withWetBulbProbe(TemperatureDifference.fahrenheit(3)));

        Verdict.Compared fair = compared(PISTON, 52);
        Verdict.Compared open = compared(coarse, 52);

        assertThat(fair.borderline()).isFalse();
        assertThat(open.kind()).isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(open.borderline()).isTrue();
        assertThat(open.undecided().orElseThrow().instrument()).isEqualTo(Instrument.WET_BULB_PROBE);
    }

    @Test
    void a_plate_value_brings_no_doubt_of_its_own() {
        Judgement judgement = judge.judge(VALVE, valveWithLineAt(100));

        assertThat(judgement.target().orElseThrow().contributions()).isEmpty();
        Estimate subcooling = judgement.subcooling().orElseThrow();
        TemperatureDifference plate = judgement.target().orElseThrow().value();
        Estimate aboveThePlate = new Estimate(subcooling.value().minus(plate), subcooling.contributions());
        assertThat(((Verdict.Compared) judgement.verdict()).deviation().probability())
                .isEqualTo(Comparison.of(aboveThePlate, Limits.INSTALLER.subcooling())
                        .probability());
    }

    /** What is named as sufficient must decide, and a twentieth more must not. */
    @Test
    void the_accuracy_that_is_named_decides_and_no_worse_one_does() {
        int named = 0;
        for (double line = 40; line <= 64; line += 0.5) {
            Optional<Undecided> undecided = compared(PISTON, line).undecided();
            if (undecided.flatMap(Undecided::sufficientTemperature).isEmpty()) {
                continue;
            }
            named++;
            double sufficient = undecided
                    .orElseThrow()
                    .sufficientTemperature()
                    .orElseThrow()
                    .fahrenheit();
            assertThat(undecided.orElseThrow().instrument()).isEqualTo(Instrument.WET_BULB_PROBE);
            assertThat(compared(wetBulbGoodTo(sufficient * 0.999), line).borderline())
                    .as("%s at %s", sufficient, line)
                    .isFalse();
            assertThat(compared(wetBulbGoodTo(sufficient * 1.05), line).borderline())
                    .as("%s at %s", sufficient, line)
                    .isTrue();
        }
        assertThat(named).isPositive();
    }

    private static SystemUnderTest wetBulbGoodTo(double fahrenheit) {
        return PISTON.measuredWith(
                InstrumentAccuracy.STANDARD.withWetBulbProbe(TemperatureDifference.fahrenheit(fahrenheit)));
    }

    /** Exactly on the limit the chances are even, whatever the wet bulb. */
    @Test
    void where_no_accuracy_would_decide_none_is_named() {
        double target = judge.judge(PISTON, pistonWithLineAt(52))
                .target()
                .orElseThrow()
                .value()
                .fahrenheit();
        Undecided undecided = compared(PISTON, Known.EVAPORATING_AT_118 + target + 5)
                .undecided()
                .orElseThrow();

        assertThat(undecided.sufficient()).isEmpty();
    }

    @Test
    void a_gauge_that_leaves_it_open_is_named_with_a_pressure() {
        SystemUnderTest coarse =
                VALVE.measuredWith(InstrumentAccuracy.STANDARD.withGauges(GaugeAccuracy.percentOfReading(5)));
        Undecided undecided = ((Verdict.Compared)
                        judge.judge(coarse, Known.valveWithSubcooling(10)).verdict())
                .undecided()
                .orElseThrow();

        assertThat(undecided.instrument()).isEqualTo(Instrument.LIQUID_GAUGE);
        assertThat(undecided.sufficientTemperature()).isEmpty();
        assertThat(undecided.sufficientPressure().orElseThrow().psig()).isBetween(7.0, 18.2);
    }

    private Verdict.Compared compared(SystemUnderTest system, double line) {
        return (Verdict.Compared) judge.judge(system, pistonWithLineAt(line)).verdict();
    }

    private static double rootOfSquares(double... values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    @Test
    void a_gauge_is_off_by_its_share_of_what_it_shows() {
        assertThat(GaugeAccuracy.percentOfReading(1).at(GaugePressure.psig(365)).psig())
                .isCloseTo(3.65, within(1e-9));
        assertThat(GaugeAccuracy.within(GaugePressure.psig(2))
                        .at(GaugePressure.psig(365))
                        .psig())
                .isCloseTo(2, within(1e-9));
    }

    @Test
    void an_accuracy_that_cannot_be_is_refused_with_its_name() {
        TemperatureDifference bad = TemperatureDifference.fahrenheit(-1);
        InstrumentAccuracy standard = InstrumentAccuracy.STANDARD;

        assertRefused("gauge", () -> GaugeAccuracy.within(GaugePressure.psig(-1)));
        assertRefused("gauge", () -> GaugeAccuracy.percentOfReading(101));
        assertRefused("line probe", () -> standard.withLineProbes(bad));
        assertRefused("wet-bulb probe", () -> standard.withWetBulbProbe(bad));
        assertRefused("air probe", () -> standard.withAirProbes(bad));
    }

    private static void assertRefused(String what, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        org.assertj.core.api.Assertions.assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(call)
                .withMessageContaining(what);
    }
}
