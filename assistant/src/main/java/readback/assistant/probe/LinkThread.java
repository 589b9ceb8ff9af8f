package readback.assistant.probe;

import java.io.IOException;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** Keeps a link going on a thread of its own: opens it, uses it, and after a failure tries again. */
final class LinkThread implements AutoCloseable {

    /** Between two tries. */
    private static final Duration PAUSE = Duration.ofSeconds(2);

    /** How the connection is. */
    enum Standing {
        /** The first try is under way. */
        BEGINNING,
        OPEN,
        LOST
    }

    private final Link link;
    private final Thread thread;
    private volatile Standing standing = Standing.BEGINNING;
    private volatile String trouble = "";
    private volatile boolean stopped;
    private final @Nullable Duration pause;

    /** @param pause between two tries; null where there is no second try, because what ended never begins again */
    private LinkThread(Link link, String name, @Nullable Duration pause) {
        this.link = link;
        this.pause = pause;
        this.thread = new Thread(this::run, "probe-" + name);
        thread.setDaemon(true);
    }

    /** A link that is opened again whenever it was lost. */
    static LinkThread lasting(Link link, String name) {
        return new LinkThread(link, name, PAUSE);
    }

    /** A link that ends when what it reads ends. */
    static LinkThread once(Link link, String name) {
        return new LinkThread(link, name, null);
    }

    void start() {
        thread.start();
    }

    Standing standing() {
        return standing;
    }

    /** Why the connection was lost last; empty while it was not. */
    String trouble() {
        return trouble;
    }

    private void run() {
        while (!stopped) {
            try {
                link.open();
                standing = Standing.OPEN;
                while (!stopped) {
                    link.next();
                }
            } catch (IOException | RuntimeException e) {
                // libraries below answer some broken frames with exceptions of their own
                trouble = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            } finally {
                link.close();
            }
            standing = Standing.LOST;
            if (pause == null || !rested(pause)) {
                return;
            }
        }
    }

    private static boolean rested(Duration pause) {
        try {
            Thread.sleep(pause.toMillis());
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }

    @Override
    public void close() {
        stopped = true;
        thread.interrupt();
        link.close();
    }
}
