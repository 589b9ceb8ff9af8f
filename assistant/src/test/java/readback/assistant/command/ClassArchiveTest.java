package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With a script in place of Java that notes how it was called. */
class ClassArchiveTest {

    /** Writes the file that is wanted of it, as Java does. */
    private static final String WRITES =
            "for each; do case $each in -XX:SharedArchiveFile=*) echo classes >\"${each#*=}\" ;; esac; done\n";

    @TempDir
    private Path folder;

    private Path cache;
    private Path called;
    private ClassArchive archive;

    @BeforeEach
    void aPlace() throws IOException {
        cache = folder.resolve("cäche of mine");
        called = folder.resolve("called");
        archive = new ClassArchive(cache, java(WRITES), folder.resolve("readback.jar"));
    }

    private Path java(String script) throws IOException {
        Path java = folder.resolve("java");
        Files.writeString(java, "#!/bin/sh\necho \"$*\" >>'" + called + "'\n" + script);
        return Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    @Test
    void it_lies_in_the_cache_and_nothing_beside_it() throws IOException {
        archive.make();

        assertThat(archive.file()).hasContent("classes\n");
        try (var all = Files.list(cache)) {
            assertThat(all).containsExactly(archive.file());
        }
    }

    @Test
    void what_is_rehearsed_opens_no_device_and_keeps_no_record() throws IOException {
        archive.make();

        assertThat(Files.readAllLines(called))
                .hasSize(2)
                .satisfiesExactly(
                        rehearsal -> assertThat(rehearsal)
                                .contains("check --plain --voice none --microphone none")
                                .contains("--loudspeaker none")
                                .contains("--sessions " + cache),
                        dump -> assertThat(dump)
                                .contains("-Xshare:dump")
                                .endsWith("-cp " + folder.resolve("readback.jar")));
    }

    @Test
    void where_java_writes_none_the_one_before_stays() throws IOException {
        archive.make();
        java("exit 1\n");

        assertThatThrownBy(archive::make).isInstanceOf(IOException.class).hasMessage("Java wrote none");
        assertThat(archive.file()).hasContent("classes\n");
        try (var all = Files.list(cache)) {
            assertThat(all).containsExactly(archive.file());
        }
    }

    @Test
    void a_cache_that_cannot_be_made_is_told() throws IOException {
        Files.writeString(cache, "a file in the way");

        assertThatThrownBy(archive::make).isInstanceOf(IOException.class);
    }

    @Test
    void a_program_of_another_runtime_has_none() {
        assertThat(ClassArchive.ofProgram()).isEmpty();
    }
}
