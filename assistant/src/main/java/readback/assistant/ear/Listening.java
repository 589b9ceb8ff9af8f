package readback.assistant.ear;

import java.util.Optional;

/**
 * One stretch of listening for the phrases of one step. Belongs to the thread of its {@link Ear}; close it before the
 * ear.
 */
public interface Listening extends AutoCloseable {
    /**
     * Takes the next sound and gives an utterance when its end was found, which is a third of a second or more of
     * silence after the last word. The sound after that end stays with this listening.
     *
     * @param chunk at {@link Ear#RATE}; 50 ms are good, more than 200 ms delay the answer
     */
    default Optional<Utterance> hear(short[] chunk) {
        return hear(chunk, chunk);
    }

    /**
     * The same for sound that noise was taken out of.
     *
     * @param chunk what the words are heard in
     * @param recorded as much, as it was recorded: where somebody speaks is told by its level
     */
    Optional<Utterance> hear(short[] chunk, short[] recorded);

    /** The utterance that was still open: the sound is over, or a key was released. Listening can go on after it. */
    Optional<Utterance> finish();

    /** The words of the open utterance as they look now; empty while nothing was said. */
    String partial();

    /** Seconds of sound taken so far. */
    double seconds();

    @Override
    void close();
}
