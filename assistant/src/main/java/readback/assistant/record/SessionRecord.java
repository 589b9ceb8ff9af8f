package readback.assistant.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;

/**
 * The growing record of one session. Owned by the thread that runs the session.
 *
 * <p>{@link #append} returns only when the line is on disk. When the disk fails the lines are kept in memory, in order,
 * and written as soon as it works again: nothing acknowledged is lost while the process lives.
 */
public final class SessionRecord implements AutoCloseable {

    /** Name of the file in a session's folder. */
    public static final String FILE = "session.jsonl";

    private final Path folder;
    private final FileChannel channel;
    private final Deque<String> unwritten = new ArrayDeque<>();
    private String previousHash;
    private long whole;

    private SessionRecord(Path folder, FileChannel channel, String headerHash, long whole) {
        this.folder = folder;
        this.channel = channel;
        this.previousHash = headerHash;
        this.whole = whole;
    }

    /**
     * Begins a record in a new folder named after the session, readable by its owner alone.
     *
     * @throws RecordUnavailableException when the folder cannot be made or written
     */
    public static SessionRecord create(Path sessions, Header header) throws RecordUnavailableException {
        Path folder = sessions.resolve(header.session());
        try {
            Files.createDirectories(sessions);
            Files.createDirectory(folder, ownerOnly(folder, "rwx------"));
            Path file = folder.resolve(FILE);
            FileChannel channel = FileChannel.open(
                    file,
                    Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                    ownerOnly(folder, "rw-------"));
            String line = Chain.seal(Lines.header(header));
            SessionRecord record = new SessionRecord(folder, channel, hash(line), 0);
            record.write(line);
            return record;
        } catch (IOException e) {
            throw new RecordUnavailableException(
                    "The session record cannot be kept in '" + sessions + "' (" + reason(e)
                            + "): make that folder writable or name another with --sessions.",
                    e);
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path where, String permissions) {
        boolean posix = where.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof NotDirectoryException || e instanceof FileAlreadyExistsException) {
            return "a file of that name is in the way";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    /** The folder of this session. */
    public Path folder() {
        return folder;
    }

    /**
     * Adds an entry and forces it to disk.
     *
     * @return why the entry is in memory only; empty when it is on disk
     */
    public Optional<String> append(Entry entry) {
        String line = Chain.seal(Lines.entry(entry, previousHash));
        previousHash = hash(line);
        unwritten.add(line);
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

    private void write(String line) throws IOException {
        // A line that was cut off by a full disk is written over from its start.
        channel.truncate(whole);
        ByteBuffer bytes = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8));
        int length = bytes.remaining();
        long position = whole;
        while (bytes.hasRemaining()) {
            position += channel.write(bytes, position);
        }
        channel.force(false);
        whole += length;
    }

    private static String hash(String sealed) {
        return Chain.hashOf(sealed).orElseThrow(() -> new IllegalStateException("a fresh seal is whole"));
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            // Every line was forced when it was appended; nothing hangs on this close.
            unwritten.clear();
        }
    }
}
