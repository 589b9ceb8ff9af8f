package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** What a whole chain does not show: lines that hold and that no version writes. */
class OdditiesTest {

    @TempDir
    private Path sessions;

    private Path session;

    @BeforeEach
    void aSessionWasRecorded() throws Exception {
        session = Scripted.session("odd")
                .about(About.TECHNICIAN, "Zoë \"Z\" Example")
                .say(5, "four ten a")
                .say(9, "piston")
                .in(sessions);
    }

    private List<String> found(BiConsumer<Integer, ObjectNode> forgery) throws Exception {
        Forger.rewrite(session, forgery);
        assertThat(RecordedSession.read(session).fault()).as("the chain").isEmpty();
        return Oddities.in(session).stream().map(RecordFault::toString).toList();
    }

    @Test
    void an_honest_record_has_none() throws Exception {
        assertThat(Oddities.in(session)).isEmpty();
        assertThat(Oddities.in(Scripted.charging("long").in(sessions))).isEmpty();
        assertThat(Oddities.in(Scripted.valve("metric").cutShortIn(sessions))).isEmpty();
        assertThat(found((line, node) -> {})).isEmpty();
    }

    @Test
    void records_of_earlier_forms_have_none() throws Exception {
        for (int schema = 1; schema < Header.SCHEMA; schema++) {
            try (InputStream in = getClass().getResourceAsStream("session-schema-" + schema + ".jsonl")) {
                assertThat(Oddities.in(in.readAllBytes()))
                        .as("schema " + schema)
                        .isEmpty();
            }
        }
    }

    @Test
    void a_field_that_no_version_writes_is_named_wherever_it_stands() throws Exception {
        assertThat(found((line, node) -> {
                    if (line == 1) {
                        node.put("approved", true);
                    } else if (line == 3) {
                        node.put("bonus", 1);
                    } else if (line == 4) {
                        ((ObjectNode) node.get("outcome")).put("override", "ok");
                    }
                }))
                .containsExactly(
                        "line 1 has \"approved\", which no version of this form writes",
                        "line 3 has \"bonus\", which no version of this form writes",
                        "line 4 has \"outcome.override\", which no version of this form writes");
    }

    @Test
    void a_count_that_does_not_follow_is_named() throws Exception {
        assertThat(found((line, node) -> {
                    if (line == 4) {
                        node.put("n", 7);
                    }
                }))
                .containsExactly("line 4 is numbered 7 where 3 follows");
    }

    @Test
    void what_stands_behind_the_end_or_starts_again_is_named() throws Exception {
        Path file = session.resolve(SessionRecord.FILE);
        List<String> lines = new java.util.ArrayList<>(Files.readAllLines(file));
        lines.add(lines.get(1));
        Files.writeString(file, Forger.chained(lines, (line, node) -> {
            if (line == lines.size()) {
                node.put("n", line - 1);
            }
        }));

        assertThat(Oddities.in(session).stream().map(RecordFault::toString))
                .containsExactly("line 6 stands behind the end of the session", "line 6 starts the session once more");
    }

    @Test
    void a_number_as_text_and_spaces_between_fields_are_no_form_of_ours() throws Exception {
        assertThat(found((line, node) -> {
                    if (line == 3) {
                        node.put("n", "2");
                    }
                }))
                .containsExactly("line 3 has \"n\" as \"2\", which no version of this form writes");

        Path file = session.resolve(SessionRecord.FILE);
        String spaced = "{ " + Files.readAllLines(file).get(0).substring(1).replaceFirst(",\"hash\".*", "}");
        Files.writeString(file, Chain.seal(spaced) + "\n");
        assertThat(Oddities.in(session).stream().map(RecordFault::toString))
                .containsExactly("line 1 says the same in another form than any version writes it");
    }
}
