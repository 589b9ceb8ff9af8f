package readback.assistant.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Session;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

class BoardTest {

    @TempDir
    private Path folder;

    /** A screen that is too small shows the last answers: the verdict and the first step, not what they rest on. */
    @Test
    void what_is_spoken_stands_last_among_the_answers() throws Exception {
        Board board = new Board(
                Grammar.standard(), Checklists.standard(), Language.english(), SessionSettings.STANDARD.units());
        Path left = Scripted.session("shown")
                .say(5, "four ten a")
                .say(9, "piston")
                .say(12, "understood")
                .say(15, "yes")
                .say(18, "yes")
                .say(21, "outdoor ninety five")
                .say(24, "wet bulb sixty seven")
                .say(27, "suction one ten")
                .say(30, "suction line sixty four")
                .say(33, "liquid pressure three thirty")
                .say(36, "liquid line one hundred")
                .say(39, "skip")
                .cutShortIn(folder);
        SessionRecord.Resumption resumption = SessionRecord.resume(left);
        try (SessionRecord record = resumption.record()) {
            Session session = Session.resume(
                    Scripted.dialogue(),
                    Scripted.wording(),
                    resumption,
                    List.of(board),
                    Scripted.START.plusSeconds(60));
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
