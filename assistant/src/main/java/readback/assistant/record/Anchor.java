package readback.assistant.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What a record, or the remarks on it, were once seen to be. A chain proves that nothing was changed within it, not
 * that it was not cut at a line end or put back to an earlier state; a file that held an anchor holds it for ever.
 *
 * @param session name of the session and of its folder
 * @param of what it is an anchor of
 * @param events recorded by then, 0 for the header alone; of remarks their number
 * @param hash of the file's last line by then
 */
public record Anchor(String session, Subject of, int events, String hash) {

    /** What can be anchored. */
    public enum Subject {
        /** The record of a session, whose first line is its header. */
        RECORD(SessionRecord.FILE, 1),
        /** The remarks on it. */
        REMARKS(RemarkFile.FILE, 0);

        private final String file;
        private final int linesBefore;

        Subject(String file, int linesBefore) {
            this.file = file;
            this.linesBefore = linesBefore;
        }
    }

    /** What became of what was anchored. */
    public enum Finding {
        /** It is there and begins as it did then; it may have grown. */
        HOLDS,
        /** There is no such file. */
        GONE,
        /** It ends, or cannot be read any more, before the line that was its last one then. */
        SHORTENED,
        /** It has another content up to there. */
        REWRITTEN
    }

    /** An anchor of a record. */
    public static Anchor ofRecord(String session, int events, String hash) {
        return new Anchor(session, Subject.RECORD, events, hash);
    }

    /** An anchor of the remarks on a record. */
    public static Anchor ofRemarks(String session, int remarks, String hash) {
        return new Anchor(session, Subject.REMARKS, remarks, hash);
    }

    /** What became of it among these sessions. */
    public Finding in(Path sessions) {
        try {
            Path file = sessions.resolve(session).resolve(of.file);
            if (!Files.isRegularFile(file)) {
                return Finding.GONE;
            }
            List<String> hashes = ChainedRecord.of(WholeFile.read(file)).hashes();
            int last = events + of.linesBefore - 1;
            if (hashes.size() <= last) {
                return Finding.SHORTENED;
            }
            return hashes.get(last).equals(hash) ? Finding.HOLDS : Finding.REWRITTEN;
        } catch (IOException e) {
            return Finding.SHORTENED;
        }
    }
}
