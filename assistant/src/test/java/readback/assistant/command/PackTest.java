package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.record.SessionRecord;
import readback.assistant.recorded.Scripted;

/** Records of many tablets are packed for an engine. */
class PackTest {

    @TempDir
    private Path office;

    private Ran pack(String... more) {
        return Ran.of(
                "",
                Stream.concat(
                                Stream.of(
                                        "sessions",
                                        office.resolve("tablets").toString(),
                                        "--pack",
                                        office.resolve("out").toString()),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(office.resolve("out"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void records_of_several_tablets_are_packed_two_a_bundle_and_once() throws Exception {
        Scripted.valve("one").in(office.resolve("tablets/red"));
        Scripted.valve("two").in(office.resolve("tablets/red"));
        Scripted.valve("three").in(office.resolve("tablets/blue"));
        Scripted.valve("one").in(office.resolve("tablets/blue"));

        Ran ran = pack("--per", "2");

        assertThat(ran.err()).contains("records looked at");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Packed: 3 sessions in 2 new bundles in " + office.resolve("out") + "; 1 were there before.");
        assertThat(names()).hasSize(4).allMatch(name -> name.matches("sessions-[0-9a-f]{24}\\.bundle(\\.index)?"));
        assertThat(pack("--per", "2").out()).contains("Packed: 0 sessions in 0 new bundles");
    }

    @Test
    void what_is_no_record_is_told_and_the_others_are_packed() throws Exception {
        Scripted.valve("one").in(office.resolve("tablets"));
        Files.createDirectories(office.resolve("tablets/letter"));
        Files.writeString(office.resolve("tablets/letter").resolve(SessionRecord.FILE), "Dear customer\n");

        Ran ran = pack();

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("letter: is no session record: it does not begin with a header.");
        assertThat(ran.out()).contains("Packed: 1 sessions in 1 new bundles");
    }

    @Test
    void a_place_that_will_not_do_is_refused_with_what_would() throws Exception {
        Path session = Scripted.valve("one").in(office.resolve("tablets"));
        Path file = Files.writeString(office.resolve("file"), "");

        assertThat(Ran.of("", "sessions", office.resolve("tablets").toString(), "--pack", file.toString()))
                .satisfies(ran -> {
                    assertThat(ran.code()).isEqualTo(1);
                    assertThat(ran.err()).contains("is a file: --pack takes a folder.");
                });
        assertThat(Ran.of(
                                "",
                                "sessions",
                                office.resolve("tablets").toString(),
                                "--pack",
                                session.resolve("out").toString())
                        .err())
                .contains("belongs to a recorded session: name a folder elsewhere.");
        assertThat(pack("--per", "0").err()).contains("--per is the number of sessions in a bundle, 1 or more, not 0.");
        assertThat(Ran.of(
                                "",
                                "sessions",
                                office.resolve("tablets").toString(),
                                "--pack",
                                file.resolve("below").toString())
                        .err())
                .contains("cannot be written")
                .contains("name a folder that you may write to");
    }
}
