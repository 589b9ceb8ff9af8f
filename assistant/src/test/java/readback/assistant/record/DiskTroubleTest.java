package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.recorded.Scripted;
import readback.assistant.session.Audience;
import readback.assistant.session.Line;
import readback.assistant.session.Session;
import readback.grammar.Hypothesis;

/** A disk that is full, comes back, or never does. */
class DiskTroubleTest {

    /** Hears what the session says. */
    private static final class Ear implements Audience {
        private final List<String> heard = new ArrayList<>();

        @Override
        public void says(List<Line> lines) {
            lines.forEach(line -> heard.add(line.shown()));
        }
    }

    private static Session open(SessionRecord record, Ear ear) {
        return Session.open(
                Scripted.dialogue(),
                Scripted.wording(),
                record,
                List.of(ear),
                SessionSettings.STANDARD,
                Scripted.START);
    }

    private static void say(Session session, int second, String words) {
        session.on(new Event.Heard(
                Scripted.START.plusSeconds(second), Event.Source.KEYS, List.of(Hypothesis.typed(words))));
    }

    @Test
    void a_full_disk_is_said_and_everything_is_written_once_there_is_room(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(1500);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("full").header());
        Ear ear = new Ear();
        Session session = open(record, ear);
        say(session, 5, "four ten a");
        say(session, 9, "piston");
        assertThat(record.waiting()).isPositive();
        assertThat(ear.heard).anySatisfy(line -> assertThat(line).contains("The record cannot be written"));
        assertThat(session.assessment().system())
                .as("the session goes on in memory")
                .isPresent();
        int saidWhileFull = ear.heard.size();
        disk.hasRoomFor(1_000_000);
        say(session, 20, "outdoor ninety five");
        assertThat(record.waiting()).isZero();
        assertThat(ear.heard.subList(saidWhileFull, ear.heard.size()))
                .anySatisfy(line -> assertThat(line).contains("The record is written again"));
        RecordedSession recorded = RecordedSession.parse(disk.content(), folder.resolve("session.jsonl"));
        assertThat(recorded.fault()).isEmpty();
        assertThat(recorded.entries())
                .extracting(entry -> entry.event().getClass().getSimpleName())
                .containsSubsequence("Started", "Heard", "DeviceLost", "Heard", "DeviceFound");
    }

    @Test
    void a_disk_that_fails_within_a_line_keeps_only_whole_lines_in_the_end(@TempDir Path folder) throws Exception {
        for (int room = 700; room < 1900; room += 113) {
            FailingDisk disk = new FailingDisk(room);
            SessionRecord record =
                    SessionRecord.begin(folder, disk, Scripted.session("full").header());
            Session session = open(record, new Ear());
            say(session, 5, "four ten a");
            disk.hasRoomFor(1_000_000);
            assertThat(record.flush()).isEmpty();
            RecordedSession recorded = RecordedSession.parse(disk.content(), folder.resolve("session.jsonl"));
            assertThat(recorded.fault()).as("room for " + room).isEmpty();
            assertThat(recorded.hash()).isEqualTo(record.hash());
        }
    }

    @Test
    void what_no_disk_took_can_be_saved_elsewhere_and_completes_the_record(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(1000);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("full").header());
        Session session = open(record, new Ear());
        say(session, 5, "four ten a");
        Path rest = folder.resolve("rest.jsonl");
        record.rescue(rest);
        assertThat(record.torn()).isEmpty();
        ByteArrayOutputStream together = new ByteArrayOutputStream();
        together.write(disk.content());
        together.write(Files.readAllBytes(rest));
        RecordedSession recorded = RecordedSession.parse(together.toByteArray(), folder.resolve("session.jsonl"));
        assertThat(recorded.fault()).isEmpty();
        assertThat(recorded.hash()).isEqualTo(record.hash());
    }

    @Test
    void a_torn_line_that_cannot_be_taken_off_is_told_with_the_bytes_that_hold(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(1000);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("full").header());
        disk.refuseCuts();
        Session session = open(record, new Ear());
        say(session, 5, "four ten a");
        Path rest = folder.resolve("rest.jsonl");
        record.rescue(rest);

        int bytes = Math.toIntExact(record.torn().orElseThrow());
        assertThat(bytes).isLessThan(disk.content().length);
        ByteArrayOutputStream together = new ByteArrayOutputStream();
        together.write(disk.content(), 0, bytes);
        together.write(Files.readAllBytes(rest));
        RecordedSession recorded = RecordedSession.parse(together.toByteArray(), folder.resolve("session.jsonl"));
        assertThat(recorded.fault()).isEmpty();
        assertThat(recorded.hash()).isEqualTo(record.hash());
    }

    @Test
    void the_record_is_said_to_be_kept_once_its_last_line_is_on_disk(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(1_000_000);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("kept").header());
        Ear ear = new Ear();
        Session session = open(record, ear);
        say(session, 5, "four ten a");
        session.on(new Event.Ended(Scripted.START.plusSeconds(9)));

        assertThat(record.waiting()).isZero();
        assertThat(ear.heard).endsWith("The record is kept.");
    }

    @Test
    void a_disk_that_fails_at_the_very_last_line_is_not_passed_over(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(1_000_000);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("last").header());
        Ear ear = new Ear();
        Session session = open(record, ear);
        say(session, 5, "four ten a");
        disk.hasRoomFor(disk.content().length + 20);
        session.on(new Event.Ended(Scripted.START.plusSeconds(9)));

        assertThat(record.waiting()).isEqualTo(1);
        assertThat(ear.heard)
                .endsWith("The record is not kept to its end yet: the disk did not take it.")
                .noneSatisfy(line -> assertThat(line).contains("is kept."));
    }

    @Test
    void a_file_on_a_real_disk_and_the_failing_one_end_alike(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("lines");
        FailingDisk fake = new FailingDisk(1000);
        try (LineFile real = LineFile.OnDisk.create(file)) {
            for (LineFile each : List.of(real, fake)) {
                each.endWith(0, "first\n".getBytes(StandardCharsets.UTF_8));
                each.endWith(6, "second, torn".getBytes(StandardCharsets.UTF_8));
                each.endWith(6, "second\n".getBytes(StandardCharsets.UTF_8));
            }
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(fake.content());
        assertThat(file).hasContent("first\nsecond\n");
    }

    @Test
    void a_disk_that_takes_nothing_at_the_start_is_said_and_catches_up_later(@TempDir Path folder) throws Exception {
        FailingDisk disk = new FailingDisk(0);
        SessionRecord record =
                SessionRecord.begin(folder, disk, Scripted.session("late").header());
        Ear ear = new Ear();
        Session session = open(record, ear);
        assertThat(ear.heard).anySatisfy(line -> assertThat(line).contains("The record cannot be written"));
        say(session, 5, "four ten a");
        disk.hasRoomFor(1_000_000);
        say(session, 9, "piston");
        assertThat(record.waiting()).isZero();
        RecordedSession recorded = RecordedSession.parse(disk.content(), folder.resolve("session.jsonl"));
        assertThat(recorded.fault()).isEmpty();
        assertThat(recorded.hash()).isEqualTo(record.hash());
        assertThat(recorded.entries())
                .extracting(entry -> entry.event().getClass().getSimpleName())
                .containsExactly("Started", "DeviceLost", "Heard", "Heard", "DeviceFound");
    }

    @Test
    void a_file_is_made_at_the_first_line_that_the_disk_takes(@TempDir Path folder) throws Exception {
        Path blocked = Files.createFile(folder.resolve("sessions"));
        Path file = blocked.resolve("one").resolve("session.jsonl");
        try (LineFile late = new LineFile.ToBeMade(file)) {
            assertThatThrownBy(() -> late.endWith(0, "first\n".getBytes(StandardCharsets.UTF_8)))
                    .isInstanceOf(java.io.IOException.class);
            Files.delete(blocked);
            late.endWith(0, "first\n".getBytes(StandardCharsets.UTF_8));
        }
        assertThat(file).hasContent("first\n");
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_refused_in_a_sentence(@TempDir Path folder) throws Exception {
        Path inTheWay = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() ->
                        SessionRecord.create(inTheWay, Scripted.session("one").header()))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("cannot be kept in")
                .hasMessageContaining("--sessions");
    }

    @Test
    void a_record_is_its_owners_alone(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.session("private").say(5, "four ten a").in(sessions);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(SessionRecord.FILE))))
                .isEqualTo("rw-------");
    }

    @Test
    void a_record_names_no_path_and_no_machine(@TempDir Path sessions) throws Exception {
        Path folder = Scripted.charging("nowhere").in(sessions);
        assertThat(Files.readString(folder.resolve(SessionRecord.FILE)))
                .doesNotContain(sessions.toString())
                .doesNotContain(java.net.InetAddress.getLocalHost().getHostName() + "\"")
                .doesNotContain(System.getProperty("user.home"));
    }
}
