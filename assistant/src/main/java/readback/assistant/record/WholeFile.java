package readback.assistant.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** Files of evidence as they lie there, read at once: nothing that never ends, and nothing that fills the memory. */
final class WholeFile {

    /** Some hundred times the record of a long day, bytes. */
    private static final long LARGEST = 64_000_000;

    private WholeFile() {}

    /**
     * The bytes of a file.
     *
     * @throws IOException also where it is no file, as a pipe or a device, or larger than any that was written here
     */
    static byte[] read(Path file) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
        if (!attributes.isRegularFile()) {
            throw new IOException("it is no file");
        }
        if (attributes.size() > LARGEST) {
            throw new IOException("it is larger than any session's record (" + attributes.size() / 1_000_000
                    + " MB): look what else it is");
        }
        return Files.readAllBytes(file);
    }
}
