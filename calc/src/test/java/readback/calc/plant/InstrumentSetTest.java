package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/** What gauges and probes show, and that the judgement understands it. */
class InstrumentSetTest {

    private static final Measurands AT =
            Built.running(Built.PISTON, FaultSet.none()).at();

    @Test
    void the_judgement_finds_the_simulated_superheat_and_subcooling() {
        for (AirConditioner unit : Built.all()) {
            OperatingPoint.Running at = Built.running(unit, FaultSet.none());
            Judgement judgement =
                    judged(unit, Weather.RATING, InstrumentSet.exact().read(at.at(), Weather.RATING, new Random(1)));

            assertThat(judgement.superheat().orElseThrow().value().fahrenheit())
                    .as(unit.name())
                    .isCloseTo(at.superheat().fahrenheit(), within(0.02));
            assertThat(judgement.subcooling().orElseThrow().value().fahrenheit())
                    .as(unit.name())
                    .isCloseTo(at.subcooling().fahrenheit(), within(0.02));
        }
    }

    @Test
    void the_judgement_finds_the_superheat_at_altitude_too() {
        Weather high = Weather.RATING.in(Atmosphere.atAltitude(1_600));
        OperatingPoint.Running at = Built.running(Built.VALVE, high, FaultSet.none());
        Readings readings = InstrumentSet.exact().read(at.at(), high, new Random(1));

        assertThat(judged(Built.VALVE, high, readings)
                        .superheat()
                        .orElseThrow()
                        .value()
                        .fahrenheit())
                .isCloseTo(at.superheat().fahrenheit(), within(0.02));
        assertThat(judged(Built.VALVE, Weather.RATING, readings)
                        .superheat()
                        .orElseThrow()
                        .value()
                        .fahrenheit())
                .isLessThan(at.superheat().fahrenheit() - 0.5);
    }

    @Test
    void a_sound_unit_is_judged_in_tolerance() {
        for (AirConditioner unit : new AirConditioner[] {Built.PISTON, Built.VALVE}) {
            Readings readings = InstrumentSet.exact()
                    .read(Built.running(unit, FaultSet.none()).at(), Weather.RATING, new Random(1));

            assertThat(judged(unit, Weather.RATING, readings).verdict().kind())
                    .as(unit.name())
                    .isEqualTo(Verdict.Kind.IN_TOLERANCE);
        }
    }

    @Test
    void digital_instruments_show_tenths_and_dial_gauges_whole_pounds() {
        assertThat(shown(InstrumentSet.digital(), Quantity.SUCTION_PRESSURE)
                        .value()
                        .scale())
                .isEqualTo(1);
        assertThat(shown(InstrumentSet.digital(), Quantity.LIQUID_LINE_TEMPERATURE)
                        .value()
                        .scale())
                .isEqualTo(1);
        assertThat(shown(InstrumentSet.dial(), Quantity.LIQUID_PRESSURE).value().scale())
                .isZero();
    }

    @Test
    void the_same_random_numbers_give_the_same_readings_and_others_do_not() {
        Readings once = InstrumentSet.digital().read(AT, Weather.RATING, new Random(7));

        assertThat(InstrumentSet.digital().read(AT, Weather.RATING, new Random(7)))
                .isEqualTo(once);
        assertThat(InstrumentSet.digital().read(AT, Weather.RATING, new Random(8)))
                .isNotEqualTo(once);
    }

    @Test
    void readings_scatter_by_what_the_instruments_are_good_for() {
        Random random = new Random(11);
        double squares = 0;
        int count = 2_000;
        double actual =
                shown(InstrumentSet.exact(), Quantity.SUCTION_PRESSURE).value().doubleValue();
        for (int i = 0; i < count; i++) {
            double miss = InstrumentSet.digital()
                            .read(AT, Weather.RATING, random)
                            .find(Quantity.SUCTION_PRESSURE)
                            .orElseThrow()
                            .value()
                            .doubleValue()
                    - actual;
            squares += miss * miss;
        }
        assertThat(Math.sqrt(squares / count)).isCloseTo(0.5, within(0.05));
    }

    @Test
    void a_biased_probe_shows_so_much_more() {
        InstrumentSet wrong = InstrumentSet.exact()
                .withBias(Quantity.SUCTION_LINE_TEMPERATURE, TemperatureDifference.fahrenheit(3))
                .withBias(Quantity.OUTDOOR_TEMPERATURE, TemperatureDifference.fahrenheit(8));

        assertThat(difference(wrong, Quantity.SUCTION_LINE_TEMPERATURE)).isCloseTo(3, within(0.002));
        assertThat(difference(wrong, Quantity.OUTDOOR_TEMPERATURE)).isCloseTo(8, within(0.002));
        assertThat(difference(wrong, Quantity.SUCTION_PRESSURE)).isZero();
    }

    @Test
    void a_gauge_has_no_bias_in_degrees() {
        assertThatThrownBy(() ->
                        InstrumentSet.exact().withBias(Quantity.SUCTION_PRESSURE, TemperatureDifference.fahrenheit(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double difference(InstrumentSet wrong, Quantity quantity) {
        return shown(wrong, quantity)
                .value()
                .subtract(shown(InstrumentSet.exact(), quantity).value())
                .doubleValue();
    }

    private static Reading shown(InstrumentSet instruments, Quantity quantity) {
        return instruments
                .read(AT, Weather.RATING, new Random(5))
                .find(quantity)
                .orElseThrow();
    }

    private static Judgement judged(AirConditioner unit, Weather weather, Readings readings) {
        Readings all = readings;
        for (Reading stated : unit.plate().readings().asMap().values()) {
            all = all.with(stated);
        }
        return new ChargeJudge().judge(unit.underTest(weather), all);
    }
}
