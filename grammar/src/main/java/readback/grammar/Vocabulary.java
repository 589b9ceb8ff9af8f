package readback.grammar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the recogniser should listen for at one step. The phrases are sampled as people say them, because the recogniser
 * learns from them which words follow each other; a phrase may stand there more than once, and then counts more. Every
 * phrase is understood at the same step.
 *
 * @param step the step of the expectation
 * @param phrases as they go to the recogniser, with {@value #UNKNOWN} last
 * @param words every word of the phrases
 * @param completion how far what was heard is from being all that is said
 * @param doubt whether what was heard would be asked about
 */
public record Vocabulary(
        String step, List<String> phrases, SortedSet<String> words, Completion completion, Doubt doubt) {

    /** Stands for speech outside the vocabulary. */
    public static final String UNKNOWN = "[unk]";

    /**
     * Unknown speech makes up so much of all words and phrase ends. The recogniser counts phrases: listed once among
     * thousands, {@value #UNKNOWN} would cost so much that talk turns into numbers. Measured with the bundled model on
     * unrelated speech and on spoken numbers; figures in the recipe's README. Decision 0011.
     */
    private static final double UNKNOWN_SHARE = 0.02;

    public Vocabulary {
        phrases = List.copyOf(phrases);
        words = Collections.unmodifiableSortedSet(new TreeSet<>(words));
    }

    /** The phrases with unknown speech among them; half of it in pairs, so that talk goes on after one unknown word. */
    public static List<String> withUnknown(List<String> phrases) {
        int total = 0;
        for (String phrase : phrases) {
            total += phrase.split(" ", -1).length + 1;
        }
        int times = (int) Math.max(1, Math.round(UNKNOWN_SHARE * total));
        List<String> all = new ArrayList<>(phrases);
        all.addAll(Collections.nCopies(times / 2, UNKNOWN + " " + UNKNOWN));
        all.addAll(Collections.nCopies(times - times / 2, UNKNOWN));
        return all;
    }

    /** Phrases that belong to no step. */
    public static Vocabulary ofPhrases(Collection<String> phrases) {
        return of("", List.copyOf(phrases), Completion.ofPhrases(phrases), Doubt.NONE);
    }

    static Vocabulary of(String step, List<String> phrases, Completion completion, Doubt doubt) {
        SortedSet<String> words = new TreeSet<>();
        for (String phrase : phrases) {
            Collections.addAll(words, phrase.split(" ", -1));
        }
        return new Vocabulary(step, phrases, words, completion, doubt);
    }
}
