package readback.assistant.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What a record was once seen to be. A chain proves that nothing was changed within it, not that it was not cut at a
 * line end or put back to an earlier state; a record that held an anchor holds it for ever.
 *
 * @param session name of the session and of its folder
 * @param events recorded by then; 0 for the header alone
 * @param hash of the record by then
 */
public record Anchor(String session, int events, String hash) {

    /** What became of an anchored record. */
    public enum Finding {
        /** It is there and begins as it did then; it may have grown. */
        HOLDS,
        /** There is no such record. */
        GONE,
        /** It ends, or cannot be read any more, before the event that was its last one then. */
        SHORTENED,
        /** It has another content up to there. */
        REWRITTEN
    }

    /** What became of the record among these sessions. */
    public Finding in(Path sessions) {
        try {
            Path file = sessions.resolve(session).resolve(SessionRecord.FILE);
            if (!Files.isRegularFile(file)) {
                return Finding.GONE;
            }
            List<String> hashes = Chain.hashes(Files.readAllBytes(file));
            if (hashes.size() <= events) {
                return Finding.SHORTENED;
            }
            return hashes.get(events).equals(hash) ? Finding.HOLDS : Finding.REWRITTEN;
        } catch (IOException e) {
            return Finding.SHORTENED;
        }
    }
}
