package readback.assistant.voice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import readback.assistant.sound.Samples;
import readback.assistant.sound.Tempo;
import readback.assistant.sound.Tone;

/**
 * Speaks live: makes phrases with a voice, on one thread, and plays them in order, on another, so that the next phrase
 * is made while one is heard. Any thread may call; calls never wait.
 */
public final class Mouth implements AutoCloseable {

    /** How it sounds. */
    public record Manner(double volume, double speed) {

        /** As the voice speaks by itself. */
        public static final Manner PLAIN = new Manner(1, 1);

        public Manner {
            if (!(volume >= 0 && volume <= 2)) {
                throw new IllegalArgumentException("A volume lies between 0 and 2, not at " + volume + ".");
            }
            if (!(speed >= 0.5 && speed <= 2)) {
                throw new IllegalArgumentException("A speed lies between 0.5 and 2, not at " + speed + ".");
            }
        }
    }

    /** Learns what happens. Called on the playing thread; must not take long. */
    public interface Listener {
        /** Sound begins now. */
        void started();

        /** Everything that was asked for was said or silenced. */
        void ended();

        /** There is no voice or no loudspeaker for now; one sentence says why. Called once until it works again. */
        void failed(String why);
    }

    /** Phrases kept ready; at 16 kHz a second of sound takes 32 kB. */
    private static final int KEPT = 300;

    /** Stands for every phrase where there is no voice. */
    private static final double TONE_HERTZ = 880;

    private static final double TONE_SECONDS = 0.2;

    /** Between two phrases, so that they do not run together. */
    private static final Samples BREATH = Samples.silence(0.2, LineLoudspeaker.RATE);

    /** For this long the sound rings on in the room, where a microphone hears it. */
    private static final Duration ECHO = Duration.ofMillis(250);

    /** A phrase of one saying. */
    private record Phrase(long saying, String text, Future<Samples> sound) {}

    private final Voice voice;
    private final Loudspeaker loudspeaker;
    private final Manner manner;
    private final Listener listener;
    private final ThreadPoolExecutor making =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), daemon("voice-making"));
    private final Thread playing = new Thread(this::play, "voice-playing");
    private final BlockingQueue<Phrase> phrases = new LinkedBlockingQueue<>();
    private final Map<String, Future<Samples>> ready = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Future<Samples>> eldest) {
            return size() > KEPT;
        }
    };
    /** Asked for in advance, and not wanted yet. */
    private final Map<String, FutureTask<Samples>> expected = new LinkedHashMap<>();

    private volatile long wanted;
    private volatile int waiting;
    private volatile long quietSince;
    private volatile boolean failed;
    private volatile boolean stopped;

    /** A mouth that is silent; it owns voice and loudspeaker from now on. */
    public Mouth(Voice voice, Loudspeaker loudspeaker, Manner manner, Listener listener) {
        this.voice = voice;
        this.loudspeaker = loudspeaker;
        this.manner = manner;
        this.listener = listener;
        this.quietSince = System.nanoTime() - ECHO.toNanos();
        playing.setDaemon(true);
        playing.start();
    }

    private static ThreadFactory daemon(String name) {
        return task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    /** Engine and voice. */
    public String name() {
        return voice.name();
    }

    /**
     * Says these, one after the other, after what is being said; nothing once it is closed. A phrase that is still
     * waiting to be said is not repeated.
     */
    public synchronized void say(List<String> texts) {
        forgetExpected(texts);
        expected.clear();
        for (String text : texts) {
            if (!stopped && !text.isBlank() && !waits(text)) {
                waiting++;
                phrases.add(new Phrase(wanted, text, sound(text)));
            }
        }
    }

    private boolean waits(String text) {
        return phrases.stream()
                .anyMatch(phrase -> phrase.saying() == wanted && phrase.text().equals(text));
    }

    /** Makes these ready one by one while nothing else is to be made: standing phrases. */
    public void prepare(List<String> texts) {
        synchronized (this) {
            if (!texts.isEmpty() && !stopped) {
                making.execute(() -> {
                    keep(texts.get(0));
                    prepare(texts.subList(1, texts.size()));
                });
            }
        }
    }

    /** Makes a phrase on the making thread unless it is there already. A failure shows when the phrase is wanted. */
    private void keep(String text) {
        FutureTask<Samples> task = new FutureTask<>(() -> made(text));
        synchronized (this) {
            if (ready.putIfAbsent(text, task) != null) {
                return;
            }
        }
        task.run();
    }

    /** Makes these ready at once, because they may be wanted next; what was expected before is not, save these. */
    public synchronized void expect(List<String> texts) {
        forgetExpected(texts);
        for (String text : texts) {
            if (!stopped && !text.isBlank()) {
                // A failure shows when the phrase is wanted.
                FutureTask<Samples> task = new FutureTask<>(() -> made(text));
                if (ready.putIfAbsent(text, task) == null) {
                    expected.put(text, task);
                    making.execute(task);
                }
            }
        }
    }

    /** What was expected and is not wanted must not make other phrases wait; one that is being made goes on. */
    private void forgetExpected(List<String> save) {
        expected.entrySet().removeIf(each -> {
            if (save.contains(each.getKey())) {
                return false;
            }
            if (making.remove(each.getValue())) {
                ready.remove(each.getKey());
            }
            return true;
        });
    }

    /** Stops at once; what was waiting is not said any more. */
    public synchronized void hush() {
        wanted++;
    }

    /** Whether it is speaking or about to, or its echo is still in the room. */
    public boolean audible() {
        return speaking() || System.nanoTime() - quietSince < ECHO.toNanos();
    }

    /** Whether it is speaking or about to. */
    public boolean speaking() {
        return waiting > 0;
    }

    private Future<Samples> sound(String text) {
        return ready.computeIfAbsent(text, made -> {
            FutureTask<Samples> task = new FutureTask<>(() -> made(text));
            making.execute(task);
            return task;
        });
    }

    private Samples made(String text) throws VoiceFailedException {
        Samples spoken = voice.speak(text);
        if (spoken.length() == 0) {
            return Tone.of(TONE_HERTZ, TONE_SECONDS, LineLoudspeaker.RATE);
        }
        return louder(Tempo.changed(trimmed(spoken).at(LineLoudspeaker.RATE), manner.speed()), manner.volume());
    }

    /** Engines begin and end with a silence, which would delay the answer. */
    private static Samples trimmed(Samples sound) {
        short[] pcm = sound.pcm();
        int from = 0;
        int to = pcm.length;
        while (from < to && Math.abs(pcm[from]) < QUIET) {
            from++;
        }
        while (to > from && Math.abs(pcm[to - 1]) < QUIET) {
            to--;
        }
        int margin = sound.rate() / 50;
        return Samples.of(sound.slice(Math.max(0, from - margin), Math.min(pcm.length, to + margin)), sound.rate());
    }

    /** Below this a sample of a voice is silence. */
    private static final int QUIET = 200;

    private static Samples louder(Samples sound, double volume) {
        if (volume == 1) {
            return sound;
        }
        short[] pcm = sound.pcm();
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(pcm[i] * volume)));
        }
        return Samples.of(pcm, sound.rate());
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
            waiting = phrases.size();
            if (waiting > 0) {
                return false;
            }
            quietSince = System.nanoTime();
        }
        listener.ended();
        return true;
    }

    private void fail(String why) {
        forgetFailures();
        if (!failed) {
            failed = true;
            listener.failed(why);
        }
    }

    /** A phrase that could not be made is made anew the next time. */
    private synchronized void forgetFailures() {
        List<String> texts = new ArrayList<>(ready.keySet());
        for (String text : texts) {
            Future<Samples> sound = ready.get(text);
            if (sound != null && sound.isDone() && !succeeded(sound)) {
                ready.remove(text);
            }
        }
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
        stopped = true;
        hush();
        playing.interrupt();
        making.shutdownNow();
        loudspeaker.close();
        voice.close();
    }
}
