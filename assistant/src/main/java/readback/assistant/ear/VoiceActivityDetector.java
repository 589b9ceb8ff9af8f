package readback.assistant.ear;

import java.util.Arrays;

/**
 * Follows the level of the sound and tells how long nobody has been speaking. Levels are those of the differences
 * between samples, in which hum and the low tone of a fan weigh little. The noise is the least level of the last
 * seconds; speech stands out of it by a part of what the loudest speech does, so that neither breath in a quiet room
 * nor a fan counts.
 *
 * <p>One thread.
 */
final class VoiceActivityDetector {

    /** 10 ms. */
    private static final int FRAME = Ear.RATE / 100;
    /** Frames over which the level is averaged: noise as such swings less than speech does. */
    private static final int AVERAGED = 3;
    /** Frames of one block, and blocks in which the least level is looked for: two seconds. */
    private static final int BLOCK = 20;

    private static final int BLOCKS = 10;
    /**
     * Speech stands at least this many decibels above the least level of the noise, whose mean lies about 2 dB above
     * it.
     */
    private static final double LEAST_RISE = 5.5;
    /** Of what the loudest sound rises above the noise, in decibels, speech reaches this part. */
    private static final double PART_OF_RISE = 0.35;
    /** The loudest sound is forgotten by this many decibels a frame: 6 dB a second. */
    private static final double FORGETTING = 0.06;
    /** Shorter loud sounds, in frames, are clicks. */
    private static final int CLICK = 3;

    /**
     * Rise of the loudest sound above the noise, in decibels, from which soft consonants stand out as well; decision
     * 0012.
     */
    private static final double CLEAR = 30;

    private static final double PRE_EMPHASIS = 0.97;

    private final double[] powers = new double[AVERAGED];
    private final double[] least = new double[BLOCKS];
    private double sum;
    private int inFrame;
    private short previous;
    private long frames;
    private double rise;
    private double loudest = Double.NEGATIVE_INFINITY;
    private int loudRun;
    private int quiet;
    private boolean spoken;

    VoiceActivityDetector() {
        Arrays.fill(least, Double.POSITIVE_INFINITY);
    }

    void hear(short[] chunk) {
        for (short sample : chunk) {
            double change = sample - PRE_EMPHASIS * previous;
            previous = sample;
            sum += change * change;
            inFrame++;
            if (inFrame == FRAME) {
                frame(sum / FRAME);
                sum = 0;
                inFrame = 0;
            }
        }
    }

    private void frame(double power) {
        powers[(int) (frames % AVERAGED)] = power;
        frames++;
        double mean = 0;
        int known = (int) Math.min(frames, AVERAGED);
        for (int i = 0; i < known; i++) {
            mean += powers[i] / known;
        }
        double level = 10 * Math.log10(mean + 1);
        int block = (int) (frames / BLOCK % BLOCKS);
        least[block] = frames % BLOCK == 0 ? level : Math.min(least[block], level);
        double noise = Double.POSITIVE_INFINITY;
        for (double each : least) {
            noise = Math.min(noise, each);
        }
        loudest = Math.max(level, loudest - FORGETTING);
        rise = loudest - noise;
        if (level > noise + Math.max(LEAST_RISE, PART_OF_RISE * rise)) {
            loudRun++;
            quiet++;
            if (loudRun >= CLICK) {
                spoken = true;
                quiet = 0;
            }
        } else {
            loudRun = 0;
            quiet++;
        }
    }

    /** Whether speech stands out of the noise so far that its soft parts are seen too, not only its loud vowels. */
    boolean clear() {
        return rise >= CLEAR;
    }

    /** Whether anything stood out of the noise yet. */
    boolean spoken() {
        return spoken;
    }

    /** Seconds since something last stood out of the noise. */
    double quietSeconds() {
        return quiet * (double) FRAME / Ear.RATE;
    }
}
