package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Event;

/** Records of every version of the written form that ever was: they must stay readable. */
class EarlierSchemasTest {

    @Test
    void version_1_is_read() throws Exception {
        RecordedSession session = read("session-schema-1.jsonl");
        assertThat(session.fault()).isEmpty();
        assertThat(session.closed()).isTrue();
        assertThat(session.header().session()).isEqualTo("version-1");
        assertThat(session.header().startedAt()).isEqualTo(Instant.parse("2026-07-14T13:05:00Z"));
        assertThat(session.header().about()).containsEntry(About.TECHNICIAN, "K. Example");
        assertThat(session.header().parts()).containsKeys("checklists", "grammar", "texts");
        Entry last = session.entries().get(session.entries().size() - 1);
        assertThat(last.event()).isInstanceOf(Event.Ended.class);
        assertThat(last.outcome().verdict())
                .hasValueSatisfying(verdict -> assertThat(verdict).startsWith("add method=total-superheat"));
        assertThat(session.entries())
                .anySatisfy(entry ->
                        assertThat(entry.outcome().changes()).containsEntry("SUCTION_LINE_TEMPERATURE", "72 °F"));
    }

    private static RecordedSession read(String resource) throws Exception {
        try (InputStream in = EarlierSchemasTest.class.getResourceAsStream(resource)) {
            return RecordedSession.parse(in.readAllBytes(), Path.of(resource));
        }
    }
}
