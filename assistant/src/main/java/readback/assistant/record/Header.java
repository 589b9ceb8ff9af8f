package readback.assistant.record;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The first line of a record: what made the session, so that it can be judged and replayed later.
 *
 * @param schema version of the form of the lines
 * @param session name of the session, unique in its folder
 * @param startedAt wall clock
 * @param zone whose local time the technician worked in, as the tablet was set; empty in records of earlier versions
 * @param program version of Readback
 * @param parts name and version or hash of what took part: grammar, facts, checklists, texts, model, ear, voice
 * @param about what the user set for the job: see {@link About}; nothing of it is found out by the program
 */
public record Header(
        int schema,
        String session,
        Instant startedAt,
        Optional<ZoneId> zone,
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
        this(SCHEMA, session, startedAt, Optional.empty(), program, parts, about);
    }

    /** This header of a session in a time zone. */
    public Header in(ZoneId where) {
        return new Header(schema, session, startedAt, Optional.of(where), program, parts, about);
    }

    /** Whose local time readers are told: that of the work, else that of the reader. */
    public ZoneId shownIn() {
        return zone.orElseGet(ZoneId::systemDefault);
    }

    public Header(String session, Instant startedAt, String program, Map<String, String> parts) {
        this(session, startedAt, program, parts, Map.of());
    }
}
