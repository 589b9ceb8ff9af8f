package readback.assistant.voice;

import readback.assistant.sound.Samples;
import readback.assistant.sound.Tempo;

/** How a live voice sounds: as it speaks by itself, louder or faster. */
public record Manner(double volume, double speed) {

    /** As the voice speaks by itself. */
    public static final Manner PLAIN = new Manner(1, 1);

    /** Below this a sample of a voice is silence. */
    private static final int QUIET = 200;

    public Manner {
        if (!(volume >= 0 && volume <= 2)) {
            throw new IllegalArgumentException("A volume lies between 0 and 2, not at " + volume + ".");
        }
        if (!(speed >= 0.5 && speed <= 2)) {
            throw new IllegalArgumentException("A speed lies between 0.5 and 2, not at " + speed + ".");
        }
    }

    /** The manner of a volume and a speed in percent of what the voice does by itself. */
    public static Manner percent(int volume, int speed) {
        return new Manner(volume / 100d, speed / 100d);
    }

    /** What an engine spoke, in this manner and as the loudspeaker plays it, at {@link LineLoudspeaker#RATE}. */
    Samples applied(Samples spoken) {
        return louder(Tempo.changed(trimmed(spoken).at(LineLoudspeaker.RATE), speed));
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

    private Samples louder(Samples sound) {
        return volume == 1 ? sound : sound.times(volume);
    }
}
