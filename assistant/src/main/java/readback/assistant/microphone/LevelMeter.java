package readback.assistant.microphone;

/**
 * Follows how loud the sound is and how loud the noise beneath it is. The noise is the quietest tenth of a second of
 * the last two to four seconds (minimum statistics; R. Martin, "Noise power spectral density estimation based on
 * optimal smoothing and minimum statistics", 2001, here without its spectral part), so a long word does not count as
 * noise. One thread at a time.
 */
public final class LevelMeter {

    /** Below this a level means digital silence. */
    public static final double SILENCE = -90;

    /** What is softer than this is no speech unless somebody sets it otherwise, in decibels of full scale. */
    public static final double USUAL_GATE = -55;

    /** Speech stands out of the noise by this much, in decibels. Common practice, no source. */
    public static final double GATE_ABOVE_NOISE = 6;

    private static final double WINDOW_SECONDS = 2;
    private static final double SMOOTHING_SECONDS = 0.1;

    private final double gate;
    private final int rate;
    private double power;
    private boolean begun;
    private double lowest = Double.MAX_VALUE;
    private double lowestBefore = Double.MAX_VALUE;
    private double windowSeconds;
    private double openSeconds;
    private double level = SILENCE;

    /**
     * A meter that has heard nothing.
     *
     * @param rate samples a second
     * @param gate level in decibels of full scale that speech has at least
     */
    public LevelMeter(int rate, double gate) {
        this.rate = rate;
        this.gate = gate;
    }

    /** Takes the next sound. */
    public void hear(short[] chunk) {
        if (chunk.length == 0) {
            return;
        }
        double sum = 0;
        for (short sample : chunk) {
            sum += (double) sample * sample;
        }
        double now = sum / chunk.length / ((double) Short.MIN_VALUE * Short.MIN_VALUE);
        double seconds = (double) chunk.length / rate;
        double weight = begun ? Math.min(1, seconds / SMOOTHING_SECONDS) : 1;
        begun = true;
        power += weight * (now - power);
        level = decibels(now);
        lowest = Math.min(lowest, power);
        windowSeconds += seconds;
        if (windowSeconds >= WINDOW_SECONDS) {
            lowestBefore = lowest;
            lowest = power;
            windowSeconds = 0;
        }
        openSeconds = open() ? openSeconds + seconds : 0;
    }

    /** Level of the last sound in decibels of full scale, {@link #SILENCE} to 0. */
    public double level() {
        return level;
    }

    /** Level of the noise in decibels of full scale. */
    public double noise() {
        return decibels(Math.min(lowest, lowestBefore));
    }

    /** Whether the last sound is loud enough to be speech. */
    public boolean open() {
        return level >= gate && level >= noise() + GATE_ABOVE_NOISE;
    }

    /** How many seconds without a break it has been so. */
    public double openSeconds() {
        return openSeconds;
    }

    private static double decibels(double power) {
        return power <= 0 || power == Double.MAX_VALUE
                ? SILENCE
                : Math.max(SILENCE, Math.min(0, 10 * Math.log10(power)));
    }
}
