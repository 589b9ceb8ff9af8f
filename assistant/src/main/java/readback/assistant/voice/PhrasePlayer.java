package readback.assistant.voice;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import readback.assistant.sound.Samples;

/**
 * Speaks live: takes phrases from a cache and plays them in order, on a thread of its own, so that the next phrase is
 * made while one is heard. Any thread may call; calls never wait.
 */
public final class PhrasePlayer implements AutoCloseable {

    /** Learns what happens. Called on the playing thread; must not take long. */
    public interface Listener {
        /** Sound begins now. */
        void started();

        /** Everything that was asked for was said or silenced. */
        void ended();

        /** There is no voice or no loudspeaker for now; one sentence says why. Called once until it works again. */
        void failed(String why);
    }

    /** Between two phrases, so that they do not run together. */
    private static final Samples BREATH = Samples.silence(0.2, LineLoudspeaker.RATE);

    /** For this long the sound rings on in the room, where a microphone hears it. */
    private static final Duration ECHO = Duration.ofMillis(250);

    /** A phrase of one saying. */
    private record Phrase(long saying, String text, Future<Samples> sound) {}

    private final PhraseCache cache;
    private final Loudspeaker loudspeaker;
    private final Listener listener;
    private final Thread playing = new Thread(this::play, "voice-playing");
    private final BlockingQueue<Phrase> phrases = new LinkedBlockingQueue<>();
    /** Those and the one that is being said; guarded by this. */
    private final Deque<Phrase> unsaid = new ArrayDeque<>();

    private volatile SayingNow now = SayingNow.NOTHING;
    private volatile long wanted;
    private volatile int waiting;
    private volatile long quietSince;
    private volatile boolean failed;
    private volatile boolean stopped;

    /** A player that is silent; it owns voice and loudspeaker from now on. */
    public PhrasePlayer(Voice voice, Loudspeaker loudspeaker, Listener listener) {
        this.cache = new PhraseCache(voice);
        this.loudspeaker = loudspeaker;
        this.listener = listener;
        this.quietSince = System.nanoTime() - ECHO.toNanos();
        playing.setDaemon(true);
        playing.start();
    }

    /** Engine and voice. */
    public String name() {
        return cache.name();
    }

    /**
     * Says these, one after the other, after what is being said; nothing once it is closed. A phrase that is still
     * waiting to be said is not repeated.
     */
    public synchronized void say(List<String> texts) {
        if (stopped) {
            return;
        }
        List<String> due = texts.stream()
                .filter(text -> !text.isBlank() && !waits(text))
                .distinct()
                .toList();
        List<Future<Samples>> sounds = cache.sounds(due);
        for (int i = 0; i < due.size(); i++) {
            Phrase phrase = new Phrase(wanted, due.get(i), sounds.get(i));
            unsaid.add(phrase);
            phrases.add(phrase);
        }
        waiting = unsaid.size();
    }

    private boolean waits(String text) {
        return phrases.stream()
                .anyMatch(phrase -> phrase.saying() == wanted && phrase.text().equals(text));
    }

    /** What is asked for from now on is said like this; standing phrases are to be prepared anew. */
    public void speaking(Manner manner) {
        cache.speaking(manner);
    }

    /** Makes these ready one by one while nothing else is to be made: standing phrases. */
    public void prepare(List<String> texts) {
        cache.prepare(texts);
    }

    /** Makes these ready at once, because they may be wanted next; what was expected before is not, save these. */
    public void expect(List<String> texts) {
        cache.expect(texts);
    }

    /**
     * Stops at once; what was waiting is not said any more.
     *
     * @return what was not said to its end, in order
     */
    public synchronized List<String> hush() {
        List<String> cut = unsaid.stream()
                .filter(phrase -> phrase.saying() == wanted)
                .map(Phrase::text)
                .toList();
        wanted++;
        return cut;
    }

    /** Whether it is speaking or about to, or its echo is still in the room. */
    public boolean audible() {
        return speaking() || System.nanoTime() - quietSince < ECHO.toNanos();
    }

    /** Whether it is speaking or about to. */
    public boolean speaking() {
        return waiting > 0;
    }

    /** Whether these words are coming from the loudspeaker, or were until a moment ago. */
    public boolean isSaying(String words) {
        return now.says(words, System.nanoTime());
    }

    private void play() {
        long announced = -1;
        while (!stopped) {
            try {
                Phrase phrase = phrases.take();
                if (phrase.saying() == wanted) {
                    Samples sound = phrase.sound().get();
                    if (announced == phrase.saying()) {
                        sound = Samples.joined(List.of(BREATH, sound), LineLoudspeaker.RATE);
                    } else {
                        announced = phrase.saying();
                        listener.started();
                    }
                    now = new SayingNow(phrase.text(), System.nanoTime(), sound.seconds());
                    loudspeaker.play(sound, () -> phrase.saying() != wanted);
                    failed = false;
                }
            } catch (InterruptedException e) {
                // Closed: nobody waits to hear that it ended.
                return;
            } catch (ExecutionException e) {
                fail(String.valueOf(e.getCause() == null ? e : e.getCause().getMessage()));
            } catch (LoudspeakerLostException e) {
                fail(String.valueOf(e.getMessage()));
            }
            announced = finished() ? -1 : announced;
        }
    }

    /** Counts a phrase as said; whether it was the last one. */
    private boolean finished() {
        synchronized (this) {
            unsaid.remove();
            waiting = unsaid.size();
            if (waiting > 0) {
                return false;
            }
            quietSince = System.nanoTime();
        }
        listener.ended();
        return true;
    }

    private void fail(String why) {
        cache.forgetFailures();
        if (!failed) {
            failed = true;
            listener.failed(why);
        }
    }

    @Override
    public synchronized void close() {
        stopped = true;
        hush();
        playing.interrupt();
        loudspeaker.close();
        cache.close();
    }
}
