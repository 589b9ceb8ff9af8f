package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** Whether a record shows that it was altered, and where. */
class AlterationTest {

    private static byte[] whole = new byte[0];

    @BeforeAll
    static void recordASession(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("short")
                .about(About.TECHNICIAN, "Zoë \uFFFD")
                .say(5, "four ten a")
                .say(9, "piston")
                .in(sessions);
        whole = Files.readAllBytes(folder.resolve(SessionRecord.FILE));
    }

    private static Optional<RecordFault> faultOf(byte[] bytes) {
        try {
            return RecordedSession.parse(bytes, Path.of("session.jsonl")).fault();
        } catch (RecordUnavailableException e) {
            assertThat(e.getMessage()).contains("line 1 ");
            return Optional.of(new RecordFault(1, RecordFault.Kind.CHANGED, String.valueOf(e.getMessage())));
        }
    }

    private static int lineOf(int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += whole[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    @Test
    void an_untouched_record_holds() {
        assertThat(faultOf(whole)).isEmpty();
    }

    @Test
    void flipping_a_bit_of_any_byte_is_detected_in_its_line() {
        for (int i = 0; i < whole.length; i++) {
            byte[] altered = whole.clone();
            altered[i] ^= (byte) (1 << i % Byte.SIZE);
            int line = lineOf(i);
            assertThat(faultOf(altered))
                    .as("byte " + i + " of line " + line + ", bit " + i % Byte.SIZE)
                    .hasValueSatisfying(fault -> assertThat(fault.line()).isEqualTo(line));
        }
    }

    @Test
    void removing_any_line_but_the_last_is_detected_where_the_next_one_stands() {
        List<String> lines = new String(whole, StandardCharsets.UTF_8).lines().toList();
        for (int i = 1; i < lines.size() - 1; i++) {
            List<String> fewer = new java.util.ArrayList<>(lines);
            fewer.remove(i);
            int line = i + 1;
            assertThat(faultOf(bytes(fewer)))
                    .hasValueSatisfying(fault -> assertThat(fault)
                            .returns(line, RecordFault::line)
                            .returns(RecordFault.Kind.MISPLACED, RecordFault::kind));
        }
    }

    @Test
    void exchanging_two_lines_is_detected() {
        List<String> lines = new java.util.ArrayList<>(
                new String(whole, StandardCharsets.UTF_8).lines().toList());
        java.util.Collections.swap(lines, 1, 2);
        assertThat(faultOf(bytes(lines)))
                .hasValueSatisfying(fault -> assertThat(fault.line()).isEqualTo(2));
    }

    @Test
    void a_record_that_lost_its_last_lines_is_known_not_to_be_at_its_end() throws Exception {
        List<String> lines = new String(whole, StandardCharsets.UTF_8).lines().toList();
        RecordedSession cut = RecordedSession.parse(bytes(lines.subList(0, lines.size() - 1)), Path.of("s"));
        assertThat(cut.fault()).isEmpty();
        assertThat(cut.closed()).isFalse();
        assertThat(RecordedSession.parse(whole, Path.of("s")).closed()).isTrue();
    }

    @Test
    void a_file_that_is_no_record_is_refused_in_a_sentence() {
        for (String text : List.of("", "hello\n", "{}\n", "[1,2]\n", "{\"type\":\"header\",\"schema\":99}\n")) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            assertThatThrownBy(() -> RecordedSession.parse(bytes, Path.of("x.jsonl")))
                    .isInstanceOf(RecordUnavailableException.class)
                    .hasMessageContaining("'x.jsonl' is no session record");
        }
    }

    private static byte[] bytes(List<String> lines) {
        return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
