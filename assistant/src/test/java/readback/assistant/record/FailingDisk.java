package readback.assistant.record;

import java.io.IOException;
import java.util.Arrays;

/** A file in memory on a disk that has room for so many bytes and no more, as {@link LineFile} contracts. */
final class FailingDisk implements LineFile {

    private byte[] content = new byte[0];
    private int room;
    private boolean cuts = true;

    FailingDisk(int room) {
        this.room = room;
    }

    void hasRoomFor(int bytes) {
        room = bytes;
    }

    /** From now on nothing can be taken off without something else in its place. */
    void refuseCuts() {
        cuts = false;
    }

    byte[] content() {
        return content.clone();
    }

    @Override
    public void endWith(long position, byte[] bytes) throws IOException {
        if (bytes.length == 0 && !cuts) {
            throw new IOException("Input/output error");
        }
        int fits = Math.min(bytes.length, Math.max(0, room - (int) position));
        content = Arrays.copyOf(Arrays.copyOf(content, (int) position), (int) position + fits);
        System.arraycopy(bytes, 0, content, (int) position, fits);
        if (fits < bytes.length) {
            throw new IOException("No space left on device");
        }
    }

    @Override
    public void close() {}
}
