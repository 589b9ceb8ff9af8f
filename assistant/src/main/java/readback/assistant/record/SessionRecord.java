package readback.assistant.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalLong;
import readback.assistant.sound.Samples;

/**
 * The growing record of one session. Owned by the thread that runs the session.
 *
 * <p>{@link #append} returns only when the line is on disk. When the disk fails the lines are kept in memory, in order,
 * and written as soon as it works again: nothing acknowledged is lost while the process lives.
 */
public final class SessionRecord implements AutoCloseable {

    /** Name of the file in a session's folder. */
    public static final String FILE = "session.jsonl";

    /** Name of the folder for sound in a session's folder. */
    public static final String AUDIO = "audio";

    private final Path folder;
    private final LineFile file;
    private final Deque<byte[]> unwritten = new ArrayDeque<>();
    private String previousHash;
    private long whole;
    private boolean torn;
    private int events;
    private AudioShelf shelf;
    private Optional<Kept> kept = Optional.empty();

    /** Sound that waits for the line of its event. */
    private record Kept(int number, AudioClip clip) {}

    private SessionRecord(Path folder, LineFile file, String lastHash, long whole, int events) {
        this.folder = folder;
        this.file = file;
        this.previousHash = lastHash;
        this.whole = whole;
        this.events = events;
        this.shelf = AudioShelf.in(folder, AudioBudget.NONE);
    }

    /**
     * Begins a record in a new folder named after the session, readable by its owner alone. When the disk does not take
     * it, it begins in memory, as after a failure in mid-session: {@link #waiting} tells.
     *
     * @throws RecordUnavailableException when something that is no folder lies where the folder should be
     */
    public static SessionRecord create(Path sessions, Header header) throws RecordUnavailableException {
        Path folder = sessions.toAbsolutePath().resolve(header.session());
        for (Path above = folder; above != null; above = above.getParent()) {
            if (Files.exists(above) && !Files.isDirectory(above)) {
                throw new RecordUnavailableException("The session record cannot be kept in '" + sessions
                        + "': a file of that name is in the way. Name another folder with --sessions.");
            }
        }
        return begin(folder, new LineFile.ToBeMade(folder.resolve(FILE)), header);
    }

    static SessionRecord begin(Path folder, LineFile file, Header header) {
        String line = Chain.seal(RecordJson.header(header));
        SessionRecord record = new SessionRecord(folder, file, Chain.hashOfFresh(line), 0, 0);
        record.unwritten.add(bytes(line));
        record.flush();
        return record;
    }

    /**
     * A record that was left without an end, opened to go on.
     *
     * @param record goes on where the session stopped
     * @param session what was recorded, to bring the dialogue back to where it was
     * @param dropped the torn last line, if there was one: it was never acknowledged
     */
    public record Resumption(SessionRecord record, RecordedSession session, Optional<RecordFault> dropped) {}

    /**
     * Opens a session's folder again. A torn last line is dropped.
     *
     * @throws RecordUnavailableException when the record is damaged elsewhere, finished, or being written by another
     *     process
     */
    public static Resumption resume(Path session) throws RecordUnavailableException {
        LineFile file = null;
        try {
            file = LineFile.OnDisk.open(RecordedSession.fileOf(session));
            RecordedSession recorded = RecordedSession.read(session);
            Optional<RecordFault> fault = recorded.fault();
            if (fault.isPresent() && fault.get().kind() != RecordFault.Kind.TORN) {
                throw new RecordUnavailableException("The record '" + session + "' cannot be resumed: " + fault.get()
                        + ". It is left as it is; begin a new session.");
            }
            if (recorded.closed()) {
                throw new RecordUnavailableException(
                        "The session '" + session + "' was brought to its end: begin a new one.");
            }
            if (recorded.header().schema() != Header.SCHEMA) {
                throw new RecordUnavailableException("The session '" + session
                        + "' was begun by an earlier version: go on with that version, or begin a new one.");
            }
            if (recorded.entries().isEmpty()) {
                throw new RecordUnavailableException(
                        "The session '" + session + "' stopped before its first event: begin a new one.");
            }
            refuseAfterRollback(recorded);
            SessionRecord record = new SessionRecord(
                    recorded.folder(),
                    file,
                    recorded.hash(),
                    recorded.length(),
                    recorded.entries().size());
            file = null;
            return new Resumption(record, recorded, fault);
        } catch (NoSuchFileException e) {
            throw new RecordUnavailableException(
                    "There is no session record at '" + session + "': name a session's folder.", e);
        } catch (IOException e) {
            throw new RecordUnavailableException(
                    "The record '" + session + "' cannot be written on (" + reason(e)
                            + "): close the other session or make it writable.",
                    e);
        } finally {
            closeQuietly(file);
        }
    }

    /** A record that the folder's ledger knows to have been longer, or another, is not gone on with. */
    private static void refuseAfterRollback(RecordedSession recorded) throws RecordUnavailableException, IOException {
        Path sessions = recorded.folder().getParent();
        Path name = recorded.folder().getFileName();
        if (sessions == null || name == null) {
            return;
        }
        Optional<Anchor> known = FolderLedger.in(sessions).read().of(name.toString(), Anchor.Subject.RECORD);
        if (known.isPresent() && known.get().in(sessions) != Anchor.Finding.HOLDS) {
            throw new RecordUnavailableException("The record '" + recorded.folder() + "' cannot be resumed: it had "
                    + known.get().events() + " events when it was left, and does not hold them any more. It is left as"
                    + " it is; begin a new session.");
        }
    }

    private static void closeQuietly(@org.jspecify.annotations.Nullable LineFile file) {
        if (file != null) {
            try {
                file.close();
            } catch (IOException e) {
                // It is given up because of a fault that is reported; this one adds nothing.
                return;
            }
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    /** The folder of this session. */
    public Path folder() {
        return folder;
    }

    /** The hash of the last line: it stands for everything recorded so far. */
    public String hash() {
        return previousHash;
    }

    /** What the record is by now, on disk or still in memory. */
    public Anchor anchor() {
        return Anchor.ofRecord(String.valueOf(folder.getFileName()), events, previousHash);
    }

    /** Lets the sound of utterances be kept from now on, up to a budget. */
    public void keepAudio(AudioBudget budget) {
        shelf = AudioShelf.in(folder, budget);
    }

    /**
     * Keeps the sound of the event that will be appended next, and names it in that event's line.
     *
     * @param number the event's
     * @return why it was not kept; empty when it was
     */
    public Optional<String> keepAudio(int number, Samples sound) {
        try {
            kept = Optional.of(new Kept(number, shelf.keep(number, sound)));
            return Optional.empty();
        } catch (IOException e) {
            kept = Optional.empty();
            return Optional.of(reason(e));
        }
    }

    /**
     * Adds an entry and forces it to disk.
     *
     * @return why the entry is in memory only; empty when it is on disk
     */
    public Optional<String> append(Entry entry) {
        Entry complete = kept.filter(sound -> sound.number() == entry.number())
                .map(sound -> entry.with(sound.clip()))
                .orElse(entry);
        kept = Optional.empty();
        String line = Chain.seal(RecordJson.entry(complete, previousHash));
        previousHash = Chain.hashOfFresh(line);
        events++;
        unwritten.add(bytes(line));
        return flush();
    }

    /** Tries again to write what is in memory only; says why it cannot. */
    public Optional<String> flush() {
        try {
            while (!unwritten.isEmpty()) {
                write(unwritten.getFirst());
                unwritten.removeFirst();
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(reason(e));
        }
    }

    /** How many lines are in memory only. */
    public int waiting() {
        return unwritten.size();
    }

    /**
     * After how many bytes the file goes on with a torn line that could not be taken off; empty where it ends with a
     * whole one.
     */
    public OptionalLong torn() {
        return torn ? OptionalLong.of(whole) : OptionalLong.empty();
    }

    /**
     * Writes the lines that are in memory only to another place, so that they outlive the process. Put behind the lines
     * of {@link #FILE} they make the record whole; a line {@link #torn} there has to be taken off first.
     *
     * @throws IOException when that place fails too
     */
    public void rescue(Path elsewhere) throws IOException {
        Files.createFile(elsewhere, OwnerOnly.file(elsewhere));
        for (byte[] line : unwritten) {
            Files.write(elsewhere, line, java.nio.file.StandardOpenOption.APPEND);
        }
    }

    private void write(byte[] line) throws IOException {
        try {
            file.endWith(whole, line);
        } catch (IOException e) {
            cutTornTail(e);
            throw e;
        }
        torn = false;
        whole += line.length;
    }

    /** Takes off what a full disk took of a line, so that the lines rescued elsewhere fit behind those in the file. */
    private void cutTornTail(IOException trouble) {
        try {
            file.endWith(whole, new byte[0]);
            torn = false;
        } catch (IOException e) {
            trouble.addSuppressed(e);
            torn = true;
        }
    }

    private static byte[] bytes(String line) {
        return (line + "\n").getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        closeQuietly(file);
    }
}
