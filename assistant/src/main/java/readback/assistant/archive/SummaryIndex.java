package readback.assistant.archive;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.zip.CRC32C;
import org.jspecify.annotations.Nullable;

/**
 * Summaries kept beside the sessions, so that a record is read again only when its size or its time of change differ.
 * Sorted by folder name, read and rewritten in one pass. It only saves time: it can be deleted, and nothing is believed
 * because of it that the records do not say. One thread.
 */
final class SummaryIndex implements Closeable {

    /** Name of the file in the folder of sessions. */
    static final String FILE = ".readback-index";

    private static final String FORM = "readback-index 4";
    private static final int SIZE = 1;
    private static final int TIME = 2;
    private static final int SEAL = 3;
    private static final int SUMMARY = 4;
    private static final int PARTS = 5;

    private final Path folder;
    private final @Nullable BufferedReader old;
    private final @Nullable BufferedWriter next;
    private final @Nullable Path nextFile;
    private String @Nullable [] upcoming;
    private boolean changed;

    private SummaryIndex(
            Path folder, @Nullable BufferedReader old, @Nullable BufferedWriter next, @Nullable Path nextFile)
            throws IOException {
        this.folder = folder;
        this.old = old;
        this.next = next;
        this.nextFile = nextFile;
        advance();
    }

    /** The index of a folder; without one, or in a folder that cannot be written, everything is read anew. */
    static SummaryIndex in(Path folder) {
        BufferedReader old = reader(folder.resolve(FILE));
        try {
            Path file = Files.createTempFile(folder, FILE, ".new");
            BufferedWriter next = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
            next.write(FORM + "\n");
            return new SummaryIndex(folder, old, next, file);
        } catch (IOException e) {
            try {
                return new SummaryIndex(folder, old, null, null);
            } catch (IOException again) {
                throw new java.io.UncheckedIOException("the index of sessions cannot be read", again);
            }
        }
    }

    private static @Nullable BufferedReader reader(Path file) {
        if (!Files.isRegularFile(file)) {
            return null;
        }
        try {
            BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
            if (FORM.equals(reader.readLine())) {
                return reader;
            }
            reader.close();
            return null;
        } catch (IOException e) {
            return null;
        }
    }

    private void advance() throws IOException {
        String line = old == null ? null : old.readLine();
        upcoming = line == null ? null : line.split("\t", PARTS);
        if (upcoming != null && upcoming.length < PARTS) {
            upcoming = null;
        }
    }

    /**
     * The summary of a folder as it is on disk now, if the index has it and is to be believed. Folders must come sorted
     * by name.
     *
     * @param believed false where every record is read anew; what the index has is then forgotten
     */
    Optional<Summary> find(String name, BasicFileAttributes attributes, boolean believed) throws IOException {
        while (upcoming != null && upcoming[0].compareTo(name) < 0) {
            changed = true;
            advance();
        }
        if (upcoming == null || !upcoming[0].equals(name)) {
            return Optional.empty();
        }
        String[] line = upcoming;
        advance();
        boolean same = line[SIZE].equals(String.valueOf(attributes.size()))
                && line[TIME].equals(time(attributes))
                && line[SEAL].equals(seal(name, line[SIZE], line[TIME], line[SUMMARY]));
        if (!same || !believed) {
            return Optional.empty();
        }
        try {
            Summary summary = SummaryLine.read(line[SUMMARY]);
            write(String.join("\t", line));
            return Optional.of(summary);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Keeps a summary that was read from a record. */
    void keep(String name, BasicFileAttributes attributes, Summary summary) throws IOException {
        changed = true;
        boolean writable = name.chars().noneMatch(Character::isISOControl);
        if (writable) {
            String size = String.valueOf(attributes.size());
            String time = time(attributes);
            String line = SummaryLine.of(summary);
            write(String.join("\t", name, size, time, seal(name, size, time, line), line));
        }
    }

    private void write(String line) throws IOException {
        if (next != null) {
            next.write(line);
            next.write('\n');
        }
    }

    /** A line that was damaged or edited does not fit it, and the record is read again. */
    private static String seal(String... parts) {
        CRC32C sum = new CRC32C();
        sum.update(String.join("\t", parts).getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }

    private static String time(BasicFileAttributes attributes) {
        return String.valueOf(attributes.lastModifiedTime().to(TimeUnit.MICROSECONDS));
    }

    /** Puts the new index in the place of the old one. */
    @Override
    public void close() throws IOException {
        boolean worth = changed || upcoming != null;
        if (old != null) {
            old.close();
        }
        if (next != null && nextFile != null) {
            next.close();
            if (worth) {
                Files.move(
                        nextFile,
                        folder.resolve(FILE),
                        StandardCopyOption.REPLACE_EXISTING,
                        StandardCopyOption.ATOMIC_MOVE);
            } else {
                Files.delete(nextFile);
            }
        }
    }
}
