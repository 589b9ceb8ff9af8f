package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Event;
import readback.assistant.recorded.Scripted;
import readback.assistant.replay.Verification;
import readback.assistant.session.Session;
import readback.calc.quantity.Quantity;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Slot;

/** Going on with a session whose process stopped without warning. */
class ResumeTest {

    private static Session resume(SessionRecord.Resumption resumption) {
        return Session.resume(
                Scripted.dialogue(), Scripted.wording(), resumption, List.of(), Scripted.START.plusSeconds(3600));
    }

    private static Verification verified(RecordedSession session) {
        return Verification.of(Scripted.dialogue(), Scripted.wording(), Scripted.parts(), session);
    }

    @Test
    void a_session_goes_on_where_it_stopped_and_its_record_stays_whole(@TempDir Path sessions) throws Exception {
        Path folder =
                Scripted.session("cut").say(5, "four ten a").say(9, "piston").cutShortIn(sessions);
        SessionRecord.Resumption resumption = SessionRecord.resume(folder);
        try (SessionRecord record = resumption.record()) {
            Session session = resume(resumption);
            assertThat(session.assessment().refrigerant()).hasToString("Optional[R-410A]");
            session.on(new Event.Heard(
                    Scripted.START.plusSeconds(3700),
                    Event.Source.KEYS,
                    List.of(Hypothesis.typed("outdoor ninety five"))));
            session.on(new Event.Ended(Scripted.START.plusSeconds(3800)));
            assertThat(record.waiting()).isZero();
        }
        RecordedSession whole = RecordedSession.read(folder);
        assertThat(whole.entries()).extracting(Entry::number).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(whole.entries().get(3).event()).isInstanceOf(Event.Resumed.class);
        assertThat(whole.entries()
                        .get(4)
                        .outcome()
                        .change(Slot.of(Quantity.OUTDOOR_TEMPERATURE))
                        .map(Change::line))
                .contains("95 °F");
        assertThat(verified(whole)).returns(true, Verification::identical);
    }

    @Test
    void wherever_the_last_line_was_torn_it_is_dropped_and_told(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("torn").say(5, "four ten a").cutShortIn(sessions);
        Path file = folder.resolve(SessionRecord.FILE);
        byte[] whole = Files.readAllBytes(file);
        int lastLine = whole.length - 1;
        while (whole[lastLine - 1] != '\n') {
            lastLine--;
        }
        for (int length = lastLine + 1; length < whole.length; length++) {
            Files.write(file, Arrays.copyOf(whole, length));
            SessionRecord.Resumption resumption = SessionRecord.resume(folder);
            try (SessionRecord record = resumption.record()) {
                assertThat(resumption.dropped())
                        .hasValueSatisfying(fault -> assertThat(fault.kind()).isEqualTo(RecordFault.Kind.TORN));
                assertThat(resumption.session().entries()).hasSize(1);
                if (length % 97 == 0) {
                    resume(resumption);
                    assertThat(RecordedSession.read(record.folder()).fault()).isEmpty();
                }
            }
        }
    }

    @Test
    void a_damaged_record_is_not_written_on(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("damaged").say(5, "four ten a").cutShortIn(sessions);
        Path file = folder.resolve(SessionRecord.FILE);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        assertThatThrownBy(() -> SessionRecord.resume(folder))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("line 2 was changed");
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    @Test
    void a_finished_session_is_not_resumed(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("done").say(5, "four ten a").in(sessions);
        assertThatThrownBy(() -> SessionRecord.resume(folder)).hasMessageContaining("was brought to its end");
    }

    @Test
    void a_session_that_is_still_being_recorded_is_not_resumed(@TempDir Path sessions) throws Exception {
        try (SessionRecord open =
                SessionRecord.create(sessions, Scripted.session("open").header())) {
            Path folder = open.folder();
            assertThatThrownBy(() -> SessionRecord.resume(folder))
                    .isInstanceOf(RecordUnavailableException.class)
                    .hasMessageContaining("is being written");
        }
    }

    @Test
    void what_is_not_there_is_not_resumed(@TempDir Path sessions) {
        assertThatThrownBy(() -> SessionRecord.resume(sessions.resolve("nowhere")))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("There is no session record at");
    }
}
