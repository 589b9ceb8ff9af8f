package readback.assistant.sound;

/** Signals without words. */
public final class Tone {

    private static final double LOUDNESS = 0.4;
    private static final double EDGE_SECONDS = 0.01;

    private Tone() {}

    /**
     * A pure tone with soft edges.
     *
     * @param hertz below half of {@code rate}
     */
    public static Samples of(double hertz, double seconds, int rate) {
        short[] pcm = new short[(int) Math.round(seconds * rate)];
        double edge = EDGE_SECONDS * rate;
        for (int i = 0; i < pcm.length; i++) {
            double rise = Math.min(1, Math.min(i, pcm.length - 1 - i) / edge);
            pcm[i] = (short) Math.round(LOUDNESS * Short.MAX_VALUE * rise * Math.sin(2 * Math.PI * hertz * i / rate));
        }
        return Samples.of(pcm, rate);
    }
}
