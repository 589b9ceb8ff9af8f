package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The remarks on a session, in a file of their own beside it: the session's record never changes. Each line names the
 * hash of the session that the writer had seen, and is chained to the line before.
 *
 * @param all oldest first, up to the first line that could not be trusted
 * @param fault what is wrong with the file
 */
public record RemarkFile(List<Remark> all, Optional<RecordFault> fault) {

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
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(session.folder().resolve(FILE));
        } catch (NoSuchFileException e) {
            return new RemarkFile(List.of(), Optional.empty());
        } catch (IOException e) {
            throw new RecordUnavailableException("The remarks cannot be read: " + e.getMessage(), e);
        }
        return read(bytes, session);
    }

    private static RemarkFile read(byte[] bytes, RecordedSession session) {
        List<Remark> remarks = new ArrayList<>();
        String previous = Chain.START;
        int from = 0;
        for (int line = 1; from < bytes.length; line++) {
            int end = Chain.lineEnd(bytes, from);
            if (end == bytes.length) {
                return faulty(
                        remarks, new RecordFault(line, RecordFault.Kind.TORN, "was cut off while it was written"));
            }
            Optional<String> hash = Chain.hashOf(bytes, from, end);
            if (hash.isEmpty()) {
                return faulty(remarks, new RecordFault(line, RecordFault.Kind.CHANGED, "was changed or damaged"));
            }
            try {
                JsonNode node = RecordJson.read(new String(bytes, from, end - from, StandardCharsets.UTF_8));
                Remark remark = remark(node);
                boolean ofThisSession =
                        RecordJson.text(node, "session").equals(session.header().session());
                if (!ofThisSession || !RecordJson.text(node, "prev").equals(previous)) {
                    return faulty(remarks, new RecordFault(line, RecordFault.Kind.MISPLACED, "does not belong here"));
                }
                remarks.add(remark);
            } catch (RuntimeException e) {
                return faulty(
                        remarks,
                        new RecordFault(line, RecordFault.Kind.UNREADABLE, "cannot be read: " + e.getMessage()));
            }
            previous = hash.get();
            from = end + 1;
        }
        return new RemarkFile(remarks, Optional.empty());
    }

    private static RemarkFile faulty(List<Remark> remarks, RecordFault fault) {
        return new RemarkFile(remarks, Optional.of(fault));
    }

    private static Remark remark(JsonNode node) {
        return new Remark(
                Instant.parse(RecordJson.text(node, "at")),
                RecordJson.text(node, "by"),
                RecordJson.text(node, "text"),
                RecordJson.text(node, "about"));
    }

    /**
     * Adds a remark on the session as it is now.
     *
     * @throws RecordUnavailableException when the file is damaged or cannot be written
     */
    public static Remark add(RecordedSession session, Instant now, String by, String text)
            throws RecordUnavailableException {
        RemarkFile before = on(session);
        if (before.fault().isPresent()) {
            throw new RecordUnavailableException(
                    "The remarks on '" + session.header().session() + "' are damaged: "
                            + before.fault().get() + ". Keep that file aside; it is evidence.");
        }
        Remark remark = new Remark(now, by, text, session.hash());
        Path file = session.folder().resolve(FILE);
        try {
            byte[] old = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            String previous = old.length == 0 ? Chain.START : lastHash(old);
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            node.put("type", "remark");
            node.put("session", session.header().session());
            node.put("at", now.toString());
            node.put("by", by);
            node.put("text", text);
            node.put("about", session.hash());
            node.put("prev", previous);
            byte[] line = (Chain.seal(RecordJson.write(node)) + "\n").getBytes(StandardCharsets.UTF_8);
            try (LineFile remarks =
                    old.length == 0 ? LineFile.OnDisk.create(file, OwnerOnly.file(file)) : LineFile.OnDisk.open(file)) {
                remarks.endWith(old.length, line);
            }
            return remark;
        } catch (IOException e) {
            throw new RecordUnavailableException(
                    "The remark cannot be written to '" + file + "' (" + e.getMessage()
                            + "): make that folder writable.",
                    e);
        }
    }

    private static String lastHash(byte[] lines) {
        return Chain.hashOfFresh(new String(lines, 0, lines.length - 1, StandardCharsets.UTF_8));
    }
}
