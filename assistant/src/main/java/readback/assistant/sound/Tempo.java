package readback.assistant.sound;

/**
 * Makes speech faster or slower at the same pitch, by overlapping short pieces where they fit each other best (WSOLA:
 * W. Verhelst and M. Roelands, "An overlap-add technique based on waveform similarity", 1993).
 */
public final class Tempo {

    private static final double PIECE_SECONDS = 0.03;
    private static final double SEARCH_SECONDS = 0.008;

    private Tempo() {}

    /**
     * The sound at another speed.
     *
     * @param speed 1 leaves it as it is, 2 takes half the time; 0.5 to 2
     */
    public static Samples changed(Samples sound, double speed) {
        if (!(speed >= 0.5 && speed <= 2)) {
            throw new IllegalArgumentException("A speed lies between 0.5 and 2, not at " + speed + ".");
        }
        short[] in = sound.pcm();
        int piece = (int) (PIECE_SECONDS * sound.rate()) / 2 * 2;
        int half = piece / 2;
        int search = (int) (SEARCH_SECONDS * sound.rate());
        if (speed == 1 || in.length < 2 * piece + search) {
            return sound;
        }
        int length = (int) Math.round(in.length / speed);
        double[] out = new double[length + piece];
        int from = 0;
        for (int at = 0; at < length; at += half) {
            int wanted = (int) Math.round(at * speed);
            from = at == 0 ? 0 : best(in, from + half, wanted, half, search);
            add(in, from, out, at, piece, at == 0);
        }
        short[] pcm = new short[length];
        for (int i = 0; i < length; i++) {
            pcm[i] = Samples.clipped(out[i]);
        }
        return Samples.of(pcm, sound.rate());
    }

    /** The place near the wanted one whose wave goes on most like the one that would have followed. */
    private static int best(short[] in, int natural, int wanted, int half, int search) {
        int best = wanted;
        double most = Double.NEGATIVE_INFINITY;
        for (int shift = -search; shift <= search; shift += 2) {
            int candidate = wanted + shift;
            if (candidate < 0 || candidate + half >= in.length || natural + half >= in.length) {
                continue;
            }
            double product = 0;
            double energy = 1;
            for (int i = 0; i < half; i += 4) {
                product += (double) in[natural + i] * in[candidate + i];
                energy += (double) in[candidate + i] * in[candidate + i];
            }
            double likeness = product / Math.sqrt(energy);
            if (likeness > most) {
                most = likeness;
                best = candidate;
            }
        }
        return best;
    }

    /** Adds a piece under a raised cosine whose halves sum to one; the first piece has no half before it. */
    private static void add(short[] in, int from, double[] out, int at, int piece, boolean first) {
        for (int i = 0; i < piece && from + i < in.length && at + i < out.length; i++) {
            double window = first && i < piece / 2 ? 1 : 0.5 - 0.5 * Math.cos(2 * Math.PI * i / piece);
            out[at + i] += window * in[Math.max(0, from + i)];
        }
    }
}
