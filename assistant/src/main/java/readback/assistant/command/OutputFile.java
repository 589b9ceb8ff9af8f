package readback.assistant.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import readback.assistant.archive.Archive;
import readback.assistant.record.FolderLedger;
import readback.assistant.record.RemarkFile;
import readback.assistant.record.SessionRecord;

/**
 * A file that a command writes for its user. It takes the place of no file of a session, whatever is asked, and of no
 * other file unless that was asked for. It appears whole or not at all.
 */
final class OutputFile {

    /** How each line of a record and of its remarks begins. */
    private static final byte[] RECORD = "{\"type\":\"".getBytes(StandardCharsets.US_ASCII);

    private static final Set<String> KEPT = Set.of(SessionRecord.FILE, RemarkFile.FILE, FolderLedger.FILE);

    private final Path file;
    /** A pipe or a device takes what it is given and has nothing to lose. */
    private final boolean takesAnything;

    private OutputFile(Path file, boolean takesAnything) {
        this.file = file;
        this.takesAnything = takesAnything;
    }

    /** Writes what is to be in the file, and has a result of its own. */
    interface Content<T> {
        T writeTo(BufferedWriter out) throws IOException;
    }

    /** Writes a file that is not there yet, and has a result of its own. */
    interface Making<T> {
        T at(Path part) throws IOException;
    }

    /**
     * The file, before anything is worked out for it.
     *
     * @param over whether a file that is there already may be written over
     * @throws CommandFailure when it must not be written
     */
    static OutputFile at(Path file, boolean over) {
        Path whole = file.toAbsolutePath().normalize();
        Path name = whole.getFileName();
        if (name == null || Files.isDirectory(whole)) {
            throw new CommandFailure("'" + file + "' is a folder: name a file.");
        }
        if (Files.exists(whole) && !Files.isRegularFile(whole)) {
            return new OutputFile(file, true);
        }
        if (ofSession(whole, name.toString())) {
            throw new CommandFailure("'" + file
                    + "' belongs to a recorded session, which is never written over: name a file elsewhere.");
        }
        if (Files.exists(whole) && !over) {
            throw new CommandFailure("'" + file + "' is there already: name another file, or add --force.");
        }
        return new OutputFile(file, false);
    }

    private static boolean ofSession(Path file, String name) {
        if (KEPT.contains(name) || name.startsWith(Archive.INDEX)) {
            return true;
        }
        for (Path folder = file.getParent(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve(SessionRecord.FILE))) {
                return true;
            }
        }
        return beginsLikeRecord(file);
    }

    private static boolean beginsLikeRecord(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return Arrays.equals(in.readNBytes(RECORD.length), RECORD);
        } catch (IOException e) {
            // what cannot be read may be anything
            return true;
        }
    }

    @Override
    public String toString() {
        return file.toString();
    }

    /** Writes a text. */
    void write(String text) {
        write((BufferedWriter out) -> {
            out.write(text);
            return text;
        });
    }

    /**
     * Writes the content; what was there before stays until all of it is written.
     *
     * @throws CommandFailure when the disk does not take it; nothing of it is left then
     */
    <T> T write(Content<T> content) {
        try {
            if (takesAnything) {
                try (BufferedWriter out =
                        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.WRITE)) {
                    return content.writeTo(out);
                }
            }
            return replace(part -> {
                try (BufferedWriter out =
                        Files.newBufferedWriter(part, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
                    return content.writeTo(out);
                }
            });
        } catch (UncheckedIOException | IOException e) {
            throw unwritable(e);
        }
    }

    /**
     * Writes what another program puts into a file; what was there before stays until all of it is written.
     *
     * @throws CommandFailure when it could not be written; nothing of it is left then
     */
    <T> T make(Making<T> making) {
        try {
            if (takesAnything) {
                throw new IOException("it is no file");
            }
            return replace(making);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private CommandFailure unwritable(Exception e) {
        return new CommandFailure("'" + file + "' cannot be written (" + e.getMessage()
                + "): name a file in a folder that you may write to.");
    }

    private <T> T replace(Making<T> making) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            T result = making.at(part);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            return result;
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
