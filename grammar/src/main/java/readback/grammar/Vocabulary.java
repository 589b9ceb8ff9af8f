package readback.grammar;

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

    public Vocabulary {
        phrases = List.copyOf(phrases);
        words = Collections.unmodifiableSortedSet(new TreeSet<>(words));
    }

    static Vocabulary of(String step, List<String> phrases) {
        SortedSet<String> words = new TreeSet<>();
        for (String phrase : phrases) {
            Collections.addAll(words, phrase.split(" ", -1));
        }
        return new Vocabulary(step, phrases, words);
    }
}
