package readback.grammar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the recogniser should listen for at one step. The phrases are sampled as people say them, because the
 * recogniser learns from them which words follow each other; a phrase may stand there more than once, and then counts
 * more. Every phrase is understood at the same step.
 *
 * @param step the step of the expectation
 * @param phrases as they go to the recogniser, with {@value #UNKNOWN} last
 * @param words every word of the phrases
 */
public record Vocabulary(String step, List<String> phrases, SortedSet<String> words) {

    /** Stands for speech outside the vocabulary. */
    public static final String UNKNOWN = "[unk]";

    /**
     * Pairs of unknown words to all words and phrase ends. The recogniser counts phrases: listed once among thousands,
     * {@value #UNKNOWN} would cost so much that talk turns into numbers; listed oftener, it takes the place of soft digits.
     * Measured with the bundled model on unrelated speech and on spoken readings; figures in the recipe's README.
     */
    private static final double UNKNOWN_PAIRS = 0.005;

    public Vocabulary {
        phrases = List.copyOf(phrases);
        words = Collections.unmodifiableSortedSet(new TreeSet<>(words));
    }

    /** The phrases with unknown speech among them, mostly in pairs, so that talk goes on after one unknown word. */
    public static List<String> withUnknown(List<String> phrases) {
        int total = 0;
        for (String phrase : phrases) {
            total += phrase.split(" ", -1).length + 1;
        }
        int pairs = (int) Math.round(UNKNOWN_PAIRS * total);
        List<String> all = new ArrayList<>(phrases);
        all.addAll(Collections.nCopies(pairs, UNKNOWN + " " + UNKNOWN));
        all.add(UNKNOWN);
        return all;
    }

    static Vocabulary of(String step, List<String> phrases) {
        SortedSet<String> words = new TreeSet<>();
        for (String phrase : phrases) {
            Collections.addAll(words, phrase.split(" ", -1));
        }
        return new Vocabulary(step, phrases, words);
    }
}
