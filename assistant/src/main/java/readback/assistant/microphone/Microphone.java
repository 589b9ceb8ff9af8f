package readback.assistant.microphone;

/** An open microphone. One thread reads it. */
public interface Microphone extends AutoCloseable {

    /** Samples a second of what {@link #read} gives. */
    int RATE = 16000;

    /** The device as the user knows it. */
    String name();

    /**
     * The next sound, one channel at {@link #RATE}; waits for it, some ten milliseconds as a rule.
     *
     * @throws MicrophoneLostException when nothing comes any more: the device was pulled out or its server is gone
     */
    short[] read() throws MicrophoneLostException;

    /** How often sound was lost so far because it was not taken in time. */
    long overruns();

    /** Never blocks, even when the device hangs. */
    @Override
    void close();
}
