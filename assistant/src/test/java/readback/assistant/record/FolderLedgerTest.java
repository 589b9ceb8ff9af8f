package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** What someone with the tablet in hand might do to a record, and how it is noticed. */
class FolderLedgerTest {

    @TempDir
    private Path sessions;

    private Path session;
    private Anchor left;

    @BeforeEach
    void aSessionWasLeftOpen() throws Exception {
        session = Scripted.session("left")
                .say(5, "four ten a")
                .say(9, "piston")
                .say(12, "understood")
                .cutShortIn(sessions);
        RecordedSession recorded = RecordedSession.read(session);
        left = Anchor.ofRecord("left", recorded.entries().size(), recorded.hash());
        assertThat(ledger().note(Scripted.START, left)).isEmpty();
    }

    private FolderLedger ledger() {
        return FolderLedger.in(sessions);
    }

    private void keepLines(int count) throws Exception {
        Path file = session.resolve(SessionRecord.FILE);
        List<String> lines = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", lines.subList(0, count)) + "\n");
    }

    @Test
    void an_untouched_record_holds_and_is_gone_on_with() throws Exception {
        assertThat(left.in(sessions)).isEqualTo(Anchor.Finding.HOLDS);

        try (SessionRecord record = SessionRecord.resume(session).record()) {
            assertThat(record.anchor()).isEqualTo(left);
        }
    }

    @Test
    void a_record_cut_at_a_line_end_has_a_whole_chain_and_is_noticed_all_the_same() throws Exception {
        keepLines(3);

        assertThat(RecordedSession.read(session).fault()).isEmpty();
        assertThat(left.in(sessions)).isEqualTo(Anchor.Finding.SHORTENED);
        assertThatThrownBy(() -> SessionRecord.resume(session))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("it had 4 events when it was left, and does not hold them any more");
    }

    @Test
    void a_record_told_anew_to_the_same_length_is_noticed() throws Exception {
        Path other = Scripted.session("left")
                .say(5, "r twenty two")
                .say(9, "piston")
                .say(12, "understood")
                .cutShortIn(sessions.resolve("elsewhere"));
        Files.write(session.resolve(SessionRecord.FILE), Files.readAllBytes(other.resolve(SessionRecord.FILE)));

        assertThat(left.in(sessions)).isEqualTo(Anchor.Finding.REWRITTEN);
        assertThatThrownBy(() -> SessionRecord.resume(session)).hasMessageContaining("cannot be resumed");
    }

    @Test
    void a_record_that_is_gone_is_noticed() throws Exception {
        Files.delete(session.resolve(SessionRecord.FILE));

        assertThat(left.in(sessions)).isEqualTo(Anchor.Finding.GONE);
    }

    @Test
    void only_the_latest_state_of_each_session_counts() throws Exception {
        Anchor begun = Anchor.ofRecord("other", 0, "a".repeat(64));
        Anchor later = Anchor.ofRecord("other", 7, "b".repeat(64));
        ledger().note(Scripted.START, begun);
        ledger().note(Scripted.START, later);

        assertThat(ledger().read().latest()).containsExactly(left, later);
        assertThat(ledger().read().of("other", Anchor.Subject.RECORD)).contains(later);
        assertThat(ledger().read().fault()).isEmpty();
    }

    @Test
    void a_ledger_that_was_changed_or_thinned_says_so_and_is_not_written_on() throws Exception {
        ledger().note(Scripted.START, Anchor.ofRecord("other", 7, "b".repeat(64)));
        Path file = sessions.resolve(FolderLedger.FILE);
        String whole = Files.readString(file);
        for (String forged : List.of(
                whole.replace("\"events\":4", "\"events\":3"),
                whole.lines().skip(1).findFirst().orElseThrow() + "\n",
                "nonsense\n" + whole)) {
            Files.writeString(file, forged);

            assertThat(ledger().read().fault()).as(forged).isPresent();
            assertThat(ledger().note(Scripted.START, left)).isPresent();
            assertThat(file).hasContent(forged.strip());
        }
    }

    @Test
    void a_torn_last_line_is_written_over() throws Exception {
        Path file = sessions.resolve(FolderLedger.FILE);
        Files.write(file, "{\"type\":\"anc".getBytes(StandardCharsets.UTF_8), StandardOpenOption.APPEND);

        assertThat(ledger().read().latest()).containsExactly(left);
        assertThat(ledger().note(Scripted.START, Anchor.ofRecord("other", 7, "b".repeat(64))))
                .isEmpty();
        assertThat(ledger().read().fault()).isEmpty();
        assertThat(ledger().read().latest()).hasSize(2);
    }

    @Test
    void sessions_that_end_together_all_get_in() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> notes = IntStream.range(0, 8)
                    .<Callable<Boolean>>mapToObj(number ->
                            () -> ledger().note(Scripted.START, Anchor.ofRecord("s" + number, number, "c".repeat(64)))
                                    .isEmpty())
                    .toList();
            for (Future<Boolean> noted : both.invokeAll(notes)) {
                assertThat(noted.get()).isTrue();
            }
        } finally {
            both.shutdown();
        }
        assertThat(ledger().read().latest()).hasSize(9);
        assertThat(ledger().read().fault()).isEmpty();
    }
}
