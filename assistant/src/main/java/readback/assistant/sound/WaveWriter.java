package readback.assistant.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Writes a wave file (PCM, 16 bits, mono) that grows. The file is whole after every {@link #append}: a program that is
 * killed leaves what was spoken so far in a playable form. One thread at a time.
 */
public final class WaveWriter implements AutoCloseable {
    private static final int HEADER_BYTES = 44;

    private final FileChannel channel;
    private final int rate;
    private long written;

    private WaveWriter(FileChannel channel, int rate) {
        this.channel = channel;
        this.rate = rate;
    }

    /**
     * A writer of a new, still silent file; one that is there already is replaced.
     *
     * @param rate samples a second of the file
     * @throws IOException when the file cannot be made
     */
    public static WaveWriter create(Path file, int rate) throws IOException {
        FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);
        WaveWriter writer = new WaveWriter(channel, rate);
        writer.header();
        return writer;
    }

    /** Writes all of {@code sound} into {@code file}. */
    public static void write(Path file, Samples sound) throws IOException {
        try (WaveWriter writer = create(file, sound.rate())) {
            writer.append(sound);
        }
    }

    /** Adds the sound at the end, resampled where its rate is another. */
    public void append(Samples sound) throws IOException {
        short[] pcm = sound.at(rate).pcm();
        ByteBuffer bytes = ByteBuffer.allocate(2 * pcm.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asShortBuffer().put(pcm);
        long at = HEADER_BYTES + written;
        while (bytes.hasRemaining()) {
            at += channel.write(bytes, at);
        }
        written += 2L * pcm.length;
        header();
    }

    /** Seconds of sound written so far. */
    public double seconds() {
        return written / 2.0 / rate;
    }

    private void header() throws IOException {
        ByteBuffer header = ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(ascii("RIFF")).putInt((int) (written + HEADER_BYTES - 8)).put(ascii("WAVE"));
        header.put(ascii("fmt ")).putInt(16);
        header.putShort((short) 1).putShort((short) 1).putInt(rate).putInt(2 * rate);
        header.putShort((short) 2).putShort((short) 16);
        header.put(ascii("data")).putInt((int) written).flip();
        long at = 0;
        while (header.hasRemaining()) {
            at += channel.write(header, at);
        }
    }

    private static byte[] ascii(String name) {
        return name.getBytes(StandardCharsets.US_ASCII);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
