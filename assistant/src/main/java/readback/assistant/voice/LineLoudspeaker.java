package readback.assistant.voice;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
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
import readback.assistant.sound.SoundDevices;

/**
 * A loudspeaker over a line of the Java platform. The line is opened when something is to be played and again after it
 * was lost. One thread plays; closing may come from another.
 */
public final class LineLoudspeaker implements Loudspeaker {

    /** Samples a second of the line. */
    public static final int RATE = 16000;

    private static final AudioFormat FORMAT = new AudioFormat(RATE, 16, 1, true, false);

    private static final DataLine.Info WANTED = new DataLine.Info(SourceDataLine.class, FORMAT);

    /** Bridges short stalls of the program; what is in it is thrown away when silence is wanted. */
    private static final int BUFFER_BYTES = RATE / 5 * 2;

    private static final int PIECE_BYTES = BUFFER_BYTES / 8;
    private static final Duration POLL = Duration.ofMillis(4);

    /**
     * So often it is looked whether the line took a piece before it counts as lost: three seconds where the machine has
     * time, and longer where it has none to look, because then the device gets none either. Devices that wake up take a
     * second or two.
     */
    private static final int LOOKS = 750;

    /**
     * The same for a line that took sound before, a second: after it ran dry, some take nothing ever again, and a fresh
     * line to the same device does.
     */
    private static final int LOOKS_AT_A_TAKING_LINE = 250;

    /** A way to the line. */
    @FunctionalInterface
    interface Lines {
        /** A line that is not open yet. */
        SourceDataLine find() throws LineUnavailableException;
    }

    private final Lines lines;
    private volatile @Nullable SourceDataLine line;
    /** Whether that line took sound since it was opened; the playing thread's. */
    private boolean took;

    private volatile ExecutorService thread = lineThread("loudspeaker");
    private volatile ExecutorService hushing = lineThread("loudspeaker-hush");
    private volatile String name = "default loudspeaker";

    /**
     * A loudspeaker that is not opened yet.
     *
     * @param part its name or text that its name contains, whatever the case; empty for the system's own choice
     */
    public LineLoudspeaker(Optional<String> part) {
        this.lines = () -> find(part);
    }

    LineLoudspeaker(Lines lines) {
        this.lines = lines;
    }

    private static ExecutorService lineThread(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException {
        byte[] bytes = bytes(sound.at(RATE));
        try {
            SourceDataLine open = started();
            for (int at = 0; at < bytes.length && !stop.getAsBoolean(); at += PIECE_BYTES) {
                open = taking(open, Arrays.copyOfRange(bytes, at, Math.min(at + PIECE_BYTES, bytes.length)), stop);
            }
            long drained = System.nanoTime() + Math.round(BUFFER_BYTES / 2 * 1e9 / RATE);
            while (!stop.getAsBoolean() && System.nanoTime() < drained) {
                LockSupport.parkNanos(POLL.toNanos());
            }
            if (stop.getAsBoolean()) {
                silence(open);
            }
        } catch (LoudspeakerLostException e) {
            abandon();
            throw e;
        }
    }

    /**
     * The line that took a piece: this one, or a fresh one where this one took sound before and takes none any more.
     */
    private SourceDataLine taking(SourceDataLine open, byte[] piece, BooleanSupplier stop)
            throws LoudspeakerLostException {
        SourceDataLine ready = open;
        if (took) {
            if (takes(open, piece, stop, LOOKS_AT_A_TAKING_LINE)) {
                return open;
            }
            abandon();
            ready = started();
        }
        if (!takes(ready, piece, stop, LOOKS)) {
            throw lost();
        }
        took = true;
        return ready;
    }

    private boolean takes(SourceDataLine open, byte[] piece, BooleanSupplier stop, int looks)
            throws LoudspeakerLostException {
        return inTime(thread.submit(() -> open.write(piece, 0, piece.length)), stop, looks);
    }

    /**
     * Silences the line alongside a write that may still go on: devices that take sound in large pieces let it last for
     * a quarter of a second. Then waits for the write, and throws away what it brought.
     */
    private void silence(SourceDataLine open) throws LoudspeakerLostException {
        patiently(
                hushing.submit(() -> {
                    open.stop();
                    open.flush();
                }),
                () -> false);
        patiently(thread.submit(open::flush), () -> false);
    }

    private void patiently(Future<?> done, BooleanSupplier stop) throws LoudspeakerLostException {
        if (!inTime(done, stop, LOOKS)) {
            throw lost();
        }
    }

    /**
     * Waits for something to be done with the line, or for {@code stop}, so many looks long; false where neither came.
     * Everything is done on threads that can be given up, because a device that is gone may block for ever, and asking
     * first how much it takes makes some of them run dry.
     */
    private boolean inTime(Future<?> done, BooleanSupplier stop, int most) throws LoudspeakerLostException {
        int looks = 0;
        while (!over(done) && !stop.getAsBoolean()) {
            looks++;
            if (looks > most) {
                return false;
            }
        }
        return true;
    }

    private LoudspeakerLostException lost() {
        return new LoudspeakerLostException("The loudspeaker '" + name + "' takes no sound any more.");
    }

    private boolean over(Future<?> done) throws LoudspeakerLostException {
        try {
            done.get(POLL.toMillis(), TimeUnit.MILLISECONDS);
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (ExecutionException e) {
            throw new LoudspeakerLostException("The loudspeaker '" + name + "' takes no sound any more.", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new LoudspeakerLostException("Playing was interrupted.", e);
        }
    }

    private SourceDataLine started() throws LoudspeakerLostException {
        SourceDataLine open = opened();
        open.start();
        return open;
    }

    private SourceDataLine opened() throws LoudspeakerLostException {
        SourceDataLine known = line;
        if (known != null && known.isOpen()) {
            return known;
        }
        try {
            SourceDataLine fresh = lines.find();
            fresh.open(FORMAT, BUFFER_BYTES);
            line = fresh;
            took = false;
            return fresh;
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            throw new LoudspeakerLostException("There is no loudspeaker that can be used (" + e.getMessage() + ").", e);
        }
    }

    /** The names of the devices that can play, as they are shown and chosen. */
    public static List<String> names() {
        return SoundDevices.with(List.of(WANTED)).stream()
                .map(Mixer.Info::getName)
                .toList();
    }

    private SourceDataLine find(Optional<String> part) throws LineUnavailableException {
        Mixer.Info info = SoundDevices.meant(SoundDevices.with(List.of(WANTED)), part)
                .orElseThrow(() -> new LineUnavailableException(
                        part.isEmpty() ? "this machine has none" : "none is called '" + part.get() + "'"));
        name = info.getName();
        return (SourceDataLine) AudioSystem.getMixer(info).getLine(WANTED);
    }

    private synchronized void abandon() {
        SourceDataLine old = line;
        line = null;
        if (old != null) {
            // Closing a line of a server that is gone can hang for ever, so nobody waits for it. It is closed beside a
            // write that never ends, which closing ends.
            hushing.execute(old::close);
            thread.shutdown();
            thread = lineThread("loudspeaker");
            hushing.shutdown();
            hushing = lineThread("loudspeaker-hush");
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
