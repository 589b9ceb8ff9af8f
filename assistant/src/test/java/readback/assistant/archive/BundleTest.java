package readback.assistant.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.RecordFault;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;

/** What a bundle holds is what was packed, and what became of it since is told. */
class BundleTest {

    @TempDir
    private Path folder;

    private Path sessions;
    private Path out;

    @BeforeEach
    void record() throws Exception {
        sessions = folder.resolve("sessions");
        out = folder.resolve("out");
        for (String name : List.of("a", "b", "c")) {
            Scripted.pistonReadings(name).in(sessions);
        }
    }

    private byte[] recordOf(String name) throws IOException {
        return Files.readAllBytes(sessions.resolve(name).resolve(SessionRecord.FILE));
    }

    private SessionPacker.Packed pack(int per) throws IOException {
        return new SessionPacker(out, per).pack(List.of(sessions), any -> {});
    }

    private List<Path> files(String ending) throws IOException {
        try (Stream<Path> all = Files.list(out)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    private Path bundle() throws IOException {
        assertThat(files(Bundle.ENDING)).hasSize(1);
        return files(Bundle.ENDING).get(0);
    }

    private List<BundledSession> index() throws IOException {
        return BundledSession.all(Files.readString(Path.of(bundle() + Bundle.INDEX)));
    }

    private Bundle scan(byte[] bytes) throws IOException {
        return Bundle.of(bytes, Optional.of(index()));
    }

    private static byte[] flipped(byte[] bytes, int at) {
        byte[] flipped = bytes.clone();
        flipped[at] ^= 1;
        return flipped;
    }

    @Test
    void a_bundle_is_the_records_byte_for_byte_and_its_index_tells_where_each_lies() throws IOException {
        pack(500);

        byte[] bytes = Files.readAllBytes(bundle());
        ByteArrayOutputStream behindEachOther = new ByteArrayOutputStream();
        for (String name : List.of("a", "b", "c")) {
            behindEachOther.write(recordOf(name));
        }
        assertThat(bytes).isEqualTo(behindEachOther.toByteArray());
        for (BundledSession each : index()) {
            assertThat(Arrays.copyOfRange(bytes, each.offset(), each.offset() + each.length()))
                    .isEqualTo(recordOf(each.session()));
            String text = new String(recordOf(each.session()), StandardCharsets.UTF_8);
            assertThat(text).endsWith("\"hash\":\"" + each.head() + "\"}\n");
            assertThat(each.lines()).isEqualTo((int) text.lines().count());
        }
    }

    @Test
    void a_whole_bundle_has_no_troubles_and_all_its_sessions_hold() throws IOException {
        pack(500);

        Bundle bundle = scan(Files.readAllBytes(bundle()));

        assertThat(bundle.troubles()).isEmpty();
        assertThat(bundle.sessions())
                .extracting(Bundle.Held::session, Bundle.Held::fault)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("a", Optional.empty()),
                        org.assertj.core.groups.Tuple.tuple("b", Optional.empty()),
                        org.assertj.core.groups.Tuple.tuple("c", Optional.empty()));
    }

    @Test
    void packing_again_writes_nothing_and_packing_elsewhere_writes_the_same() throws IOException {
        assertThat(pack(2)).isEqualTo(new SessionPacker.Packed(2, 3, 0, List.of()));
        List<Path> first = files("");

        assertThat(pack(2)).isEqualTo(new SessionPacker.Packed(0, 0, 3, List.of()));
        assertThat(files("")).isEqualTo(first).hasSize(4);

        out = folder.resolve("elsewhere");
        pack(2);
        assertThat(files("").stream().map(Path::getFileName))
                .containsExactlyElementsOf(first.stream().map(Path::getFileName).toList());
    }

    @Test
    void a_session_that_grew_is_packed_again_and_a_new_one_too() throws Exception {
        pack(500);
        Files.write(
                sessions.resolve("b").resolve(SessionRecord.FILE),
                "more".getBytes(StandardCharsets.US_ASCII),
                java.nio.file.StandardOpenOption.APPEND);
        Scripted.valve("d").in(sessions);

        assertThat(pack(500)).isEqualTo(new SessionPacker.Packed(1, 2, 2, List.of()));
    }

    @Test
    void a_torn_last_line_keeps_its_bytes_and_does_not_spoil_the_next_session() throws Exception {
        Path record = sessions.resolve("a").resolve(SessionRecord.FILE);
        byte[] torn = Arrays.copyOf(Files.readAllBytes(record), (int) Files.size(record) - 20);
        Files.write(record, torn);

        pack(500);

        Bundle bundle = scan(Files.readAllBytes(bundle()));
        assertThat(bundle.troubles()).isEmpty();
        assertThat(bundle.sessions().get(0).length()).isEqualTo(torn.length);
        assertThat(bundle.sessions().get(0).fault().map(RecordFault::kind)).contains(RecordFault.Kind.TORN);
        assertThat(bundle.sessions().get(1).fault()).isEmpty();
    }

    @Test
    void a_flipped_byte_is_told_with_its_session_and_line_wherever_it_is() throws IOException {
        pack(500);
        byte[] whole = Files.readAllBytes(bundle());
        BundledSession b = index().get(1);
        List<Integer> missed = new ArrayList<>();
        int line = 1;
        int tried = 0;
        for (int at = b.offset(); at < b.offset() + b.length() - 1; at++) {
            // every byte that begins the header, and some hundred of the others
            boolean tries = at < b.offset() + 40 || at % 211 == 0 || whole[at] == '\n';
            if (tries) {
                tried++;
                Bundle bundle = scan(flipped(whole, at));
                boolean told = bundle.sessions().size() == 3
                        && bundle.sessions().get(0).fault().isEmpty()
                        && bundle.sessions().get(2).fault().isEmpty()
                        && faultyLine(bundle.sessions().get(1)) == line;
                if (!told) {
                    missed.add(at);
                }
            }
            line += whole[at] == '\n' ? 1 : 0;
        }
        assertThat(missed).isEmpty();
        assertThat(tried).isGreaterThan(100);
    }

    private static int faultyLine(Bundle.Held held) {
        return held.fault().map(RecordFault::line).orElse(0);
    }

    @Test
    void a_session_that_was_changed_before_it_was_packed_is_not_told_as_changed_since() throws IOException {
        Path record = sessions.resolve("b").resolve(SessionRecord.FILE);
        Files.write(record, flipped(Files.readAllBytes(record), 3000));
        pack(500);

        assertThat(scan(Files.readAllBytes(bundle()))
                        .sessions()
                        .get(1)
                        .fault()
                        .orElseThrow()
                        .sentence())
                .isEqualTo("was changed or damaged: its hash does not fit its content");
    }

    @Test
    void a_bundle_that_was_cut_is_told_even_where_a_session_ends() throws IOException {
        pack(500);
        byte[] whole = Files.readAllBytes(bundle());
        int end = index().get(2).offset();

        assertThat(scan(Arrays.copyOf(whole, end)).troubles())
                .containsExactly(
                        "was cut: it has " + end + " bytes, and its index knows " + whole.length + ": copy it again",
                        "lacks 1 sessions that were packed: c");
        assertThat(scan(Arrays.copyOf(whole, end + 5000)).sessions().get(2).fault())
                .isPresent();
    }

    @Test
    void a_session_that_was_taken_out_or_shortened_is_told() throws IOException {
        pack(500);
        byte[] whole = Files.readAllBytes(bundle());
        BundledSession b = index().get(1);
        ByteArrayOutputStream without = new ByteArrayOutputStream();
        without.write(whole, 0, b.offset());
        without.write(whole, b.offset() + b.length(), whole.length - b.offset() - b.length());

        assertThat(scan(without.toByteArray()).troubles()).hasSize(2).contains("lacks 1 sessions that were packed: b");

        int lastLine = b.offset() + b.length() - 2;
        while (whole[lastLine] != '\n') {
            lastLine--;
        }
        ByteArrayOutputStream shortened = new ByteArrayOutputStream();
        shortened.write(whole, 0, lastLine + 1);
        shortened.write(whole, b.offset() + b.length(), whole.length - b.offset() - b.length());

        assertThat(scan(shortened.toByteArray()).troubles())
                .contains("holds another session b than was packed: its index knows " + b.lines()
                        + " lines with the head " + b.head());
    }

    @Test
    void what_is_no_bundle_and_what_has_no_index_is_told() throws IOException {
        pack(500);

        assertThat(Bundle.of("a letter\n".getBytes(StandardCharsets.US_ASCII), Optional.empty())
                        .troubles())
                .containsExactly("is no bundle: it does not begin with the header of a session");
        Bundle bare = Bundle.of(Files.readAllBytes(bundle()), Optional.empty());
        assertThat(bare.troubles()).singleElement().asString().contains("has no index");
        assertThat(bare.sessions()).hasSize(3);
    }
}
