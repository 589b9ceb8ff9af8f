package readback.grammar;

import java.util.List;

/**
 * One thing that may have been said, as the recogniser or the keyboard offers it.
 *
 * @param words lower-case words separated by single spaces; {@code [unk]} stands for speech outside the vocabulary
 * @param confidence 0 to 1 within the list of alternatives it came with; typed words have 1
 * @param details the words one by one where the recogniser tells, else empty
 */
public record Hypothesis(String words, double confidence, List<Word> details) {

    /**
     * A word with its place in the utterance.
     *
     * @param confidence posterior probability, 0 to 1
     * @param start seconds from the start of the audio
     * @param end seconds from the start of the audio
     */
    public record Word(String word, double confidence, double start, double end) {}

    public Hypothesis {
        details = List.copyOf(details);
    }

    /** Words that are certain because they were typed. */
    public static Hypothesis typed(String words) {
        return new Hypothesis(words, 1, List.of());
    }
}
