package readback.assistant.live;

import java.util.Arrays;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Samples;

/** The sound since the last utterance, up to a limit. One thread. */
final class AudioBuffer {

    private final int limit;
    private short[] sound = new short[1 << 14];
    private int length;

    /** @param limit samples to keep at most; the oldest go first */
    AudioBuffer(int limit) {
        this.limit = limit;
    }

    void add(short[] chunk) {
        if (length + chunk.length > sound.length) {
            sound = Arrays.copyOf(sound, Math.max(2 * sound.length, length + chunk.length));
        }
        System.arraycopy(chunk, 0, sound, length, chunk.length);
        length += chunk.length;
        if (length > limit) {
            keepLast(limit);
        }
    }

    /** Forgets all but the latest samples. */
    void keepLast(int samples) {
        if (length > samples) {
            System.arraycopy(sound, length - samples, sound, 0, samples);
            length = samples;
        }
    }

    void clear() {
        length = 0;
    }

    short[] all() {
        return Arrays.copyOf(sound, length);
    }

    /**
     * The sound between two moments before now, as far as it is still there.
     *
     * @param from seconds ago
     * @param to seconds ago, fewer; below 0 counts as now
     */
    Samples stretch(double from, double to) {
        int begin = Math.max(0, length - (int) Math.round(from * Ear.RATE));
        int end = Math.min(length, length - (int) Math.round(Math.max(0, to) * Ear.RATE));
        return Samples.of(Arrays.copyOfRange(sound, begin, Math.max(begin, end)), Ear.RATE);
    }

    /** At most {@code most} samples of the sound from an index on. */
    static short[] part(short[] sound, int from, int most) {
        return Arrays.copyOfRange(sound, from, Math.min(sound.length, from + most));
    }
}
