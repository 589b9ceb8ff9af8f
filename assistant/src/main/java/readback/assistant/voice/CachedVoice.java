package readback.assistant.voice;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import readback.assistant.sound.Samples;

/**
 * A voice that remembers what it said last, so that standing phrases start at once. Any thread: while one thread warms
 * the cache, another gets its own text spoken in between.
 */
public final class CachedVoice implements Voice {
    private final Voice voice;
    private final Map<String, Samples> spoken;

    /**
     * A cache around a voice, which is closed with it.
     *
     * @param capacity texts to remember, of which those unused for longest go first; a text takes about 100 kB a second
     */
    public CachedVoice(Voice voice, int capacity) {
        this.voice = voice;
        this.spoken = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Samples> eldest) {
                return size() > capacity;
            }
        };
    }

    /** Speaks all the texts to nobody, so that they are ready. */
    public void warm(Collection<String> texts) throws VoiceFailedException {
        for (String text : texts) {
            speak(text);
        }
    }

    @Override
    public String name() {
        return voice.name();
    }

    @Override
    public Samples speak(String text) throws VoiceFailedException {
        Samples known = remembered(text);
        if (known != null) {
            return known;
        }
        Samples fresh = voice.speak(text);
        synchronized (spoken) {
            spoken.put(text, fresh);
        }
        return fresh;
    }

    private @Nullable Samples remembered(String text) {
        synchronized (spoken) {
            return spoken.get(text);
        }
    }

    @Override
    public void close() {
        voice.close();
    }
}
