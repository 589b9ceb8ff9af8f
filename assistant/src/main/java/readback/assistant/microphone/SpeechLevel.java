package readback.assistant.microphone;

import java.util.Arrays;

/**
 * How loud somebody spoke in a recording, and whether that serves to be understood. All levels in decibels of full
 * scale.
 *
 * @param speech mean level of what stands out of the noise; {@link LevelMeter#SILENCE} where nothing does
 * @param noise level of the noise beneath
 * @param clipped the share of the speech that is at full scale, 0 to 1
 */
public record SpeechLevel(double speech, double noise, double clipped) {

    /**
     * So many decibels at least speech has to stand out of the noise to be relied on: the recogniser's measured
     * accuracy is stated down to a signal-to-noise ratio of 10 dB.
     */
    public static final double RELIABLE_ABOVE_NOISE = 10;

    /** What is softer is no speech. */
    public static final double UNHEARD = LevelMeter.USUAL_GATE;

    /** Speech as soft as this falls below the gate where it is softest. Common practice, no source. */
    public static final double SOFT = UNHEARD + 10;

    /** A mean level of a fiftieth of a second that leaves no room for its peaks. Common practice, no source. */
    public static final double NEARLY_FULL = -6;

    /** A share of the speech beyond which clipping is heard. Common practice, no source. */
    private static final double MUCH_CLIPPED = 0.001;

    /** The last values of 16 bits: a converter that is driven too hard stays there. */
    private static final int FULL_SCALE = Short.MAX_VALUE - 8;

    private static final double CHUNK_SECONDS = 0.02;

    /** Less than this is a knock, no speech. */
    private static final double SHORTEST_SECONDS = 0.2;

    /** What is to be said of it. */
    public enum Grade {
        /** Nothing stood out of the noise. */
        NOTHING,
        /** It distorts: turn the microphone down or hold it away. */
        TOO_LOUD,
        /** Turn it up, or come closer. */
        TOO_SOFT,
        /** Loud enough, but hardly louder than the place. */
        DROWNED,
        GOOD
    }

    /**
     * The level of a recording.
     *
     * @param rate samples a second
     */
    public static SpeechLevel of(short[] sound, int rate) {
        LevelMeter meter = new LevelMeter(rate, LevelMeter.SILENCE);
        int chunk = (int) Math.round(CHUNK_SECONDS * rate);
        int chunks = sound.length / chunk;
        double[] levels = new double[chunks];
        for (int i = 0; i < chunks; i++) {
            meter.hear(Arrays.copyOfRange(sound, i * chunk, (i + 1) * chunk));
            levels[i] = meter.level();
        }
        double power = 0;
        long samples = 0;
        long full = 0;
        // the noise is known only afterwards: somebody may speak from the first moment on
        for (int i = 0; i < chunks; i++) {
            if (levels[i] >= meter.noise() + LevelMeter.GATE_ABOVE_NOISE) {
                samples += chunk;
                power += chunk * Math.pow(10, levels[i] / 10);
                full += fullScale(sound, i * chunk, (i + 1) * chunk);
            }
        }
        return samples < SHORTEST_SECONDS * rate
                ? new SpeechLevel(LevelMeter.SILENCE, meter.noise(), 0)
                : new SpeechLevel(10 * Math.log10(power / samples), meter.noise(), (double) full / samples);
    }

    private static long fullScale(short[] sound, int from, int to) {
        long full = 0;
        for (int i = from; i < to; i++) {
            full += Math.abs((int) sound[i]) >= FULL_SCALE ? 1 : 0;
        }
        return full;
    }

    /** How far the speech stands out of the noise, in decibels. */
    public double aboveNoise() {
        return speech - noise;
    }

    public Grade grade() {
        if (speech <= LevelMeter.SILENCE) {
            return Grade.NOTHING;
        }
        if (clipped > MUCH_CLIPPED) {
            return Grade.TOO_LOUD;
        }
        if (speech < SOFT) {
            return Grade.TOO_SOFT;
        }
        return aboveNoise() < RELIABLE_ABOVE_NOISE ? Grade.DROWNED : Grade.GOOD;
    }
}
