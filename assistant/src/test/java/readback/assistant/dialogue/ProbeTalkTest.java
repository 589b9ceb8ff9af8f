package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.dialogue.ProbeReport.Quality;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;
import readback.grammar.Hypothesis;

/** The rules of decision 0026, as far as they are the dialogue's. */
class ProbeTalkTest {

    private static final Probe GAUGE =
            new Probe(1, "gauge", Dimension.GAUGE_PRESSURE, Optional.of(Quantity.SUCTION_PRESSURE));
    private static final Probe CLAMP =
            new Probe(2, "clamp", Dimension.TEMPERATURE, Optional.of(Quantity.SUCTION_LINE_TEMPERATURE));

    private final Rehearsal call =
            new Rehearsal().says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67");

    private void shows(Probe probe, Quality quality, String value) {
        Unit unit = probe.dimension() == Dimension.TEMPERATURE ? Unit.FAHRENHEIT : Unit.PSIG;
        ProbeValue shown = new ProbeValue(new BigDecimal(value), unit, value + " raw", call.now());
        call.happens(new Event.Measured(call.now(), List.of(new ProbeReport(probe, quality, Optional.of(shown)))));
    }

    private Optional<String> suction() {
        return call.assessment()
                .readings()
                .find(Quantity.SUCTION_PRESSURE)
                .map(reading -> reading.value().toPlainString());
    }

    @Test
    void nothingIsTakenByItself() {
        shows(GAUGE, Quality.STEADY, "118.2");
        call.passes(Duration.ofMinutes(5));
        shows(GAUGE, Quality.STEADY, "119.2");

        assertThat(suction()).isEmpty();
        assertThat(call.turn().outcome().changes()).isEmpty();
    }

    @Test
    void whatIsTakenKeepsWhereItCameFromThroughADoubt() {
        shows(GAUGE, Quality.STEADY, "55.0");
        call.says("take");
        assertThat(call.keys()).contains("confirm.unusual");
        assertThat(suction()).isEmpty();

        call.says("yes");
        assertThat(suction()).contains("55.0");
        assertThat(call.turn().outcome().changes().get(0).after().flatMap(Content::probe))
                .hasValueSatisfying(source -> {
                    assertThat(source.channel()).isEqualTo("gauge");
                    assertThat(source.raw()).isEqualTo("55.0 raw");
                });
    }

    @Test
    void whatIsNotSteadyIsNotTaken() {
        shows(GAUGE, Quality.CHANGING, "118.2");
        call.says("take");
        assertThat(call.keys()).contains("probe.nothing-offered");
        call.says("take the suction");
        assertThat(call.keys()).contains("probe.not-offered");
        assertThat(suction()).isEmpty();
    }

    @Test
    void whereOneValueIsAskedForAnotherIsNotTakenInItsPlace() {
        shows(CLAMP, Quality.STEADY, "62.0");
        call.says("take");
        assertThat(call.keys()).contains("probe.which");
        assertThat(call.assessment().readings().has(Quantity.SUCTION_LINE_TEMPERATURE))
                .isFalse();
    }

    @Test
    void aWeakWordTakesNothing() {
        shows(GAUGE, Quality.STEADY, "118.2");
        call.hears(new Hypothesis("take", 0.55, List.of()), new Hypothesis("eight", 0.45, List.of()));
        assertThat(suction()).isEmpty();
    }

    /** 5 psi and 3 °F: what is further apart is asked about, what is not, is not. */
    @ParameterizedTest
    @CsvSource({"113, false", "114, false", "123, false", "124, true", "112, true"})
    void aPressureThatTheProbeShowsOtherwiseIsAskedAbout(String said, boolean asked) {
        shows(GAUGE, Quality.STEADY, "118.0");
        call.says("suction " + said);
        assertThat(call.keys().contains("probe.otherwise")).isEqualTo(asked);
        assertThat(suction().isEmpty()).isEqualTo(asked);
    }

    @ParameterizedTest
    @CsvSource({"59, false", "65, false", "66, true", "58, true"})
    void aTemperatureThatTheProbeShowsOtherwiseIsAskedAbout(String said, boolean asked) {
        shows(CLAMP, Quality.STEADY, "62.0");
        call.says("suction line temperature " + said + " degrees");
        assertThat(call.keys().contains("probe.otherwise")).isEqualTo(asked);
        assertThat(call.assessment().readings().has(Quantity.SUCTION_LINE_TEMPERATURE))
                .isEqualTo(!asked);
    }

    @Test
    void whatIsSaidBeatsTheProbe() {
        shows(GAUGE, Quality.STEADY, "118.0");
        call.says("suction 130", "yes");
        assertThat(suction()).contains("130");
        call.says("take the suction");
        assertThat(suction()).contains("118.0");
        call.says("correction 128");
        assertThat(call.keys()).contains("probe.still");
        assertThat(suction()).contains("128");
    }

    @Test
    void aProbeThatMovesIsNoWitness() {
        shows(GAUGE, Quality.CHANGING, "118.0");
        call.says("suction 130");
        assertThat(suction()).contains("130");
    }

    @Test
    void severalOffersOfWhichNoneIsAskedForAreNamed() {
        Rehearsal early = new Rehearsal().says("four ten a", "piston", "understood");
        for (Probe probe : List.of(GAUGE, CLAMP)) {
            boolean gauge = probe.equals(GAUGE);
            ProbeValue shown = new ProbeValue(
                    new BigDecimal(gauge ? "118.0" : "62.0"), gauge ? Unit.PSIG : Unit.FAHRENHEIT, "", early.now());
            early.happens(new Event.Measured(
                    early.now(), List.of(new ProbeReport(probe, Quality.STEADY, Optional.of(shown)))));
        }
        early.says("take");
        assertThat(early.keys()).contains("probe.which");
        early.says("take the suction line");
        assertThat(early.assessment().readings().has(Quantity.SUCTION_LINE_TEMPERATURE))
                .isTrue();
    }

    @Test
    void troubleIsToldOnceUntilItIsWellAgain() {
        shows(GAUGE, Quality.STEADY, "118.0");
        shows(GAUGE, Quality.STALE, "118.0");
        assertThat(call.keys()).containsExactly("probe.trouble.stale");
        shows(GAUGE, Quality.LOST, "118.0");
        shows(GAUGE, Quality.CHANGING, "118.0");
        shows(GAUGE, Quality.STALE, "118.0");
        assertThat(call.keys()).isEmpty();
        shows(GAUGE, Quality.STEADY, "118.0");
        shows(GAUGE, Quality.LOST, "118.0");
        assertThat(call.keys()).containsExactly("probe.trouble.lost");
    }

    @Test
    void onHoldNothingIsSpoken() {
        call.says("hold on");
        shows(GAUGE, Quality.STEADY, "118.0");
        shows(GAUGE, Quality.LOST, "118.0");
        assertThat(call.spoken()).isEmpty();
        assertThat(call.state().held()).isTrue();
    }

    /** Where nothing is offered nothing more is listened for, and a drifting value changes nothing of it. */
    @Test
    void whatIsListenedForChangesOnlyWithWhatIsOffered() {
        assertThat(Rehearsal.DIALOGUE.expectation(call.state()).probes().offered())
                .isEmpty();
        shows(GAUGE, Quality.STEADY, "118.0");
        assertThat(listens()).isTrue();
        assertThat(Rehearsal.DIALOGUE.expectation(call.state()).probes().offered())
                .containsExactly(Quantity.SUCTION_PRESSURE);
        shows(GAUGE, Quality.STEADY, "118.7");
        assertThat(listens()).isFalse();
        shows(GAUGE, Quality.CHANGING, "121.0");
        assertThat(listens()).isTrue();
    }

    private boolean listens() {
        return call.turn().effects().stream().anyMatch(Effect.Listen.class::isInstance);
    }
}
