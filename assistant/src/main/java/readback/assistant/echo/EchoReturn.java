package readback.assistant.echo;

import readback.assistant.ear.Ear;

/**
 * How much of the own voice comes back in spite of the canceller, told while it speaks. The canceller adapts within a
 * second or two; what is still loud then stays so: a loudspeaker beside the microphone, one that distorts, or sound on
 * its way for longer than the canceller looks back. One thread.
 */
final class EchoReturn {

    /** A piece of sound counts as voice above this peak, 40 dB below full scale. */
    private static final int VOICE = 328;

    /** Time to adapt, in seconds of voice. */
    static final double ADAPTING = 3;

    /** Judged over so many seconds of voice at a time. */
    private static final double WINDOW = 4;

    /** The share of the voice that may stand out of the noise as if someone spoke. A technician talks in between. */
    private static final double TOLERATED = 0.5;

    /** So much quieter at least has to be what is left, in decibels. */
    static final double LEAST_REDUCTION = 10;

    /** One may be a technician who goes on talking. */
    private static final int BAD_WINDOWS = 2;

    private double voiceSeconds;
    private double windowSeconds;
    private double openSeconds;
    private double heardPower;
    private double leftPower;
    private int badWindows;

    void hear(short[] played, short[] heard, short[] left, boolean open) {
        if (!loud(played) || hopeless()) {
            return;
        }
        double seconds = (double) played.length / Ear.RATE;
        voiceSeconds += seconds;
        if (voiceSeconds < ADAPTING) {
            return;
        }
        windowSeconds += seconds;
        openSeconds += open ? seconds : 0;
        heardPower += power(heard);
        leftPower += power(left);
        if (windowSeconds >= WINDOW) {
            boolean bad = openSeconds > TOLERATED * windowSeconds
                    && leftPower > heardPower * Math.pow(10, -LEAST_REDUCTION / 10);
            badWindows = bad ? badWindows + 1 : 0;
            windowSeconds = 0;
            openSeconds = 0;
            heardPower = 0;
            leftPower = 0;
        }
    }

    boolean hopeless() {
        return badWindows >= BAD_WINDOWS;
    }

    static boolean loud(short[] samples) {
        for (short sample : samples) {
            if (Math.abs(sample) > VOICE) {
                return true;
            }
        }
        return false;
    }

    static double power(short[] samples) {
        double sum = 0;
        for (short sample : samples) {
            sum += (double) sample * sample;
        }
        return sum;
    }
}
