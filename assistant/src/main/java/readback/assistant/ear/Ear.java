package readback.assistant.ear;

import java.util.Collection;
import java.util.SortedSet;
import readback.grammar.Vocabulary;

/**
 * Something that can listen: an acoustic model, ready to be given the phrases of a dialogue step.
 *
 * <p>One thread at a time for an ear and everything that listens with it.
 */
public interface Ear extends AutoCloseable {
    /** Samples a second of all sound that an ear takes. */
    int RATE = 16000;

    /** The word of an {@link Utterance} that stands for speech outside the phrases. */
    String UNKNOWN = Vocabulary.UNKNOWN;

    /** What listens, for the session record: engine and model with their versions. */
    String name();

    /** Where its model lies, as the engine was told, for whoever looks after the machine. */
    String place();

    /**
     * A listening that expects the phrases of this vocabulary. They shape what is heard, they do not limit it: any
     * sequence of their words can come out, word pairs that occur in the phrases more readily, {@link #UNKNOWN} for
     * anything else.
     *
     * <p>The phrases are words in lower case, separated by single spaces, as a {@link Vocabulary} has them; repeated
     * phrases weigh more; phrases with words that the model lacks are left out (ask {@link #missing} first); none means
     * that nothing is expected and all speech is unknown. How long a pause ends an utterance depends on what was said:
     * {@link Vocabulary#completion}.
     */
    Listening listen(Vocabulary vocabulary);

    /** The same for phrases that belong to no step. */
    default Listening listen(Collection<String> phrases) {
        return listen(Vocabulary.ofPhrases(phrases));
    }

    /**
     * The ear to listen with where little is left of what is said: where there are several, the one that is believed
     * most. It may cost more for each second of sound, and belongs to this ear.
     */
    default Ear keenest() {
        return this;
    }

    /** Those of the words that the model can never hear, in alphabetical order. */
    SortedSet<String> missing(Collection<String> words);

    /** Frees the model; every listening must be closed before. */
    @Override
    void close();
}
