package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a session lies in a bundle, and what it was when it was put there: a line of the index beside the bundle.
 *
 * @param session its name, as its header tells it; empty where that cannot be read
 * @param offset bytes of the bundle before it
 * @param length bytes of its record
 * @param lines that hold, the header among them
 * @param head hash of the last of these lines
 * @param sha256 of all bytes of its record, whether or not they hold
 */
public record BundledSession(String session, int offset, int length, int lines, String head, String sha256) {

    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);

    /** The line, without its end. */
    String line() {
        try {
            return JSON.writeValueAsString(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers and texts can always be written", e);
        }
    }

    /**
     * The lines of an index.
     *
     * @throws IOException when one is no such line: the message says which
     */
    public static List<BundledSession> all(String index) throws IOException {
        List<BundledSession> sessions = new ArrayList<>();
        for (String line : index.lines().toList()) {
            try {
                sessions.add(JSON.readValue(line, BundledSession.class));
            } catch (JsonProcessingException e) {
                throw new IOException("line " + (sessions.size() + 1) + " of its index is none", e);
            }
        }
        return sessions;
    }

    /** Where this session ends in the bundle, without the line feed that a torn last line got there. */
    int end() {
        return offset + length;
    }
}
