package readback.assistant.ear;

import java.util.Collection;
import java.util.Optional;
import readback.assistant.sound.Samples;
import readback.grammar.Vocabulary;

/**
 * Plays a recording into an ear, utterance by utterance. Between two utterances the phrases may change, as they do when
 * the dialogue goes on to another step; no sound is lost there.
 *
 * <p>One thread at a time, that of the ear.
 */
public final class AudioFileFeed {
    /** 50 ms, well under the 200 ms beyond which ends of utterances are found late. */
    private static final int CHUNK = Ear.RATE / 20;

    /** How much of the silence after an utterance the next listening hears again as its run-up. */
    private static final double RUN_UP_SECONDS = 0.3;

    /** The sound of the last word may outlast its time a little. */
    private static final double WORD_TAIL_SECONDS = 0.06;

    private final Ear ear;
    private final Samples sound;
    private int position;

    /** A feed at the beginning of the recording. */
    public AudioFileFeed(Ear ear, Samples sound) {
        this.ear = ear;
        this.sound = sound.at(Ear.RATE);
    }

    /**
     * The next utterance, with times from the start of the recording; nothing when the rest holds none and the feed is
     * at its end.
     *
     * @param vocabulary what is expected now
     */
    public Optional<Utterance> next(Vocabulary vocabulary) {
        int start = position;
        double offset = (double) start / Ear.RATE;
        try (Listening listening = ear.listen(vocabulary)) {
            while (!ended()) {
                int end = Math.min(sound.length(), position + CHUNK);
                Optional<Utterance> heard = listening.hear(sound.slice(position, end));
                position = end;
                if (heard.isPresent()) {
                    Utterance utterance = heard.get().later(offset);
                    position = Math.max(start + CHUNK, runUp(utterance));
                    return Optional.of(utterance);
                }
            }
            return listening.finish().map(utterance -> utterance.later(offset));
        }
    }

    /** The same for phrases that belong to no step. */
    public Optional<Utterance> next(Collection<String> phrases) {
        return next(Vocabulary.ofPhrases(phrases));
    }

    /** Where the next listening begins: after the last word, but not long before what was fed. */
    private int runUp(Utterance utterance) {
        double wordsOver = utterance.endSeconds() + WORD_TAIL_SECONDS;
        double from = Math.max(wordsOver, seconds() - RUN_UP_SECONDS);
        return Math.min(position, (int) Math.round(from * Ear.RATE));
    }

    /** Whether all sound was fed. */
    public boolean ended() {
        return position >= sound.length();
    }

    /** Seconds of the recording that were fed so far. */
    public double seconds() {
        return (double) position / Ear.RATE;
    }
}
