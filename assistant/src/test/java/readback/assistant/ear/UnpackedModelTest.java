package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.grammar.AcousticModel;
import readback.grammar.AcousticModel.ModelFile;

@Tag("slow")
class UnpackedModelTest {
    private static final AcousticModel MODEL = AcousticModel.bundled();
    private static final LibraryPath.Naming LINUX =
            new LibraryPath.Naming(false, path -> Optional.empty(), StandardCharsets.UTF_8);

    @TempDir
    Path cache;

    private static void assertWhole(Path folder) throws IOException {
        for (ModelFile file : MODEL.files()) {
            try (InputStream original = MODEL.open(file.name())) {
                assertThat(folder.resolve(file.name())).hasBinaryContent(original.readAllBytes());
            }
        }
    }

    private List<String> inCache() throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void everyFileIsThereAndNothingElseStays() throws IOException, EarUnavailableException {
        ModelFolder model = UnpackedModel.in(cache, MODEL);

        assertWhole(model.folder());
        assertThat(inCache())
                .containsExactlyInAnyOrder(
                        "model.lock", model.folder().getFileName().toString());
    }

    @Test
    void theSecondStartUsesWhatIsThere() throws IOException, EarUnavailableException {
        Path folder = UnpackedModel.in(cache, MODEL).folder();
        Object first = Files.readAttributes(folder, "unix:ino").get("ino");

        UnpackedModel.in(cache, MODEL);

        assertThat(Files.readAttributes(folder, "unix:ino").get("ino")).isEqualTo(first);
    }

    @Test
    void aDamagedFileIsReplaced() throws IOException, EarUnavailableException {
        Path folder = UnpackedModel.in(cache, MODEL).folder();
        Path file = folder.resolve("am/final.mdl");
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);

        UnpackedModel.in(cache, MODEL);

        assertWhole(folder);
    }

    @Test
    void whatAKilledProgramLeftIsClearedAway() throws IOException, EarUnavailableException {
        Path folder = UnpackedModel.in(cache, MODEL).folder();
        Path half = cache.resolve(folder.getFileName() + ".part-123").resolve("am");
        Files.createDirectories(half);
        Files.writeString(half.resolve("final.mdl"), "half");
        Files.delete(folder.resolve("conf/model.conf"));

        UnpackedModel.in(cache, MODEL);

        assertWhole(folder);
        assertThat(inCache())
                .containsExactlyInAnyOrder("model.lock", folder.getFileName().toString());
    }

    @Test
    void programsThatStartTogetherAgree() throws IOException, InterruptedException {
        List<Process> programs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            UnpackingProgram.class.getName(),
                            cache.toString())
                    .start());
        }
        Set<String> folders = new HashSet<>();
        for (Process program : programs) {
            String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            String complaint = new String(program.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(program.waitFor()).as(complaint).isZero();
            folders.add(said);
        }

        assertThat(folders).hasSize(1);
        assertWhole(Path.of(folders.iterator().next()));
    }

    @Test
    void aCacheThatCannotBeWrittenIsSaidInOneSentence() throws IOException {
        Path file = Files.createFile(cache.resolve("occupied"));

        assertThatThrownBy(() -> UnpackedModel.in(file.resolve("cache"), MODEL))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("cannot be unpacked")
                .hasMessageContaining("occupied")
                .hasMessageContaining("XDG_CACHE_HOME");
    }

    @Test
    void whereTheCacheCannotBeWrittenTheModelGoesElsewhere() throws IOException, EarUnavailableException {
        Path file = Files.createFile(cache.resolve("occupied"));
        Path elsewhere = cache.resolve("elsewhere");

        ModelFolder model = UnpackedModel.inFirst(List.of(file.resolve("cache"), elsewhere), MODEL, LINUX);

        assertThat(model.folder()).startsWith(elsewhere);
        assertWhole(model.folder());
    }

    @Test
    void whereNeitherCanBeWrittenTheCacheIsNamed() throws IOException {
        Path file = Files.createFile(cache.resolve("occupied"));

        assertThatThrownBy(() ->
                        UnpackedModel.inFirst(List.of(file.resolve("cache"), file.resolve("other")), MODEL, LINUX))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("cannot be unpacked into '" + file.resolve("cache") + "'");
    }

    /** A user's folder with letters that the code page of Western Europe lacks, on a disk without short names. */
    @Test
    void aCacheThatTheRecogniserCannotOpenIsPassedOver() throws EarUnavailableException {
        LibraryPath.Naming windows =
                new LibraryPath.Naming(true, path -> Optional.empty(), Charset.forName("windows-1252"));
        Path plain = cache.resolve("plain");

        ModelFolder model = UnpackedModel.inFirst(List.of(cache.resolve("Łukasz"), plain), MODEL, windows);

        assertThat(model.folder()).startsWith(plain);
    }
}
