package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Probe;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.ProbeValue;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Session;
import readback.calc.quantity.Unit;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

class BoardTest {

    @TempDir
    private Path folder;

    private final Board board =
            new Board(Grammar.standard(), Checklists.standard(), Language.english(), SessionSettings.STANDARD.units());

    /** A charge check of a piston system up to the weather. */
    private static Scripted call(String name) {
        return Scripted.session(name)
                .say(5, "four ten a")
                .say(9, "piston")
                .say(12, "understood")
                .say(15, "yes")
                .say(18, "yes")
                .say(21, "outdoor ninety five")
                .say(24, "wet bulb sixty seven");
    }

    private Session resumed(SessionRecord.Resumption resumption) {
        return Session.resume(
                Scripted.dialogue(), Scripted.wording(), resumption, List.of(board), Scripted.START.plusSeconds(60));
    }

    private static ProbeReport report(int number, ProbeReport.Quality quality, String value, Unit unit) {
        return new ProbeReport(
                new Probe(number, "channel", unit.dimension(), Optional.empty()),
                quality,
                Optional.of(new ProbeValue(new BigDecimal(value), unit, "raw", Scripted.START)));
    }

    /** Offered or not stands beside every probe, and what is offered can be touched. */
    @Test
    void a_probe_is_shown_live_and_its_offer_can_be_touched() throws Exception {
        Path left = call("probed").cutShortIn(folder);
        SessionRecord.Resumption resumption = SessionRecord.resume(left);
        try (SessionRecord record = resumption.record()) {
            Session session = resumed(resumption);
            ProbeReport gauge = report(1, ProbeReport.Quality.STEADY, "118.2", Unit.PSIG);
            ProbeReport clamp = report(2, ProbeReport.Quality.CHANGING, "71.3", Unit.FAHRENHEIT);
            session.on(new Event.Measured(Scripted.START.plusSeconds(61), List.of(gauge, clamp)));
            session.on(new Event.Heard(
                    Scripted.START.plusSeconds(70),
                    Event.Source.KEYS,
                    List.of(Hypothesis.typed("probe one is the suction pressure"))));
            board.showing(List.of(gauge, clamp));

            assertThat(record.waiting()).isZero();
            View view = board.view(session, ViewsForTests.STATUS, List.of(), "");
            assertThat(view.probes())
                    .containsExactly(
                            new View.Row("Probe 1, suction pressure", "118.2 psig", "offered"),
                            new View.Row("Probe 2, not named yet", "71.3 °F", "not steady"));
            assertThat(view.options())
                    .containsExactly(new View.Option("TAKE suction pressure 118.2 psig", "take suction pressure"));

            session.on(new Event.Heard(
                    Scripted.START.plusSeconds(80),
                    Event.Source.KEYS,
                    List.of(Hypothesis.typed(view.options().get(0).words()))));
            assertThat(board.view(session, ViewsForTests.STATUS, List.of(), "").readings())
                    .contains(new View.Row("suction pressure", "118.2 psig", ""));
        }
    }

    /** A screen that is too small shows the last answers: the verdict and the first step, not what they rest on. */
    @Test
    void what_is_spoken_stands_last_among_the_answers() throws Exception {
        Path left = call("shown")
                .say(27, "suction one ten")
                .say(30, "suction line sixty four")
                .say(33, "liquid pressure three thirty")
                .say(36, "liquid line one hundred")
                .say(39, "skip")
                .cutShortIn(folder);
        SessionRecord.Resumption resumption = SessionRecord.resume(left);
        try (SessionRecord record = resumption.record()) {
            Session session = resumed(resumption);
            session.on(new Event.Heard(
                    Scripted.START.plusSeconds(70), Event.Source.KEYS, List.of(Hypothesis.typed("ten pounds"))));

            assertThat(record.waiting()).isZero();
            List<String> answers =
                    board.view(session, ViewsForTests.STATUS, List.of(), "").answers();
            String all = String.join(" / ", answers);
            assertThat(all).contains("Superheat is", "First step: add", "The airflow was not measured");
            assertThat(all.indexOf("Superheat is")).isGreaterThan(all.indexOf("The airflow was not measured"));
            assertThat(answers.get(answers.size() - 1)).startsWith("First step: add");
        }
    }
}
