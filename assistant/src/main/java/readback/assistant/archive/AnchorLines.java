package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
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

    private AnchorLines() {}

    /** The line of an anchor, with session, events and hash. */
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
                anchors.add(JSON.readValue(line, Anchor.class));
            } catch (JsonProcessingException e) {
                throw new IOException("line " + number + " is no anchor", e);
            }
        }
        return anchors;
    }
}
