package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.Forger;
import readback.assistant.record.SessionRecord;

/** Records that were cut, put back or taken away are noticed by the commands that a supervisor uses. */
class EvidenceTest {

    @TempDir
    private Path folder;

    private Ran typed(String... options) {
        String[] all = Stream.concat(
                        Stream.of("check", "--typed", "--voice", "none", "--sessions", folder.toString()),
                        Stream.of(options))
                .toArray(String[]::new);
        return Ran.of("r 410 a\npiston\nunderstood\n", all);
    }

    private Path session() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory).findFirst().orElseThrow();
        }
    }

    private void cut(Path session, int lines) throws IOException {
        Path file = session.resolve(SessionRecord.FILE);
        List<String> all = Files.readAllLines(file);
        Files.writeString(file, String.join("\n", all.subList(0, all.size() - lines)) + "\n");
    }

    @Test
    void a_session_that_was_cut_cannot_be_resumed_and_the_check_names_it() throws IOException {
        typed();
        Path session = session();
        assertThat(Ran.of("", "sessions", folder.toString(), "--check").code()).isZero();

        cut(session, 1);

        Ran check = Ran.of("", "sessions", folder.toString(), "--check");
        assertThat(check.code()).isEqualTo(1);
        assertThat(check.out()).contains(session.getFileName() + "  shortened").contains("0 of 1 records hold");
        assertThat(typed("--resume", session.toString()).err()).contains("does not hold them any more");
    }

    @Test
    void a_session_that_goes_on_is_kept_in_the_ledger_as_it_is_left() throws IOException {
        typed();
        Path session = session();
        assertThat(typed("--resume", "last").code()).isZero();
        cut(session, 1);

        assertThat(Ran.of("", "sessions", folder.toString(), "--check").out()).contains("shortened");
    }

    @Test
    void a_session_that_is_gone_is_missed_by_ledger_and_anchors() throws IOException {
        typed();
        Path session = session();
        Path anchors = folder.resolveSibling(folder.getFileName() + "-anchors.jsonl");
        assertThat(Ran.of("", "sessions", folder.toString(), "--anchors", anchors.toString())
                        .code())
                .isZero();
        assertThat(Ran.of("", "sessions", folder.toString(), "--against", anchors.toString())
                        .out())
                .contains("1 of 1 records hold");

        Files.delete(session.resolve(SessionRecord.FILE));
        Files.delete(folder.resolve(".readback-ledger"));

        Ran against = Ran.of("", "sessions", folder.toString(), "--against", anchors.toString());
        assertThat(against.code()).isEqualTo(1);
        assertThat(against.out()).contains(session.getFileName() + "  gone");
        Files.delete(anchors);
    }

    private void remark(Path session, String text) {
        assertThat(Ran.of("", "remark", session.toString(), text, "--by", "Vera Lund")
                        .code())
                .isZero();
    }

    @Test
    void a_remark_that_was_taken_away_is_missed_by_check_verification_ledger_and_anchors() throws IOException {
        typed();
        Path session = session();
        remark(session, "First.");
        remark(session, "Second.");
        Path anchors = folder.resolveSibling(folder.getFileName() + "-remarks.jsonl");
        Ran.of("", "sessions", folder.toString(), "--anchors", anchors.toString());
        Ran whole = Ran.of("", "sessions", folder.toString(), "--check", "--against", anchors.toString());
        assertThat(whole.out()).contains("1 of 1 files of remarks hold what the ledger knows");
        assertThat(whole.code()).isZero();
        assertThat(Ran.of("", "replay", session.toString(), "--verify").out()).contains("The remarks hold: 2.");

        Path file = session.resolve("remarks.jsonl");
        String first = Files.readAllLines(file).get(0) + "\n";
        Files.writeString(file, first);

        Ran verify = Ran.of("", "replay", session.toString(), "--verify");
        assertThat(verify.code()).isEqualTo(1);
        assertThat(verify.out()).contains("The remarks are shortened: there were 2.");
        Ran check = Ran.of("", "sessions", folder.toString(), "--check");
        assertThat(check.code()).isEqualTo(1);
        assertThat(check.out()).contains(session.getFileName() + "  remarks shortened: it had 2 remarks");
        assertThat(Ran.of("", "remark", session.toString(), "Third.", "--by", "Vera Lund")
                        .err())
                .contains("are shortened: there were 2. Nothing is added");
        assertThat(file).hasContent(first.strip());

        Files.delete(file);
        assertThat(Ran.of("", "replay", session.toString(), "--verify").out())
                .contains("The remarks are gone: there were 2.");
        Files.delete(folder.resolve(".readback-ledger"));
        Ran against = Ran.of("", "sessions", folder.toString(), "--against", anchors.toString());
        assertThat(against.out()).contains("remarks gone: it had 2 remarks");
        assertThat(against.code()).isEqualTo(1);
        Files.delete(anchors);
    }

    @Test
    void remarks_that_were_changed_are_told_by_check_and_verification() throws IOException {
        typed();
        Path session = session();
        remark(session, "Bad work.");
        Path file = session.resolve("remarks.jsonl");
        Files.writeString(file, Files.readString(file).replace("Bad work", "Fine work"));

        assertThat(Ran.of("", "sessions", folder.toString(), "--check").out())
                .contains(session.getFileName() + "  remarks do not hold: line 1 was changed or damaged");
        Ran verify = Ran.of("", "replay", session.toString(), "--verify");
        assertThat(verify.out()).contains("The remarks do not hold: line 1 was changed or damaged.");
        assertThat(verify.code()).isEqualTo(1);
    }

    @Test
    void lines_that_no_version_writes_are_told_by_check_and_verification() throws IOException {
        typed();
        Path session = session();
        Forger.rewrite(session, (line, node) -> {
            if (line == 2) {
                node.put("bonus", 1);
            }
        });

        Ran check = Ran.of("", "sessions", folder.toString(), "--check");
        assertThat(check.out()).contains(session.getFileName() + "  odd: line 2 has \"bonus\"");
        assertThat(check.code()).isEqualTo(1);
        Ran verify = Ran.of("", "replay", session.toString(), "--verify");
        assertThat(verify.out()).contains("Odd: line 2 has \"bonus\", which no version of this form writes.");
        assertThat(verify.code()).isEqualTo(1);
    }

    @Test
    void records_that_the_ledger_does_not_know_are_counted() throws IOException {
        typed();
        Files.delete(folder.resolve(".readback-ledger"));

        assertThat(Ran.of("", "sessions", folder.toString(), "--check").out())
                .contains("1 of 1 records are unknown to the ledger");
    }

    @Test
    void what_is_no_list_of_anchors_is_named() throws IOException {
        Path other = Files.writeString(folder.resolve("other.txt"), "hello\n");

        Ran ran = Ran.of("", "sessions", folder.toString(), "--against", other.toString());

        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains("line 1 is no anchor").contains("name a file that --anchors wrote");
    }

    @Test
    void the_hash_of_a_report_is_looked_for_in_the_record() throws IOException {
        typed();
        Path session = session();
        String hash = Ran.of("", "replay", session.toString(), "--verify")
                .out()
                .lines()
                .filter(line -> line.startsWith("Hash of the record: "))
                .map(line -> line.substring("Hash of the record: ".length()))
                .findFirst()
                .orElseThrow();

        Ran holds = Ran.of("", "replay", session.toString(), "--verify", "--hash", hash);
        assertThat(holds.code()).isZero();
        assertThat(holds.out()).contains("It holds that hash");

        cut(session, 1);
        Ran cut = Ran.of("", "replay", session.toString(), "--verify", "--hash", hash);
        assertThat(cut.code()).isEqualTo(1);
        assertThat(cut.out()).contains("It does not hold that hash: it was cut or rewritten since");
    }
}
