package readback.assistant.echo;

/**
 * What the loudspeaker was given, taken out at the pace at which sound comes in from the microphone. So it leads its
 * echo always by about the same time: that of the buffers and of the way through the air. Any thread.
 */
public final class PlayedSound {

    private short[] sound = {};
    private int taken;

    /** This begins to sound now; what is left of an earlier sound is over. */
    public synchronized void begins(short[] samples) {
        sound = samples.clone();
        taken = 0;
    }

    /** Nothing sounds any more. */
    public synchronized void ends() {
        sound = new short[0];
        taken = 0;
    }

    /** The next samples; zeros where nothing sounds. */
    public synchronized short[] next(int count) {
        short[] out = new short[count];
        int length = Math.min(count, sound.length - taken);
        System.arraycopy(sound, taken, out, 0, length);
        taken += length;
        return out;
    }
}
