package readback.assistant.record;

import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The first line of a record: what made the session, so that it can be judged and replayed later.
 *
 * @param schema version of the form of the lines
 * @param session name of the session, unique in its folder
 * @param startedAt wall clock
 * @param program version of Readback
 * @param parts name and version or hash of what took part: grammar, facts, checklists, texts, model, ear, voice
 * @param about what the user set for the job: see {@link About}; nothing of it is found out by the program
 */
public record Header(
        int schema,
        String session,
        Instant startedAt,
        String program,
        Map<String, String> parts,
        Map<String, String> about) {

    /** The form of the lines that this version writes. */
    public static final int SCHEMA = 4;

    public Header {
        parts = Map.copyOf(parts);
        about = Collections.unmodifiableMap(new TreeMap<>(about));
    }

    /** The header of a record that this version writes. */
    public Header(
            String session, Instant startedAt, String program, Map<String, String> parts, Map<String, String> about) {
        this(SCHEMA, session, startedAt, program, parts, about);
    }

    public Header(String session, Instant startedAt, String program, Map<String, String> parts) {
        this(session, startedAt, program, parts, Map.of());
    }
}
