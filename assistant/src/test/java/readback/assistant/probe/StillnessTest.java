package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.ProbeReport;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Unit;

/** The rules of decision 0026: a minute, 1 °F, 1.5 psi, 5 s. */
class StillnessTest {

    private final Stillness clamp = new Stillness(Dimension.TEMPERATURE);
    private final Stillness gauge = new Stillness(Dimension.GAUGE_PRESSURE);

    private static long at(double seconds) {
        return (long) (seconds * TimeUnit.SECONDS.toNanos(1));
    }

    private static void feed(Stillness still, double from, double to, double base) {
        for (double second = from; second <= to; second++) {
            still.take(new ProbeSample(base, "", at(second)));
        }
    }

    private static double fahrenheit(double value) {
        return Unit.FAHRENHEIT.toBase(value);
    }

    @Test
    void nothingIsSaidOfAProbeThatNeverGaveAValue() {
        assertThat(clamp.quality(at(100))).isEmpty();
    }

    @Test
    void aMinuteOfTheSameIsSteadyAndNotASecondEarlier() {
        feed(clamp, 0, 59, fahrenheit(62));
        assertThat(clamp.quality(at(59))).contains(ProbeReport.Quality.CHANGING);
        feed(clamp, 60, 60, fahrenheit(62));
        assertThat(clamp.quality(at(60))).contains(ProbeReport.Quality.STEADY);
    }

    @Test
    void aTemperatureMayMoveByLessThanADegree() {
        feed(clamp, 0, 30, fahrenheit(62));
        feed(clamp, 31, 61, fahrenheit(62.9));
        assertThat(clamp.quality(at(61))).contains(ProbeReport.Quality.STEADY);
        feed(clamp, 62, 62, fahrenheit(63.1));
        assertThat(clamp.quality(at(62))).contains(ProbeReport.Quality.CHANGING);
    }

    @Test
    void aPressureMayMoveByLessThanOneAndAHalfPsi() {
        feed(gauge, 0, 30, Unit.PSIG.toBase(118));
        feed(gauge, 31, 61, Unit.PSIG.toBase(119.4));
        assertThat(gauge.quality(at(61))).contains(ProbeReport.Quality.STEADY);
        feed(gauge, 62, 62, Unit.PSIG.toBase(119.6));
        assertThat(gauge.quality(at(62))).contains(ProbeReport.Quality.CHANGING);
    }

    @Test
    void aJumpIsForgottenAMinuteLater() {
        feed(clamp, 0, 60, fahrenheit(62));
        feed(clamp, 61, 61, fahrenheit(80));
        feed(clamp, 62, 121, fahrenheit(62));
        assertThat(clamp.quality(at(121))).contains(ProbeReport.Quality.CHANGING);
        feed(clamp, 122, 122, fahrenheit(62));
        assertThat(clamp.quality(at(122))).contains(ProbeReport.Quality.STEADY);
    }

    @Test
    void withoutAValueForFiveSecondsItIsStale() {
        feed(clamp, 0, 60, fahrenheit(62));
        assertThat(clamp.quality(at(65))).contains(ProbeReport.Quality.STEADY);
        assertThat(clamp.quality(at(65.1))).contains(ProbeReport.Quality.STALE);
    }

    @Test
    void afterAGapTheMinuteBeginsAnew() {
        feed(clamp, 0, 60, fahrenheit(62));
        feed(clamp, 66, 125, fahrenheit(62));
        assertThat(clamp.quality(at(125))).contains(ProbeReport.Quality.CHANGING);
        feed(clamp, 126, 126, fahrenheit(62));
        assertThat(clamp.quality(at(126))).contains(ProbeReport.Quality.STEADY);
    }

    @Test
    void whatIsNoNumberIsToldAndBeginsTheMinuteAnew() {
        feed(clamp, 0, 60, fahrenheit(62));
        feed(clamp, 61, 61, Double.NaN);
        assertThat(clamp.quality(at(61))).contains(ProbeReport.Quality.NOT_A_NUMBER);
        feed(clamp, 62, 121, fahrenheit(62));
        assertThat(clamp.quality(at(121))).contains(ProbeReport.Quality.CHANGING);
    }

    @Test
    void aLostConnectionBeginsTheMinuteAnew() {
        feed(clamp, 0, 60, fahrenheit(62));
        clamp.broken();
        assertThat(clamp.latest()).isEmpty();
        feed(clamp, 61, 62, fahrenheit(62));
        assertThat(clamp.quality(at(62))).contains(ProbeReport.Quality.CHANGING);
    }

    @Test
    void valuesThatComeLateCountForNothing() {
        feed(clamp, 10, 10, fahrenheit(62));
        feed(clamp, 5, 5, fahrenheit(90));
        assertThat(clamp.latest().orElseThrow().base()).isEqualTo(fahrenheit(62));
    }

    @Test
    void aFloodOfValuesIsThinned() {
        for (int i = 0; i <= 700_000; i++) {
            clamp.take(new ProbeSample(fahrenheit(62), "", TimeUnit.MICROSECONDS.toNanos(100L * i)));
        }
        assertThat(clamp.quality(at(70))).contains(ProbeReport.Quality.STEADY);
    }
}
