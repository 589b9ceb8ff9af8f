package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The remarks on a session, in a file of their own beside it: the session's record never changes. Each line names the
 * hash of the session that the writer had seen, and is chained to the line before.
 *
 * @param all oldest first, up to the first line that could not be trusted
 * @param hash of the last line that holds
 * @param fault what is wrong with the file
 */
public record RemarkFile(List<Remark> all, String hash, Optional<RecordFault> fault) {

    /** Name of the file in a session's folder. */
    public static final String FILE = "remarks.jsonl";

    public RemarkFile {
        all = List.copyOf(all);
    }

    /**
     * The remarks on a session; none when nobody made one.
     *
     * @throws RecordUnavailableException when there is a file that cannot be read
     */
    public static RemarkFile on(RecordedSession session) throws RecordUnavailableException {
        ChainedLines<Remark> lines = lines(session);
        return new RemarkFile(lines.items(), lines.hash(), lines.fault());
    }

    /**
     * What the folder's ledger knows of the remarks on a session and does not find any more; empty where they hold it,
     * or where it knows nothing.
     *
     * @throws IOException when the ledger cannot be read
     */
    public static Optional<Missed> missed(RecordedSession session) throws IOException {
        Path sessions = session.folder().getParent();
        if (sessions == null) {
            return Optional.empty();
        }
        String folder = String.valueOf(session.folder().getFileName());
        return FolderLedger.in(sessions)
                .read()
                .of(folder, Anchor.Subject.REMARKS)
                .map(anchor -> new Missed(anchor.events(), anchor.in(sessions)))
                .filter(missed -> missed.finding() != Anchor.Finding.HOLDS);
    }

    /**
     * Remarks that are not there as they were.
     *
     * @param remarks there were
     */
    public record Missed(int remarks, Anchor.Finding finding) {}

    private static ChainedLines<Remark> lines(RecordedSession session) throws RecordUnavailableException {
        byte[] bytes;
        try {
            bytes = WholeFile.read(session.folder().resolve(FILE));
        } catch (NoSuchFileException e) {
            bytes = new byte[0];
        } catch (IOException e) {
            throw new RecordUnavailableException("The remarks cannot be read: " + e.getMessage(), e);
        }
        String name = session.header().session();
        return ChainedLines.read(
                bytes,
                RemarkFile::remark,
                node -> RecordJson.text(node, "session").equals(name),
                "does not belong here");
    }

    private static Remark remark(JsonNode node) {
        return new Remark(
                Instant.parse(RecordJson.text(node, "at")),
                RecordJson.text(node, "by"),
                RecordJson.text(node, "text"),
                RecordJson.text(node, "about"));
    }

    /**
     * What the remarks on a session are now.
     *
     * @throws RecordUnavailableException when there is a file that cannot be read
     */
    public static Anchor anchor(RecordedSession session) throws RecordUnavailableException {
        RemarkFile now = on(session);
        return Anchor.ofRemarks(
                String.valueOf(session.folder().getFileName()), now.all().size(), now.hash());
    }

    /**
     * Adds a remark on the session as it is now.
     *
     * @throws RecordUnavailableException when the file is damaged or cannot be written
     */
    public static Remark add(RecordedSession session, Instant now, String by, String text)
            throws RecordUnavailableException {
        ChainedLines<Remark> before = lines(session);
        if (before.fault().isPresent()) {
            throw new RecordUnavailableException(
                    "The remarks on '" + session.header().session() + "' are damaged: "
                            + before.fault().get() + ". Keep that file aside; it is evidence.");
        }
        Remark remark = new Remark(now, by, text, session.hash());
        Path file = session.folder().resolve(FILE);
        try {
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            node.put("type", "remark");
            node.put("session", session.header().session());
            node.put("at", now.toString());
            node.put("by", by);
            node.put("text", text);
            node.put("about", session.hash());
            try (LineFile remarks = before.length() == 0
                    ? LineFile.OnDisk.create(file, OwnerOnly.file(file))
                    : LineFile.OnDisk.open(file)) {
                before.append(remarks, node);
            }
            return remark;
        } catch (IOException e) {
            throw new RecordUnavailableException(
                    "The remark cannot be written to '" + file + "' (" + e.getMessage()
                            + "): make that folder writable.",
                    e);
        }
    }
}
