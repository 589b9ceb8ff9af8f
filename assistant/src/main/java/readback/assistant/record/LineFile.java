package readback.assistant.record;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The file that a record grows in. */
interface LineFile extends Closeable {

    /**
     * Makes the bytes the end of the file, from a position on; what lay behind that position is gone. Returns when they
     * are on disk.
     *
     * @throws IOException when that failed; some of the bytes may lie in the file then
     */
    void endWith(long position, byte[] bytes) throws IOException;

    /** A new file, alone in a new folder, that is made as soon as the disk takes it: at once, or at a later line. */
    final class ToBeMade implements LineFile {
        private final Path file;
        private @Nullable LineFile made;

        ToBeMade(Path file) {
            this.file = file;
        }

        @Override
        public void endWith(long position, byte[] bytes) throws IOException {
            if (made == null) {
                Path folder = Objects.requireNonNull(file.getParent(), "a record lies in a folder");
                Files.createDirectories(Objects.requireNonNull(folder.getParent(), "and that in another"));
                if (!Files.isDirectory(folder)) {
                    Files.createDirectory(folder, OwnerOnly.folder(folder));
                }
                made = OnDisk.create(file, OwnerOnly.file(folder));
            }
            made.endWith(position, bytes);
        }

        @Override
        public void close() throws IOException {
            if (made != null) {
                made.close();
            }
        }
    }

    /** A file on disk that no other process may write while this one has it. */
    final class OnDisk implements LineFile {
        private final FileChannel channel;

        private OnDisk(FileChannel channel) {
            this.channel = channel;
        }

        /** A new file. */
        static OnDisk create(Path file, FileAttribute<?>... attributes) throws IOException {
            return locked(FileChannel.open(
                    file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes));
        }

        /**
         * A file that is there.
         *
         * @throws IOException also when another process writes it
         */
        static OnDisk open(Path file) throws IOException {
            return locked(FileChannel.open(file, StandardOpenOption.WRITE));
        }

        private static OnDisk locked(FileChannel channel) throws IOException {
            @Nullable FileLock lock = null;
            try {
                lock = channel.tryLock();
            } catch (java.nio.channels.OverlappingFileLockException e) {
                throw new IOException("it is being written already", e);
            } finally {
                if (lock == null) {
                    channel.close();
                }
            }
            if (lock == null) {
                throw new IOException("another process is writing it");
            }
            return new OnDisk(channel);
        }

        @Override
        public void endWith(long position, byte[] bytes) throws IOException {
            channel.truncate(position);
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            long at = position;
            while (buffer.hasRemaining()) {
                at += channel.write(buffer, at);
            }
            channel.force(false);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
