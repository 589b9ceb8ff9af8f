package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher on Linux, with a script in place of Java that tells how it was called. The PATH of these runs is empty:
 * nothing but the shell itself may be needed.
 */
class LauncherTest {

    /** How `locale charmap` names ASCII: nl_langinfo(CODESET) of the GNU C library, as its manual says. */
    private static final String ASCII = "ANSI_X3.4-1968";

    @TempDir
    Path folder;

    private Path home;
    private Path launcher;

    @BeforeEach
    void aDistribution() throws IOException {
        home = folder.resolve("a place & more");
        launcher = program(
                home.resolve("bin/readback"),
                Files.readString(Path.of("src/distribution/bin/readback")).replace("${project.version}", "0"));
        program(
                home.resolve("runtime/bin/java"),
                "#!/bin/sh\necho \"LC_ALL=$LC_ALL\"\nfor each; do echo \"$each\"; done\nexit 7\n");
    }

    private static Path program(Path file, String script) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, script);
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** What a run came to. */
    private record Came(int code, List<String> lines) {}

    private Came run(Path in, Map<String, String> environment, String... command) throws Exception {
        List<String> whole = new ArrayList<>(List.of(command));
        if (!whole.get(0).startsWith("/")) {
            whole.add(0, "/bin/sh");
        }
        ProcessBuilder builder =
                new ProcessBuilder(whole).directory(in.toFile()).redirectErrorStream(true);
        builder.environment().clear();
        builder.environment().put("PATH", folder.resolve("programs").toString());
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        String words = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Came(process.waitFor(), words.lines().toList());
    }

    private Came run(Map<String, String> environment, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        return run(folder, environment, command.toArray(String[]::new));
    }

    @Test
    void anArchiveOfClassesIsNamedToTheRuntimeThatCameWithIt() throws Exception {
        Path archive = folder.resolve("a cache/readback/classes.jsa");
        Files.createDirectories(archive.getParent());
        Map<String, String> caches =
                Map.of("XDG_CACHE_HOME", folder.resolve("a cache").toString());
        assertThat(run(caches, "check").lines()).noneMatch(line -> line.contains("classes.jsa"));
        Files.writeString(archive, "");

        assertThat(run(caches, "check").lines())
                .contains("-XX:SharedArchiveFile=" + archive, "-Xlog:disable", "-Dreadback.archive=" + archive)
                .endsWith(home + "/lib/readback-assistant-0.jar", "check");
        Path usual = folder.resolve(".cache/readback/classes.jsa");
        Files.createDirectories(usual.getParent());
        Files.writeString(usual, "");
        assertThat(run(Map.of("HOME", folder.toString()), "check").lines()).contains("-Dreadback.archive=" + usual);
    }

    @Test
    void anotherJavaIsNotToldOfTheArchive() throws Exception {
        Path archive = folder.resolve("cache/readback/classes.jsa");
        Files.createDirectories(archive.getParent());
        Files.writeString(archive, "");
        Files.move(home.resolve("runtime"), folder.resolve("elsewhere"));

        Came came = run(
                Map.of(
                        "XDG_CACHE_HOME", folder.resolve("cache").toString(),
                        "JAVA_HOME", folder.resolve("elsewhere").toString()),
                "check");

        assertThat(came.lines()).contains("-Dreadback.home=" + home).noneMatch(line -> line.contains("classes.jsa"));
    }

    @Test
    void javaGetsTheFolderAndTheArgumentsAsTheyAre() throws Exception {
        Came came = run(Map.of(), "check", "--site", "two  blanks & more");

        assertThat(came.lines())
                .contains("-Dreadback.home=" + home)
                .endsWith(home + "/lib/readback-assistant-0.jar", "check", "--site", "two  blanks & more");
        assertThat(came.code()).isEqualTo(7);
    }

    @Test
    void itIsFoundFromItsOwnFolderAndThroughLinks() throws Exception {
        Path program = Files.createDirectories(folder.resolve("programs"));
        Files.createSymbolicLink(program.resolve("readlink"), Path.of("/usr/bin/readlink"));
        Path there = Files.createSymbolicLink(folder.resolve("there"), launcher);
        Path beside = Files.createSymbolicLink(folder.resolve("beside"), Path.of("there"));

        for (Came came : List.of(
                run(home.resolve("bin"), Map.of(), "readback"),
                run(folder, Map.of(), there.toString()),
                run(folder, Map.of(), beside.toString()),
                run(folder, Map.of(), "beside"))) {
            assertThat(came.lines()).contains("-Dreadback.home=" + home);
        }
    }

    @Test
    void withoutALanguageSettingLettersBeyondAsciiAreNotLost() throws Exception {
        assertThat(run(Map.of()).lines()).contains("LC_ALL=C.UTF-8");
        assertThat(run(Map.of("LC_ALL", "C")).lines()).contains("LC_ALL=C.UTF-8");
        assertThat(run(Map.of("LANG", "POSIX")).lines()).contains("LC_ALL=C.UTF-8");
    }

    @Test
    void aLanguageSettingThatWorksIsLeftAlone() throws Exception {
        assertThat(run(Map.of("LC_ALL", "de_DE.UTF-8")).lines()).contains("LC_ALL=de_DE.UTF-8");
        assertThat(run(Map.of("LANG", "de_DE.UTF-8")).lines()).contains("LC_ALL=");
    }

    @Test
    void aLanguageSettingThatIsNotInstalledCountsAsNone() throws Exception {
        program(folder.resolve("programs/locale"), "#!/bin/sh\necho " + ASCII + "\n");

        assertThat(run(Map.of("LANG", "xx_XX.UTF-8")).lines()).contains("LC_ALL=C.UTF-8");
    }

    @Test
    void withoutAnyJavaItSaysWhatToInstall() throws Exception {
        Files.delete(home.resolve("runtime/bin/java"));

        Came came = run(Map.of());

        assertThat(came.lines())
                .containsExactly(
                        "readback: no Java found. Install a Java runtime 17 or newer, or set JAVA_HOME to one.");
        assertThat(came.code()).isEqualTo(69);
    }
}
