package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the sessions of a folder were when they were begun and when they were left, chained like a record. So a record
 * that was cut, put back or taken away is noticed. Whoever can write the folder can also write the ledger: only anchors
 * that lie elsewhere are proof against that; decision 0002.
 */
public final class FolderLedger {

    /** Name of the file among the sessions. */
    public static final String FILE = ".readback-ledger";

    /** What the lines are called. */
    private static final Map<Anchor.Subject, String> TYPES =
            Map.of(Anchor.Subject.RECORD, "anchor", Anchor.Subject.REMARKS, "remarks");

    private static final int TRIES = 40;
    private static final long BETWEEN_TRIES_MILLIS = 50;

    private final ChainedFile<Anchor> file;

    private FolderLedger(ChainedFile<Anchor> file) {
        this.file = file;
    }

    /** The ledger of a folder of sessions, whether or not there is one yet. */
    public static FolderLedger in(Path sessions) {
        return new FolderLedger(new ChainedFile<>(sessions.resolve(FILE), FolderLedger::anchor));
    }

    /**
     * What the ledger says.
     *
     * @param latest the latest anchor of each record, and of the remarks on it, in the order of their first ones
     * @param fault what is wrong with the ledger itself; what stands before it is trusted
     */
    public record Content(List<Anchor> latest, Optional<RecordFault> fault) {

        public Content {
            latest = List.copyOf(latest);
        }

        /** The latest anchor of a session's record, or of the remarks on it. */
        public Optional<Anchor> of(String session, Anchor.Subject subject) {
            return latest.stream()
                    .filter(anchor -> anchor.session().equals(session) && anchor.of() == subject)
                    .findFirst();
        }
    }

    private record Named(String session, Anchor.Subject of) {}

    /**
     * Reads the ledger; one that is not there says nothing.
     *
     * @throws IOException when it cannot be read
     */
    public Content read() throws IOException {
        ChainedLines<Anchor> lines = file.read();
        Map<Named, Anchor> latest = new LinkedHashMap<>();
        lines.items().forEach(anchor -> latest.put(new Named(anchor.session(), anchor.of()), anchor));
        return new Content(List.copyOf(latest.values()), lines.fault());
    }

    /**
     * Adds what a session is now.
     *
     * @return why it was not added; empty when it is on disk
     */
    public Optional<String> note(Instant at, Anchor anchor) {
        Optional<String> why = Optional.empty();
        for (int i = 0; i < TRIES; i++) {
            try {
                return noted(at, anchor);
            } catch (IOException e) {
                // another session of this folder may be writing its own
                why = Optional.of(String.valueOf(e.getMessage()));
                try {
                    Thread.sleep(BETWEEN_TRIES_MILLIS);
                } catch (InterruptedException interrupted) {
                    Thread.currentThread().interrupt();
                    return why;
                }
            }
        }
        return why;
    }

    private Optional<String> noted(Instant at, Anchor anchor) throws IOException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("type", TYPES.get(anchor.of()));
        node.put("at", at.toString());
        node.put("session", anchor.session());
        node.put("events", anchor.events());
        node.put("head", anchor.hash());
        return file.append(node).map(RecordFault::toString);
    }

    private static Anchor.Subject subject(String type) {
        return TYPES.entrySet().stream()
                .filter(each -> each.getValue().equals(type))
                .findFirst()
                .map(Map.Entry::getKey)
                .orElseThrow(() -> new IllegalArgumentException("no line of a ledger: \"" + type + "\""));
    }

    private static Anchor anchor(JsonNode node) {
        return new Anchor(
                RecordJson.text(node, "session"),
                subject(RecordJson.text(node, "type")),
                node.path("events").asInt(),
                RecordJson.text(node, "head"));
    }
}
