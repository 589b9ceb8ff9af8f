package readback.assistant.voice;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;
import readback.assistant.sound.Samples;

/**
 * A loudspeaker over a line of the Java platform. The line is opened when something is to be played and again after it
 * was lost. Nothing is written that the line cannot take at once, because a line whose device is gone may block for ever.
 */
public final class LineLoudspeaker implements Loudspeaker {

    /** Samples a second of the line. */
    public static final int RATE = 16000;

    private static final AudioFormat FORMAT = new AudioFormat(RATE, 16, 1, true, false);
    /** A tenth of a second can still be heard after silencing at the most. */
    private static final int BUFFER_BYTES = RATE / 10 * 2;

    private static final int PIECE_BYTES = BUFFER_BYTES / 4;
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final Duration POLL = Duration.ofMillis(4);

    private final Optional<String> part;
    private volatile @Nullable SourceDataLine line;
    private volatile String name = "default loudspeaker";

    /**
     * A loudspeaker that is not opened yet.
     *
     * @param part text that its name contains, whatever the case; empty for the system's own choice
     */
    public LineLoudspeaker(Optional<String> part) {
        this.part = part;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException {
        SourceDataLine open = opened();
        byte[] bytes = bytes(sound.at(RATE));
        try {
            open.start();
            for (int at = 0; at < bytes.length && !stop.getAsBoolean(); at += PIECE_BYTES) {
                int length = Math.min(PIECE_BYTES, bytes.length - at);
                waitUntilFree(open, length, stop);
                if (!stop.getAsBoolean()) {
                    open.write(bytes, at, length);
                }
            }
            waitUntilFree(open, open.getBufferSize(), stop);
            if (stop.getAsBoolean()) {
                silence(open);
            }
        } catch (LoudspeakerLostException e) {
            abandon();
            throw e;
        }
    }

    private void waitUntilFree(SourceDataLine open, int bytes, BooleanSupplier stop) throws LoudspeakerLostException {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        int before = open.available();
        int free = before;
        while (free < bytes && !stop.getAsBoolean()) {
            if (free > before) {
                before = free;
                deadline = System.nanoTime() + PATIENCE.toNanos();
            }
            if (System.nanoTime() > deadline || !open.isOpen()) {
                throw new LoudspeakerLostException("The loudspeaker '" + name + "' takes no sound any more.");
            }
            LockSupport.parkNanos(POLL.toNanos());
            free = open.available();
        }
    }

    private static void silence(SourceDataLine open) {
        open.stop();
        open.flush();
    }

    private SourceDataLine opened() throws LoudspeakerLostException {
        SourceDataLine known = line;
        if (known != null && known.isOpen()) {
            return known;
        }
        try {
            SourceDataLine fresh = find();
            fresh.open(FORMAT, BUFFER_BYTES);
            line = fresh;
            return fresh;
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            throw new LoudspeakerLostException(
                    "There is no loudspeaker that can be used (" + e.getMessage() + ").", e);
        }
    }

    private SourceDataLine find() throws LineUnavailableException {
        DataLine.Info wanted = new DataLine.Info(SourceDataLine.class, FORMAT);
        for (Mixer.Info info : AudioSystem.getMixerInfo()) {
            boolean named = part.isEmpty()
                    || info.getName()
                            .toLowerCase(Locale.ROOT)
                            .contains(part.get().toLowerCase(Locale.ROOT));
            if (named && AudioSystem.getMixer(info).isLineSupported(wanted)) {
                name = info.getName();
                return (SourceDataLine) AudioSystem.getMixer(info).getLine(wanted);
            }
        }
        throw new LineUnavailableException(
                part.isEmpty() ? "this machine has none" : "none is called '" + part.get() + "'");
    }

    private void abandon() {
        SourceDataLine old = line;
        line = null;
        if (old != null) {
            // Closing a line of a server that is gone can hang for ever, so nobody waits for it.
            Thread closing = new Thread(old::close, "loudspeaker-close");
            closing.setDaemon(true);
            closing.start();
        }
    }

    private static byte[] bytes(Samples sound) {
        short[] pcm = sound.pcm();
        byte[] bytes = new byte[2 * pcm.length];
        for (int i = 0; i < pcm.length; i++) {
            bytes[2 * i] = (byte) pcm[i];
            bytes[2 * i + 1] = (byte) (pcm[i] >> 8);
        }
        return bytes;
    }

    @Override
    public void close() {
        abandon();
    }
}
