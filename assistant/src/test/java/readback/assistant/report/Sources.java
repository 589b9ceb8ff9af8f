package readback.assistant.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The program's own source files, for tests that hold texts and code together. */
final class Sources {

    private Sources() {}

    /** The contents of a package's files; tests run in the module's folder. */
    static List<String> of(String name) {
        try (Stream<Path> files = Files.list(Path.of("src/main/java/readback/assistant", name))) {
            return files.map(Sources::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
