package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * A file of chained lines that belongs to no single session and is begun with its first line.
 *
 * @param parse makes an item of a line; it throws for a line that is none
 */
record ChainedFile<T>(Path file, Function<JsonNode, T> parse) {

    /**
     * What the file holds; one that is not there holds nothing.
     *
     * @throws IOException when it cannot be read
     */
    ChainedLines<T> read() throws IOException {
        return lines(Files.exists(file) ? WholeFile.read(file) : new byte[0]);
    }

    /**
     * Adds a line, in the place of one that was cut off while it was written.
     *
     * @param line without its place in the chain
     * @return what is wrong with the file, so that nothing was added; empty when the line is on disk
     * @throws IOException when it cannot be read or written, or another process holds it
     */
    Optional<RecordFault> append(ObjectNode line) throws IOException {
        try (LineFile open =
                Files.exists(file) ? LineFile.OnDisk.open(file) : LineFile.OnDisk.create(file, OwnerOnly.file(file))) {
            ChainedLines<T> before = lines(WholeFile.read(file));
            Optional<RecordFault> fault = before.fault().filter(each -> each.kind() != RecordFault.Kind.TORN);
            if (fault.isEmpty()) {
                before.append(open, line);
            }
            return fault;
        }
    }

    private ChainedLines<T> lines(byte[] bytes) {
        return ChainedLines.read(bytes, parse, any -> true, "does not follow the line before it");
    }
}
