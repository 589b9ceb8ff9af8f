package readback.assistant.microphone;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

/**
 * Reads a microphone on a thread of its own, for as long as it is there, and takes it up again by itself when it comes
 * back. Nothing that the listener does may take long: it is called on the reading thread.
 */
public final class MicrophoneReader implements AutoCloseable {

    /** Gets what the microphone gives. Called on the reading thread. */
    public interface Listener {
        /** Sound at {@link Microphone#RATE}, just recorded. */
        void sound(short[] chunk);

        /** The microphone of this name works, for the first time or again. */
        void found(String device);

        /** The microphone does not work; {@code why} is one sentence. Called once until it is found. */
        void lost(String why);

        /** Sound was lost because the machine was too busy; the count since it was found. */
        void overrun(long count);
    }

    private static final Duration RETRY = Duration.ofMillis(500);

    private final MicrophoneFinder.Socket socket;
    private final Listener listener;
    private final Thread thread;
    private volatile boolean stopped;

    public MicrophoneReader(MicrophoneFinder.Socket socket, Listener listener) {
        this.socket = socket;
        this.listener = listener;
        this.thread = new Thread(this::run, "microphone");
        this.thread.setDaemon(true);
    }

    /** Begins to read. */
    public void start() {
        thread.start();
    }

    private void run() {
        boolean complained = false;
        while (!stopped) {
            try (Microphone microphone = socket.open()) {
                listener.found(microphone.name());
                complained = false;
                read(microphone);
            } catch (MicrophoneLostException e) {
                if (!complained && !stopped) {
                    complained = true;
                    listener.lost(String.valueOf(e.getMessage()));
                }
                LockSupport.parkNanos(RETRY.toNanos());
            }
        }
    }

    private void read(Microphone microphone) throws MicrophoneLostException {
        long overruns = 0;
        while (!stopped) {
            listener.sound(microphone.read());
            if (microphone.overruns() != overruns) {
                overruns = microphone.overruns();
                listener.overrun(overruns);
            }
        }
    }

    @Override
    public void close() {
        stopped = true;
        thread.interrupt();
    }
}
