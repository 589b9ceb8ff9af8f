package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;

/**
 * A record as it was read.
 *
 * @param folder where it lies
 * @param entries in order, up to the first line that could not be trusted
 * @param hash the hash of the last line that holds: it stands for the header and all of the entries
 * @param length bytes of the file up to and with that line
 * @param fault what is wrong and on which line; empty when the whole chain holds
 */
public record RecordedSession(
        Path folder, Header header, List<Entry> entries, String hash, long length, Optional<RecordFault> fault) {

    public RecordedSession {
        entries = List.copyOf(entries);
    }

    /**
     * Reads a session's folder or its file.
     *
     * @throws RecordUnavailableException when not even the header can be read
     */
    public static RecordedSession read(Path session) throws RecordUnavailableException {
        Path file = fileOf(session);
        try {
            return parse(WholeFile.read(file), file);
        } catch (NoSuchFileException e) {
            throw new RecordUnavailableException(
                    "There is no session record at '" + session + "': name a session's folder.", e);
        } catch (IOException e) {
            throw new RecordUnavailableException("The record '" + file + "' cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * The bytes of the record in a session's folder, whatever they are.
     *
     * @throws IOException also where it is no file, or larger than any record
     */
    public static byte[] bytes(Path session) throws IOException {
        return WholeFile.read(fileOf(session));
    }

    /**
     * A record from its bytes, wherever they came from.
     *
     * @param file where they lie, or would lie
     * @throws RecordUnavailableException when not even the header can be read
     */
    public static RecordedSession parse(byte[] bytes, Path file) throws RecordUnavailableException {
        return new Reading(bytes, file).session();
    }

    static Path fileOf(Path session) {
        return Files.isDirectory(session) ? session.resolve(SessionRecord.FILE) : session;
    }

    /** Whether the session was brought to its end, by "finish" or by the end of its input. */
    public boolean closed() {
        return !entries.isEmpty() && entries.get(entries.size() - 1).closed();
    }

    /** After how many of its events the record had this hash; empty when it never had. */
    public Optional<Integer> eventsAt(String once) {
        try {
            int at = ChainedRecord.of(WholeFile.read(folder.resolve(SessionRecord.FILE)))
                    .hashes()
                    .subList(0, entries.size() + 1)
                    .indexOf(once);
            return at < 0 ? Optional.empty() : Optional.of(at);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** What the session began with; empty for a record without an event. */
    public Optional<SessionSettings> settings() {
        return entries.stream()
                .map(Entry::event)
                .filter(Event.Started.class::isInstance)
                .map(event -> ((Event.Started) event).settings())
                .findFirst();
    }

    /** What became of the sound of an event. */
    public sealed interface KeptSound {

        /** What the case of this kind makes of the sound. */
        <T> T fold(Cases<T> cases);

        /** What is to be made of each kind of sound. */
        interface Cases<T> {

            T whole(Whole whole);

            T missing(Missing missing);

            T changed(Changed changed);
        }

        /** It is there, byte for byte. */
        record Whole(Path file) implements KeptSound {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.whole(this);
            }
        }

        /** It was kept, but is gone now, as when it was deleted for privacy. */
        record Missing() implements KeptSound {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.missing(this);
            }
        }

        /** It is not what was recorded. */
        record Changed() implements KeptSound {
            @Override
            public <T> T fold(Cases<T> cases) {
                return cases.changed(this);
            }
        }
    }

    /** The sound of an entry; empty when none was kept. */
    public Optional<KeptSound> sound(Entry entry) {
        return entry.audio().map(clip -> {
            if (!AudioShelf.isName(clip.file())) {
                return new KeptSound.Changed();
            }
            Path file = folder.resolve(SessionRecord.AUDIO).resolve(clip.file());
            try {
                byte[] bytes = WholeFile.read(file);
                return Chain.sha256(bytes, 0, bytes.length).equals(clip.sha256())
                        ? new KeptSound.Whole(file)
                        : new KeptSound.Changed();
            } catch (IOException e) {
                return new KeptSound.Missing();
            }
        });
    }

    /** One pass over the lines of a file. */
    private static final class Reading {
        private final byte[] bytes;
        private final Path file;
        private final ChainedRecord chain;
        private final List<Entry> entries = new ArrayList<>();
        private @Nullable Header header;

        Reading(byte[] bytes, Path file) {
            this.bytes = bytes;
            this.file = file;
            this.chain = ChainedRecord.of(bytes);
        }

        RecordedSession session() throws RecordUnavailableException {
            int trusted = 0;
            String hash = Chain.START;
            Optional<RecordFault> fault = Optional.empty();
            for (int i = 0; fault.isEmpty() && i < chain.ends().size(); i++) {
                int end = chain.ends().get(i);
                fault = take(i + 1, trusted, end);
                if (fault.isEmpty()) {
                    hash = chain.hashes().get(i);
                    trusted = end + 1;
                }
            }
            fault = fault.or(chain::fault);
            boolean headerChanged = chain.ends().isEmpty()
                    && fault.filter(each -> each.kind() == RecordFault.Kind.CHANGED)
                            .isPresent();
            if (headerChanged) {
                // A header that still can be read names the session whose record was changed.
                take(1, 0, Chain.lineEnd(bytes, 0));
            }
            if (header == null) {
                throw new RecordUnavailableException("'" + file + "' is no session record: "
                        + fault.map(RecordFault::toString).orElse("it is empty") + ".");
            }
            Path folder = file.toAbsolutePath().getParent();
            return new RecordedSession(folder == null ? file : folder, header, entries, hash, trusted, fault);
        }

        private Optional<RecordFault> take(int line, int from, int to) {
            try {
                JsonNode node = RecordJson.read(new String(bytes, from, to - from, StandardCharsets.UTF_8));
                if (line == 1) {
                    header = RecordJson.header(node);
                } else {
                    entries.add(RecordJson.entry(node));
                }
                return Optional.empty();
            } catch (RuntimeException e) {
                return Optional.of(
                        new RecordFault(line, RecordFault.Kind.UNREADABLE, "cannot be read: " + e.getMessage()));
            }
        }
    }
}
