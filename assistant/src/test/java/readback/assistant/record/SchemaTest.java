package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.dialogue.Event;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Session;
import readback.assistant.sound.Samples;
import readback.grammar.Hypothesis;

/** The written form of records against its schema, by an independent validator of JSON Schema 2020-12. */
class SchemaTest {

    private static final JsonSchema SCHEMA = schema(Header.SCHEMA);

    private static JsonSchema schema(int version) {
        try (InputStream in = SchemaTest.class.getResourceAsStream("session-schema-" + version + ".json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<ValidationMessage> faults(String line) {
        return SCHEMA.validate(line, InputFormat.JSON);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void a_record_of_an_earlier_version_follows_the_schema_of_its_time(int version) throws IOException {
        JsonSchema first = schema(version);
        try (InputStream in = SchemaTest.class.getResourceAsStream("session-schema-" + version + ".jsonl")) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            assertThat(lines)
                    .allSatisfy(line ->
                            assertThat(first.validate(line, InputFormat.JSON)).isEmpty());
            assertThat(faults(lines.get(0))).isNotEmpty();
        }
    }

    @Test
    void every_line_of_a_session_follows_the_schema(@TempDir Path sessions) throws Exception {
        Path folder =
                Scripted.charging("one").about(About.TECHNICIAN, "K. Example").in(sessions);
        List<String> lines = Files.readAllLines(folder.resolve(SessionRecord.FILE));
        assertThat(lines)
                .hasSizeGreaterThan(20)
                .allSatisfy(line -> assertThat(faults(line)).isEmpty());
    }

    @Test
    void sound_words_one_by_one_timers_and_devices_follow_the_schema_too(@TempDir Path sessions) throws Exception {
        Scripted script = Scripted.session("other");
        Path file;
        try (SessionRecord record = SessionRecord.create(sessions, script.header())) {
            record.keepAudio(AudioBudget.megabytes(1));
            Session session = Session.open(
                    Scripted.dialogue(),
                    Scripted.wording(),
                    record,
                    List.of(),
                    readback.assistant.dialogue.SessionSettings.STANDARD,
                    Scripted.START);
            Instant later = Scripted.START.plusSeconds(5);
            Hypothesis heard = new Hypothesis("four ten a", 0.9, List.of(new Hypothesis.Word("four", 0.8, 0.1, 0.4)));
            session.on(new Event.Heard(later, Event.Source.VOICE, List.of(heard)), Samples.silence(0.5, 16000));
            session.on(new Event.TimerElapsed(later, "steady-running"));
            session.on(new Event.DeviceLost(later, "microphone"));
            session.on(new Event.DeviceFound(later, "microphone"));
            session.on(new Event.ClockChanged(later, java.time.Duration.ofHours(-2)));
            session.on(new Event.Resumed(later));
            session.on(new Event.Ended(later));
            file = record.folder().resolve(SessionRecord.FILE);
        }
        assertThat(Files.readAllLines(file))
                .hasSize(9)
                .allSatisfy(line -> assertThat(faults(line)).isEmpty())
                .anySatisfy(line -> assertThat(line).contains("\"audio\":{\"file\":\"00002.wav\""));
    }

    @Test
    void a_line_without_a_hash_or_with_an_unknown_field_is_refused(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("one").say(5, "four ten a").in(sessions);
        String line = Files.readAllLines(folder.resolve(SessionRecord.FILE)).get(1);
        ObjectMapper json = new ObjectMapper();
        com.fasterxml.jackson.databind.node.ObjectNode node =
                (com.fasterxml.jackson.databind.node.ObjectNode) json.readTree(line);
        assertThat(faults(node.toString())).isEmpty();
        assertThat(faults(node.deepCopy().without("hash").toString())).isNotEmpty();
        assertThat(faults(node.deepCopy().put("mood", "good").toString())).isNotEmpty();
    }
}
