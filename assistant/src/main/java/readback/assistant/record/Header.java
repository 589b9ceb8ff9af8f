package readback.assistant.record;

import java.time.Instant;
import java.util.Map;

/**
 * The first line of a record: what made the session, so that it can be judged and replayed later.
 *
 * @param session name of the session, unique in its folder
 * @param startedAt wall clock
 * @param program version of Readback
 * @param parts name and version or hash of what took part: "model", "grammar", "checklists", "texts", "voice"
 */
public record Header(String session, Instant startedAt, String program, Map<String, String> parts) {

    /** Version of the form of the lines. */
    public static final int SCHEMA = 1;

    public Header {
        parts = Map.copyOf(parts);
    }
}
