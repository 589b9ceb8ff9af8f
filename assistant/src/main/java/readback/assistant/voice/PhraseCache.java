package readback.assistant.voice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import readback.assistant.sound.Samples;
import readback.assistant.sound.Tone;

/**
 * Makes phrases with a voice, on one thread of its own, and keeps them: those said last, those prepared because they
 * are said often, and those expected because they may be said next. Any thread may call; calls never wait.
 */
final class PhraseCache implements AutoCloseable {

    /** Phrases kept; at 16 kHz a second of sound takes 32 kB. */
    private static final int KEPT = 300;

    /** Stands for every phrase where there is no voice. */
    private static final double TONE_HERTZ = 880;

    private static final double TONE_SECONDS = 0.2;

    private final Voice voice;
    private volatile Manner manner = Manner.PLAIN;
    private final ThreadPoolExecutor making =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), PhraseCache::daemon);
    private final Map<String, Future<Samples>> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Future<Samples>> eldest) {
            return size() > KEPT;
        }
    };
    /** Asked for in advance, and not wanted yet. */
    private final Map<String, FutureTask<Samples>> expected = new LinkedHashMap<>();

    private boolean closed;

    /** An empty cache; it owns the voice from now on. */
    PhraseCache(Voice voice) {
        this.voice = voice;
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "voice-making");
        thread.setDaemon(true);
        return thread;
    }

    /** Engine and voice. */
    String name() {
        return voice.name();
    }

    /** What is made from now on sounds like this; what was made before is forgotten. */
    synchronized void speaking(Manner next) {
        manner = next;
        forgetExpected(List.of());
        kept.clear();
    }

    /**
     * The sounds of phrases that are said now, in order; those that are not there are made next. What was expected and
     * is not among them must not make them wait. Not to be called once it is closed.
     */
    synchronized List<Future<Samples>> sounds(List<String> texts) {
        forgetExpected(texts);
        expected.clear();
        List<Future<Samples>> sounds = new ArrayList<>();
        for (String text : texts) {
            sounds.add(kept.computeIfAbsent(text, missing -> {
                FutureTask<Samples> task = task(missing);
                making.execute(task);
                return task;
            }));
        }
        return sounds;
    }

    /** Makes these ready one by one while nothing else is to be made: standing phrases. */
    synchronized void prepare(List<String> texts) {
        if (!texts.isEmpty() && !closed) {
            making.execute(() -> {
                keep(texts.get(0));
                prepare(texts.subList(1, texts.size()));
            });
        }
    }

    /** Makes a phrase on the making thread unless it is there already. A failure shows when the phrase is wanted. */
    private void keep(String text) {
        FutureTask<Samples> task = task(text);
        synchronized (this) {
            if (kept.putIfAbsent(text, task) != null) {
                return;
            }
        }
        task.run();
    }

    /** Makes these ready at once, because they may be wanted next; what was expected before is not, save these. */
    synchronized void expect(List<String> texts) {
        forgetExpected(texts);
        for (String text : texts) {
            if (!closed && !text.isBlank()) {
                // A failure shows when the phrase is wanted.
                FutureTask<Samples> task = task(text);
                if (kept.putIfAbsent(text, task) == null) {
                    expected.put(text, task);
                    making.execute(task);
                }
            }
        }
    }

    /** Takes what waits to be made off the list, save these; a phrase that is being made goes on. */
    private void forgetExpected(List<String> save) {
        expected.entrySet().removeIf(each -> {
            if (save.contains(each.getKey())) {
                return false;
            }
            if (making.remove(each.getValue())) {
                kept.remove(each.getKey());
            }
            return true;
        });
    }

    private FutureTask<Samples> task(String text) {
        return new FutureTask<>(() -> made(text));
    }

    private Samples made(String text) throws VoiceFailedException {
        Samples spoken = voice.speak(text);
        return spoken.length() == 0 ? Tone.of(TONE_HERTZ, TONE_SECONDS, LineLoudspeaker.RATE) : manner.applied(spoken);
    }

    /** A phrase that could not be made is made anew the next time. */
    synchronized void forgetFailures() {
        kept.values().removeIf(sound -> sound.isDone() && !succeeded(sound));
    }

    private static boolean succeeded(Future<Samples> sound) {
        try {
            sound.get();
            return true;
        } catch (ExecutionException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        making.shutdownNow();
        voice.close();
    }
}
