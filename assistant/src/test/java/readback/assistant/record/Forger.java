package readback.assistant.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;

/** Someone who knows the form of a record, changes it and makes the whole chain anew. */
public final class Forger {

    private Forger() {}

    /**
     * Writes a session's record again with every line passed through the forgery.
     *
     * @param forgery gets the number of a line, 1 for the header, and the line without its place in the chain
     */
    public static void rewrite(Path session, BiConsumer<Integer, ObjectNode> forgery) throws IOException {
        Path file = session.resolve(SessionRecord.FILE);
        Files.writeString(file, chained(Files.readAllLines(file), forgery));
    }

    /** Lines sealed and chained anew. */
    public static String chained(List<String> lines, BiConsumer<Integer, ObjectNode> forgery) {
        StringBuilder forged = new StringBuilder();
        String previous = Chain.START;
        for (int i = 0; i < lines.size(); i++) {
            ObjectNode node = (ObjectNode) RecordJson.read(lines.get(i));
            node.remove(List.of("hash", "prev"));
            forgery.accept(i + 1, node);
            node.put("prev", previous);
            String sealed = Chain.seal(RecordJson.write(node));
            previous = Chain.hashOf(
                            sealed.getBytes(StandardCharsets.UTF_8), 0, sealed.getBytes(StandardCharsets.UTF_8).length)
                    .orElseThrow();
            forged.append(sealed).append('\n');
        }
        return forged.toString();
    }
}
