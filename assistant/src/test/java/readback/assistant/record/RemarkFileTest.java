package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** What a supervisor writes about a session. */
class RemarkFileTest {

    @Test
    void stand_beside_a_record_that_they_do_not_change(@TempDir Path sessions) throws Exception {
        RecordedSession session = Scripted.session("seen").say(5, "four ten a").readFrom(sessions);
        byte[] before = Files.readAllBytes(session.folder().resolve(SessionRecord.FILE));
        RemarkFile.add(session, Scripted.START, "A. Supervisor", "Why R-410A?");
        RemarkFile.add(session, Scripted.START.plusSeconds(9), "A. Supervisor", "Ah, the \"plate\" says so.\n");
        assertThat(Files.readAllBytes(session.folder().resolve(SessionRecord.FILE)))
                .isEqualTo(before);
        RemarkFile remarks = RemarkFile.on(session);
        assertThat(remarks.fault()).isEmpty();
        assertThat(remarks.all())
                .extracting(Remark::text)
                .containsExactly("Why R-410A?", "Ah, the \"plate\" says so.\n");
        assertThat(remarks.all())
                .allSatisfy(remark -> assertThat(remark.about()).isEqualTo(session.hash()));
    }

    @Test
    void show_that_they_were_altered(@TempDir Path sessions) throws Exception {
        RecordedSession session = Scripted.session("seen").say(5, "four ten a").readFrom(sessions);
        RemarkFile.add(session, Scripted.START, "A. Supervisor", "Bad work.");
        RemarkFile.add(session, Scripted.START, "A. Supervisor", "Come back.");
        Path file = session.folder().resolve(RemarkFile.FILE);
        Files.writeString(file, Files.readString(file).replace("Bad work", "Fine work"));
        assertThat(RemarkFile.on(session).fault())
                .hasValueSatisfying(fault -> assertThat(fault.line()).isEqualTo(1));
        assertThatThrownBy(() -> RemarkFile.add(session, Scripted.START, "A. Supervisor", "More."))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("are damaged");
    }

    @Test
    void of_another_session_are_not_taken(@TempDir Path sessions) throws Exception {
        RecordedSession one = Scripted.session("one").say(5, "four ten a").readFrom(sessions);
        RecordedSession other = Scripted.session("other").say(5, "four ten a").readFrom(sessions);
        RemarkFile.add(one, Scripted.START, "A. Supervisor", "Praise.");
        Files.copy(one.folder().resolve(RemarkFile.FILE), other.folder().resolve(RemarkFile.FILE));
        assertThat(RemarkFile.on(other)).satisfies(remarks -> {
            assertThat(remarks.all()).isEmpty();
            assertThat(remarks.fault())
                    .hasValueSatisfying(fault -> assertThat(fault.kind()).isEqualTo(RecordFault.Kind.MISPLACED));
        });
    }

    @Test
    void on_a_session_without_any_are_none(@TempDir Path sessions) throws Exception {
        assertThat(RemarkFile.on(Scripted.session("one").say(5, "four ten a").readFrom(sessions))
                        .all())
                .isEmpty();
    }
}
