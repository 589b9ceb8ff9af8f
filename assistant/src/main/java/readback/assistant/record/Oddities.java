package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.dialogue.Event;

/**
 * What stands in lines whose chain holds and that no version writes: fields of another name, counts that do not follow,
 * events behind the end. Whoever forges a whole chain leaves such traces easily; a newer version may leave them too.
 */
public final class Oddities {

    private static final String HASH = "hash";

    private final List<RecordFault> found = new ArrayList<>();
    private Optional<Header> header = Optional.empty();
    private boolean closed;
    private int line;

    private Oddities() {}

    /**
     * Those of a session's folder or file, in order, up to the first line that does not hold; none for an honest
     * record.
     */
    public static List<RecordFault> in(Path session) {
        try {
            return in(WholeFile.read(RecordedSession.fileOf(session)));
        } catch (IOException e) {
            // Why it cannot be read is told where it is read as a record.
            return List.of();
        }
    }

    static List<RecordFault> in(byte[] file) {
        Oddities oddities = new Oddities();
        int from = 0;
        for (int end = Chain.lineEnd(file, 0); end < file.length; end = Chain.lineEnd(file, from)) {
            if (Chain.hashOf(file, from, end).isEmpty()) {
                break;
            }
            String text = new String(file, from, end - from, StandardCharsets.UTF_8);
            if (!oddities.take(text)) {
                break;
            }
            from = end + 1;
        }
        return List.copyOf(oddities.found);
    }

    /** @return whether the line could be read */
    private boolean take(String text) {
        line++;
        try {
            JsonNode node = RecordJson.read(text);
            if (line == 1) {
                Header read = RecordJson.header(node);
                header = Optional.of(read);
                if (read.schema() == Header.SCHEMA) {
                    compare(node, RecordJson.header(read), text);
                }
            } else {
                entry(node, text);
            }
            return true;
        } catch (IllegalArgumentException | java.time.DateTimeException e) {
            return false;
        }
    }

    private void entry(JsonNode node, String text) {
        Entry entry = RecordJson.entry(node);
        if (entry.number() != line - 1) {
            odd("is numbered " + entry.number() + " where " + (line - 1) + " follows");
        }
        if (closed) {
            odd("stands behind the end of the session");
        }
        if (entry.event() instanceof Event.Started != (line == 2)) {
            odd(line == 2 ? "does not start the session" : "starts the session once more");
        }
        closed |= entry.closed();
        if (header.filter(read -> read.schema() == Header.SCHEMA).isPresent()) {
            compare(node, RecordJson.entry(entry, RecordJson.previous(node)), text);
        }
    }

    /** Compares a line with what this version would have written for what it read in it. */
    private void compare(JsonNode node, String own, String text) {
        JsonNode written = RecordJson.read(own);
        JsonNode stated = ((ObjectNode) node.deepCopy()).without(HASH);
        Optional<String> difference = difference("", stated, written);
        if (difference.isPresent()) {
            odd("has " + difference.get() + ", which no version of this form writes");
        } else if (!text.startsWith(own.substring(0, own.length() - 1))) {
            odd("says the same in another form than any version writes it");
        }
    }

    /** What one has and the other has not, named by its place, as in {@code "outcome.bonus"}. */
    private static Optional<String> difference(String place, JsonNode stated, JsonNode written) {
        if (stated.isObject() && written.isObject()) {
            for (Map.Entry<String, JsonNode> field : stated.properties()) {
                String name = place.isEmpty() ? field.getKey() : place + "." + field.getKey();
                JsonNode other = written.get(field.getKey());
                Optional<String> difference =
                        other == null ? Optional.of("\"" + name + "\"") : difference(name, field.getValue(), other);
                if (difference.isPresent()) {
                    return difference;
                }
            }
            return Optional.empty();
        }
        if (stated.isArray() && written.isArray() && stated.size() == written.size()) {
            for (int i = 0; i < stated.size(); i++) {
                Optional<String> difference = difference(place + "[" + i + "]", stated.get(i), written.get(i));
                if (difference.isPresent()) {
                    return difference;
                }
            }
            return Optional.empty();
        }
        return stated.equals(written) ? Optional.empty() : Optional.of("\"" + place + "\" as " + stated);
    }

    private void odd(String sentence) {
        found.add(new RecordFault(line, RecordFault.Kind.ODD, sentence));
    }
}
