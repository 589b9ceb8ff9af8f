package readback.assistant.archive;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.About;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;

/** Many sessions in one folder. */
class ArchiveTest {

    /** 12 oz of 28.349523125 g: NIST SP 811 (2008), appendix B. */
    private static final double TWELVE_OUNCES = 0.3401942775;

    @TempDir
    private Path sessions;

    @BeforeEach
    void recordThree() throws Exception {
        Scripted.charging("2026-07-01-a")
                .about(About.TECHNICIAN, "K. Example")
                .about(About.CYLINDER, "C-17")
                .about(About.APPLIANCE, "Unit 7")
                .in(sessions);
        Scripted.valve("2026-07-02-b").about(About.TECHNICIAN, "L. Example").in(sessions);
        Scripted.session("2026-07-03-c").say(5, "four ten a").cutShortIn(sessions);
    }

    private List<Summary> listed(SessionFilter choice) throws Exception {
        List<Summary> taken = new ArrayList<>();
        Archive.in(sessions).each(summary -> {
            if (choice.takes(summary)) {
                taken.add(summary);
            }
        });
        return taken;
    }

    @Test
    void sessions_come_in_order_with_what_became_of_them() throws Exception {
        List<Summary> all = listed(SessionFilter.ALL);
        assertThat(all).extracting(Summary::session).containsExactly("2026-07-01-a", "2026-07-02-b", "2026-07-03-c");
        assertThat(all).extracting(Summary::verdict).containsExactly("in-tolerance", "add", "");
        assertThat(all).extracting(Summary::closed).containsExactly(true, true, false);
        assertThat(all).extracting(Summary::doubts).containsExactly(1, 0, 0);
        assertThat(all.get(0))
                .returns("R-410A", Summary::refrigerant)
                .returns("piston", Summary::meteringDevice)
                .returns("K. Example", Summary::technician);
        assertThat(all.get(0).moves())
                .singleElement()
                .satisfies(moved -> assertThat(moved.addedKilograms()).isCloseTo(TWELVE_OUNCES, within(1e-6)));
    }

    @Test
    void a_choice_takes_what_meets_all_its_conditions() throws Exception {
        assertThat(listed(SessionFilter.ALL.verdict("add"))).hasSize(1);
        assertThat(listed(SessionFilter.ALL.verdict("none"))).hasSize(1);
        assertThat(listed(SessionFilter.ALL.doubtful())).hasSize(1);
        assertThat(listed(SessionFilter.ALL.caution("frostbite"))).hasSize(2);
        assertThat(listed(SessionFilter.ALL.technician("example"))).hasSize(2);
        assertThat(listed(SessionFilter.ALL.technician("example").verdict("add")))
                .hasSize(1);
        assertThat(listed(SessionFilter.ALL.appliance("unit 7"))).hasSize(1);
        assertThat(listed(SessionFilter.ALL.refrigerant("R-32"))).isEmpty();
        assertThat(listed(SessionFilter.ALL.from(Scripted.START))).hasSize(3);
        assertThat(listed(SessionFilter.ALL.before(Scripted.START))).isEmpty();
        assertThat(SessionFilter.ALL.technician("K").doubtful().conditions())
                .containsExactly(
                        new SessionFilter.Condition(SessionFilter.About.TECHNICIAN, "K"),
                        new SessionFilter.Condition(SessionFilter.About.DOUBTS, ""));
    }

    @Test
    void refrigerant_is_summed_by_cylinder_and_equipment() throws Exception {
        Sums sums = new Sums();
        listed(SessionFilter.ALL).forEach(sums::add);
        assertThat(sums.byCylinder().get("C-17"))
                .isNotNull()
                .extracting(Sums.Amount::addedKilograms, as(DOUBLE))
                .isCloseTo(TWELVE_OUNCES, within(1e-6));
        assertThat(sums.byAppliance()).containsOnlyKeys("Unit 7");
        assertThat(sums.byVerdict()).containsEntry("add", 1).containsEntry("", 1);
    }

    @Test
    void a_record_is_read_again_only_when_it_changed() throws Exception {
        assertThat(listed(SessionFilter.ALL.damaged())).isEmpty();
        Path file = sessions.resolve("2026-07-02-b").resolve(SessionRecord.FILE);
        FileTime time = Files.getLastModifiedTime(file);
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        Files.setLastModifiedTime(file, time);
        assertThat(listed(SessionFilter.ALL.damaged()))
                .as("the index still knows it as it was")
                .isEmpty();
        List<Summary> checked = new ArrayList<>();
        Archive.in(sessions).checked().each(checked::add);
        assertThat(checked).filteredOn(SessionFilter.ALL.damaged()::takes).hasSize(1);
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-08-01T00:00:00Z")));
        assertThat(listed(SessionFilter.ALL.damaged()))
                .singleElement()
                .satisfies(summary -> assertThat(summary.fault()).contains("was changed or damaged"));
    }

    @Test
    void new_and_deleted_sessions_are_seen_at_once() throws Exception {
        assertThat(listed(SessionFilter.ALL)).hasSize(3);
        Scripted.session("2026-06-30-z").say(5, "four ten a").in(sessions);
        Files.delete(sessions.resolve("2026-07-02-b").resolve(SessionRecord.FILE));
        assertThat(listed(SessionFilter.ALL))
                .extracting(Summary::session)
                .containsExactly("2026-06-30-z", "2026-07-01-a", "2026-07-03-c");
    }

    @Test
    void what_the_index_gives_equals_what_the_records_give() throws Exception {
        List<Summary> fromRecords = listed(SessionFilter.ALL);
        assertThat(listed(SessionFilter.ALL))
                .usingRecursiveFieldByFieldElementComparator(
                        org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration.builder()
                                .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-5 ? 0 : 1, Double.class)
                                .build())
                .isEqualTo(fromRecords);
    }

    @Test
    void a_damaged_index_is_made_anew_and_a_record_without_header_is_named() throws Exception {
        Files.writeString(sessions.resolve(SummaryIndex.FILE), "readback-index 1\nnonsense\t1\n");
        Path empty = Files.createDirectory(sessions.resolve("2026-07-04-d"));
        Files.createFile(empty.resolve(SessionRecord.FILE));
        List<Summary> all = new ArrayList<>();
        Archive.Listing listing = Archive.in(sessions).each(all::add);
        assertThat(all).hasSize(3);
        assertThat(listing.troubles()).singleElement().asString().contains("2026-07-04-d", "is no session record");
    }

    /** Someone copies a session, renames one, and lists: each counts once. */
    @Test
    void a_copy_is_told_and_counted_once_and_so_is_a_folder_with_another_name() throws Exception {
        copy("2026-07-01-a", "2026-06-30-copy");
        copy("2026-07-01-a", "2026-07-09-copy");
        Files.move(sessions.resolve("2026-07-02-b"), sessions.resolve("2026-07-08-moved"));
        List<Summary> all = new ArrayList<>();

        Archive.Listing listing = Archive.in(sessions).each(all::add);

        assertThat(all)
                .extracting(Summary::session)
                .containsExactlyInAnyOrder("2026-07-01-a", "2026-07-02-b", "2026-07-03-c");
        assertThat(listing.sessions()).isEqualTo(3);
        assertThat(listing.troubles())
                .containsExactly(
                        "2026-06-30-copy: holds session 2026-07-01-a once more; it is counted once.",
                        "2026-07-08-moved: holds session 2026-07-02-b.",
                        "2026-07-09-copy: holds session 2026-07-01-a once more; it is counted once.");
    }

    private void copy(String from, String to) throws Exception {
        Files.createDirectory(sessions.resolve(to));
        Files.copy(
                sessions.resolve(from).resolve(SessionRecord.FILE),
                sessions.resolve(to).resolve(SessionRecord.FILE));
    }

    @Test
    void an_index_edited_by_hand_is_not_believed() throws Exception {
        listed(SessionFilter.ALL);
        Path index = sessions.resolve(SummaryIndex.FILE);
        String honest = Files.readString(index);
        for (String forged : List.of(
                honest.replace("in-tolerance", "recover"),
                honest.replace("K. Example", "Q. Example"),
                honest.replaceFirst("\"events\":\\d+", "\"events\":9"))) {
            assertThat(forged).isNotEqualTo(honest);
            Files.writeString(index, forged);

            assertThat(listed(SessionFilter.ALL).get(0))
                    .returns("in-tolerance", Summary::verdict)
                    .returns("K. Example", Summary::technician);
            assertThat(index).hasContent(honest.strip());
        }
    }

    private List<String> lines() throws Exception {
        return listed(SessionFilter.ALL).stream().map(SummaryLine::of).toList();
    }

    @Test
    @Tag("slow")
    void wherever_a_byte_of_the_index_is_damaged_the_list_is_the_same() throws Exception {
        List<String> honest = lines();
        Path index = sessions.resolve(SummaryIndex.FILE);
        byte[] whole = Files.readAllBytes(index);
        for (int at = 0; at < whole.length; at += 7) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 2;
            Files.write(index, damaged);

            assertThat(lines()).as("byte %d", at).isEqualTo(honest);
        }
    }

    @Test
    void a_check_repairs_an_index_that_was_forged_with_its_seal() throws Exception {
        listed(SessionFilter.ALL);
        Path record = sessions.resolve("2026-07-01-a").resolve(SessionRecord.FILE);
        FileTime time = Files.getLastModifiedTime(record);
        byte[] bytes = Files.readAllBytes(record);
        // the same length and time, so that nothing but the content tells
        byte[] altered = new String(bytes, StandardCharsets.ISO_8859_1)
                .replace("K. Example", "Q. Example")
                .getBytes(StandardCharsets.ISO_8859_1);
        Files.write(record, altered);
        Files.setLastModifiedTime(record, time);
        assertThat(listed(SessionFilter.ALL).get(0).fault()).isEmpty();

        Archive.in(sessions).checked().each(summary -> {});

        assertThat(listed(SessionFilter.ALL).get(0).fault()).isNotEmpty();
    }

    /** A pipe, a folder, a link out of the folder and a file of 65 MB in the place of records. */
    @Test
    void no_bad_folder_stops_the_list() throws Exception {
        Path outside = Files.createDirectories(sessions.resolveSibling(sessions.getFileName() + "-outside"));
        Scripted.session("2026-07-05-e").say(5, "four ten a").cutShortIn(outside);
        Files.createSymbolicLink(sessions.resolve("2026-07-05-e"), outside.resolve("2026-07-05-e"));
        Files.createDirectories(sessions.resolve("2026-07-06-f").resolve(SessionRecord.FILE));
        Path endless = Files.createDirectories(sessions.resolve("2026-07-07-g")).resolve(SessionRecord.FILE);
        try (var file = FileChannel.open(endless, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            file.write(ByteBuffer.wrap(new byte[] {'{'}), 65_000_000);
        }
        Path pipe = Files.createDirectories(sessions.resolve("2026-07-08-h")).resolve(SessionRecord.FILE);
        boolean piped = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        List<Summary> all = new ArrayList<>();

        Archive.Listing listing = Archive.in(sessions).each(all::add);

        assertThat(all).hasSize(3);
        assertThat(listing.troubles())
                .hasSize(piped ? 4 : 3)
                .anySatisfy(each -> assertThat(each).contains("2026-07-05-e", "leads out of this folder"))
                .anySatisfy(each -> assertThat(each).contains("2026-07-06-f", "is no file"))
                .anySatisfy(each -> assertThat(each).contains("2026-07-07-g", "larger than any session's record"));
    }
}
