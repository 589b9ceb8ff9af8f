package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import readback.assistant.record.Anchor;

/** Anchors as lines of JSON, to be kept away from the tablet that the records lie on. */
public final class AnchorLines {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES);

    private static final String OF = "of";

    private AnchorLines() {}

    /** Lines of earlier versions do not say of what they are: of a record. */
    private static Anchor anchor(String line) throws JsonProcessingException {
        JsonNode node = JSON.readTree(line);
        if (node instanceof ObjectNode object && !object.has(OF)) {
            object.put(OF, Anchor.Subject.RECORD.name());
        }
        return JSON.treeToValue(node, Anchor.class);
    }

    /** The line of an anchor, with session, of, events and hash. */
    public static String of(Anchor anchor) {
        try {
            return JSON.writeValueAsString(anchor);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("An anchor can always be written.", e);
        }
    }

    /**
     * The anchors of a file.
     *
     * @throws IOException when it cannot be read, or a line of it is no anchor: the message says which
     */
    public static List<Anchor> read(Path file) throws IOException {
        List<Anchor> anchors = new ArrayList<>();
        int number = 0;
        for (String line : Files.readAllLines(file)) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                anchors.add(anchor(line));
            } catch (JsonProcessingException e) {
                throw new IOException("line " + number + " is no anchor", e);
            }
        }
        return anchors;
    }
}
