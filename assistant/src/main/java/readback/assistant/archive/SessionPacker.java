package readback.assistant.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.IntConsumer;
import readback.assistant.record.ChainedRecord;
import readback.assistant.record.RecordedSession;

/**
 * Puts records into bundles: {@link Bundle}. What was packed before is not packed again; a record that grew since, or
 * is another one under the same name, is. A bundle is named by its content, so that the same records give the same
 * bundles, and appears whole, after its index. One thread.
 */
public final class SessionPacker {

    /** Beyond so many bytes a bundle is closed before it has all its sessions; an engine holds one in memory. */
    private static final int LARGEST = 64_000_000;

    /** Digits of the digest in a bundle's name. */
    private static final int NAME_BYTES = 12;

    private final Path out;
    private final int per;
    private final Set<String> packed = new HashSet<>();
    private final List<String> troubles = new ArrayList<>();
    private final ByteArrayOutputStream bundle = new ByteArrayOutputStream();
    private final List<BundledSession> index = new ArrayList<>();
    private int bundles;
    private int sessions;
    private int before;

    /**
     * What was done.
     *
     * @param bundles written
     * @param sessions in them
     * @param before records that bundles held already
     * @param troubles records that could not be packed, with the reason
     */
    public record Packed(int bundles, int sessions, int before, List<String> troubles) {
        public Packed {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * A packer into a folder, which is made where it is missing.
     *
     * @param per sessions a bundle, 1 or more
     * @throws IOException when the folder cannot be made or read
     */
    public SessionPacker(Path out, int per) throws IOException {
        if (per < 1) {
            throw new IllegalArgumentException("a bundle holds a session at least, not " + per);
        }
        this.out = Files.createDirectories(out);
        this.per = per;
        try (DirectoryStream<Path> indexes = Files.newDirectoryStream(out, "*" + Bundle.ENDING + Bundle.INDEX)) {
            for (Path each : indexes) {
                know(each);
            }
        }
    }

    /** What a bundle holds is not packed again; one whose index cannot be read may hold anything. */
    private void know(Path indexFile) throws IOException {
        String name = String.valueOf(indexFile.getFileName());
        Path file = indexFile.resolveSibling(name.substring(0, name.length() - Bundle.INDEX.length()));
        if (!Files.exists(file)) {
            return;
        }
        try {
            BundledSession.all(Files.readString(indexFile))
                    .forEach(each -> packed.add(each.session() + " " + each.sha256()));
        } catch (IOException e) {
            troubles.add(file + ": " + e.getMessage() + "; its sessions are packed once more.");
        }
    }

    /**
     * Packs every record of folders of sessions, whether or not it holds.
     *
     * @param progress gets the number of records looked at, now and then
     * @throws IOException when a folder cannot be listed, or a bundle cannot be written; bundles before it stay
     */
    public Packed pack(List<Path> folders, IntConsumer progress) throws IOException {
        int looked = 0;
        for (Path folder : folders) {
            for (Path session : Archive.in(folder).folders()) {
                addFrom(session);
                looked++;
                if (looked % per == 0) {
                    progress.accept(looked);
                }
            }
        }
        close();
        return new Packed(bundles, sessions, before, troubles);
    }

    private void addFrom(Path session) throws IOException {
        byte[] record;
        try {
            record = RecordedSession.bytes(session);
        } catch (IOException e) {
            troubles.add(session + ": cannot be read: " + e.getMessage() + ".");
            return;
        }
        add(record, session.toString());
    }

    /**
     * Adds a record.
     *
     * @param record its bytes
     * @param from where they came from, for the reader
     * @throws IOException when a bundle that it fills cannot be written
     */
    public void add(byte[] record, String from) throws IOException {
        if (!ChainedRecord.headerAt(record, 0)) {
            troubles.add(from + ": is no session record: it does not begin with a header.");
            return;
        }
        String name = Bundle.nameOf(record).orElse("");
        String digest = Bundle.sha256(record);
        if (!packed.add(name + " " + digest)) {
            before++;
            return;
        }
        if (bundle.size() > 0 && bundle.size() + record.length > LARGEST) {
            close();
        }
        ChainedRecord chain = ChainedRecord.of(record);
        index.add(new BundledSession(
                name, bundle.size(), record.length, chain.hashes().size(), chain.head(), digest));
        bundle.write(record);
        if (record[record.length - 1] != '\n') {
            bundle.write('\n');
        }
        sessions++;
        if (index.size() == per) {
            close();
        }
    }

    /** Writes what is not written yet. */
    public void close() throws IOException {
        if (index.isEmpty()) {
            return;
        }
        byte[] bytes = bundle.toByteArray();
        StringBuilder lines = new StringBuilder();
        index.forEach(each -> lines.append(each.line()).append('\n'));
        String name = "sessions-" + Bundle.sha256(bytes).substring(0, 2 * NAME_BYTES) + Bundle.ENDING;
        // the index first: whoever sees a bundle sees its index
        write(lines.toString().getBytes(StandardCharsets.UTF_8), out.resolve(name + Bundle.INDEX));
        write(bytes, out.resolve(name));
        bundles++;
        bundle.reset();
        index.clear();
    }

    private void write(byte[] bytes, Path file) throws IOException {
        Path part = out.resolve("." + UUID.randomUUID() + ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
