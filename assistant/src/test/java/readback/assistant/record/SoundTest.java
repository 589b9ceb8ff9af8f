package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Slots;
import readback.assistant.record.RecordedSession.KeptSound;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Session;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.grammar.Hypothesis;

/** The sound of utterances beside the record. */
class SoundTest {

    private static final Samples BEEP = Samples.of(new short[] {0, 900, -900, 400, 12345}, 16000);

    private static Event.Heard heard(String words) {
        return new Event.Heard(Scripted.START.plusSeconds(5), Event.Source.VOICE, List.of(Hypothesis.typed(words)));
    }

    /** Records two utterances with their sound and gives what was complained about. */
    private static Optional<String> record(Path sessions, AudioBudget budget) throws Exception {
        try (SessionRecord record =
                SessionRecord.create(sessions, Scripted.session("loud").header())) {
            record.keepAudio(budget);
            Session session = Session.open(
                    Scripted.dialogue(),
                    Scripted.wording(),
                    record,
                    List.of(),
                    SessionSettings.STANDARD,
                    Scripted.START);
            assertThat(session.on(heard("four ten a"), BEEP)).isEmpty();
            return session.on(heard("piston"), BEEP);
        }
    }

    @Test
    void is_kept_and_bound_to_its_line_by_a_hash(@TempDir Path sessions) throws Exception {
        assertThat(record(sessions, new AudioBudget(1000, 0))).isEmpty();
        RecordedSession session = RecordedSession.read(sessions.resolve("loud"));
        Entry entry = session.entries().get(1);
        assertThat(session.sound(entry))
                .hasValueSatisfying(sound -> assertThat(
                                Recording.read(((KeptSound.Whole) sound).file()).samples())
                        .contains(BEEP));
        Files.write(sessions.resolve("loud/audio/00002.wav"), new byte[] {1, 2, 3});
        assertThat(session.sound(entry)).contains(new KeptSound.Changed());
        Files.delete(sessions.resolve("loud/audio/00002.wav"));
        assertThat(session.sound(entry)).contains(new KeptSound.Missing());
    }

    @Test
    void stops_at_the_budget_while_the_words_go_on(@TempDir Path sessions) throws Exception {
        Optional<String> complaint = record(sessions, new AudioBudget(60, 0));
        assertThat(complaint).contains("the disk budget for sound is used up");
        RecordedSession session = RecordedSession.read(sessions.resolve("loud"));
        assertThat(session.entries()).hasSize(3);
        assertThat(session.entries().get(1).audio()).isPresent();
        assertThat(session.entries().get(2).audio()).isEmpty();
        assertThat(session.entries()
                        .get(2)
                        .outcome()
                        .change(Slots.METERING_DEVICE)
                        .map(Change::line))
                .contains("piston");
    }

    @Test
    void leaves_room_on_the_disk_for_the_record(@TempDir Path sessions) throws Exception {
        try (SessionRecord record =
                SessionRecord.create(sessions, Scripted.session("loud").header())) {
            record.keepAudio(new AudioBudget(1_000_000, Long.MAX_VALUE / 2));
            assertThat(record.keepAudio(1, BEEP)).contains("the disk is nearly full");
        }
    }

    @Test
    void a_name_that_leads_out_of_the_folder_is_not_followed(@TempDir Path sessions) throws Exception {
        record(sessions, new AudioBudget(1000, 0));
        RecordedSession session = RecordedSession.read(sessions.resolve("loud"));
        Entry entry = session.entries().get(1).with(new AudioClip("../session.jsonl", "0".repeat(64)));
        assertThat(session.sound(entry)).contains(new KeptSound.Changed());
    }
}
