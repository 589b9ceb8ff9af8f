package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
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

    /** With Java itself, as the launcher starts it: mapping what is not there would stop it with a fatal error. */
    @Test
    void one_that_is_cut_short_anywhere_is_passed_over_by_java() throws Exception {
        Path real = Path.of(System.getProperty("java.home"), "bin", "java");
        Path jar = folder.resolve("readback.jar");
        try (var empty = new JarOutputStream(Files.newOutputStream(jar), new Manifest())) {
            empty.finish();
        }
        ClassArchive made = new ClassArchive(cache, real, jar);
        made.make();
        byte[] whole = Files.readAllBytes(made.file());
        Path cut = folder.resolve("cut.jsa");

        assertThat(started(real, made.file())).contains("sharing");
        for (int length : List.of(0, 1, 4096, 65_536, whole.length / 2, whole.length - 4096, whole.length - 1)) {
            Files.write(cut, Arrays.copyOf(whole, length));
            assertThat(started(real, cut))
                    .as("%d of %d bytes", length, whole.length)
                    .doesNotContain("sharing");
        }
    }

    private String started(Path real, Path file) throws Exception {
        Process process = new ProcessBuilder(
                        real.toString(),
                        "-XX:+UseSerialGC",
                        "-XX:SharedArchiveFile=" + file,
                        "-Xlog:disable",
                        "-version")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
        return told;
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
