package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A file beside the records that is sealed and chained as they are.
 *
 * @param items of its lines, oldest first, up to the first that could not be trusted
 * @param hash of the last line that holds
 * @param length bytes of the file up to and with that line
 * @param fault what is wrong with the file
 */
record ChainedLines<T>(List<T> items, String hash, int length, Optional<RecordFault> fault) {

    ChainedLines {
        items = List.copyOf(items);
    }

    /**
     * Reads a whole file.
     *
     * @param parse makes an item of a line; it throws for a line that is none
     * @param belongs whether the line is of this file, beside following the one before it
     * @param misplaced what is said of a line that is not
     */
    static <T> ChainedLines<T> read(
            byte[] file, Function<JsonNode, T> parse, Predicate<JsonNode> belongs, String misplaced) {
        return new Reading<>(file, parse, belongs, misplaced).lines();
    }

    /**
     * Adds a line behind the last one that holds.
     *
     * @param line without its place in the chain
     */
    void append(LineFile file, ObjectNode line) throws IOException {
        line.put("prev", hash);
        file.endWith(length, (Chain.seal(RecordJson.write(line)) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** One pass over the bytes of a file. */
    private static final class Reading<T> {
        private final byte[] file;
        private final Function<JsonNode, T> parse;
        private final Predicate<JsonNode> belongs;
        private final String misplaced;
        private final List<T> items = new ArrayList<>();
        private String hash = Chain.START;
        private int trusted;

        Reading(byte[] file, Function<JsonNode, T> parse, Predicate<JsonNode> belongs, String misplaced) {
            this.file = file;
            this.parse = parse;
            this.belongs = belongs;
            this.misplaced = misplaced;
        }

        ChainedLines<T> lines() {
            Optional<RecordFault> fault = Optional.empty();
            for (int line = 1; fault.isEmpty() && trusted < file.length; line++) {
                fault = take(line);
            }
            return new ChainedLines<>(items, hash, trusted, fault);
        }

        private Optional<RecordFault> take(int line) {
            int end = Chain.lineEnd(file, trusted);
            if (end == file.length) {
                return fault(line, RecordFault.Kind.TORN, "was cut off while it was written");
            }
            Optional<String> found = Chain.hashOf(file, trusted, end);
            if (found.isEmpty()) {
                return fault(line, RecordFault.Kind.CHANGED, "was changed or damaged");
            }
            try {
                JsonNode node = RecordJson.read(new String(file, trusted, end - trusted, StandardCharsets.UTF_8));
                T item = parse.apply(node);
                if (!belongs.test(node) || !RecordJson.previous(node).equals(hash)) {
                    return fault(line, RecordFault.Kind.MISPLACED, misplaced);
                }
                items.add(item);
            } catch (RuntimeException e) {
                return fault(line, RecordFault.Kind.UNREADABLE, "cannot be read: " + e.getMessage());
            }
            hash = found.get();
            trusted = end + 1;
            return Optional.empty();
        }

        private static Optional<RecordFault> fault(int line, RecordFault.Kind kind, String sentence) {
            return Optional.of(new RecordFault(line, kind, sentence));
        }
    }
}
