package readback.assistant.record;

/**
 * How much disk the sound of a session may take.
 *
 * @param bytes for all of its utterances together
 * @param reserve bytes that stay free on the disk for the record itself
 */
public record AudioBudget(long bytes, long reserve) {

    private static final long MEGABYTE = 1_000_000;

    /** No sound is kept. */
    public static final AudioBudget NONE = new AudioBudget(0, 0);

    public AudioBudget {
        if (bytes < 0 || reserve < 0) {
            throw new IllegalArgumentException("a budget of " + bytes + " bytes beside " + reserve + " is none");
        }
    }

    /** The given number of megabytes, besides 100 MB that stay free. 16 kHz mono takes 1.9 MB a minute of speech. */
    public static AudioBudget megabytes(long megabytes) {
        return new AudioBudget(megabytes * MEGABYTE, 100 * MEGABYTE);
    }
}
