package readback.grammar;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Whether somebody who has said these words so far is likely to go on, judged by the phrases that are expected: where
 * "one eighteen" is expected and "one" is not, "one" waits for more. Immutable.
 */
final class PhraseCompletion {

    /** A phrase that is this rarely the whole of what begins with it waits for more, as "correction" does. */
    private static final double RARELY_ALONE = 0.02;

    private final Map<String, Integer> whole = new HashMap<>();
    private final Map<String, Integer> begun = new HashMap<>();
    private final Set<String> pairs = new HashSet<>();
    private final Set<String> lastPairs = new HashSet<>();
    private final Set<String> lastWords = new HashSet<>();

    PhraseCompletion(Collection<String> phrases) {
        for (String phrase : phrases) {
            add(phrase);
        }
    }

    private void add(String phrase) {
        String[] words = phrase.split(" ", -1);
        StringBuilder beginning = new StringBuilder();
        for (int i = 0; i < words.length; i++) {
            beginning.append(i == 0 ? "" : " ").append(words[i]);
            begun.merge(beginning.toString(), 1, Integer::sum);
            if (i > 0) {
                pairs.add(words[i - 1] + ' ' + words[i]);
            }
        }
        whole.merge(phrase, 1, Integer::sum);
        lastWords.add(words[words.length - 1]);
        if (words.length > 1) {
            lastPairs.add(words[words.length - 2] + ' ' + words[words.length - 1]);
        }
    }

    /** Whether more words are likely to follow. */
    boolean open(String said) {
        int alone = whole.getOrDefault(said, 0);
        int begins = begun.getOrDefault(said, 0);
        if (alone > 0) {
            return alone < RARELY_ALONE * begins;
        }
        if (begins > 0) {
            return true;
        }
        int lastGap = said.lastIndexOf(' ');
        String last = said.substring(lastGap + 1);
        if (last.equals(Vocabulary.UNKNOWN)) {
            return false;
        }
        String pair = said.substring(said.lastIndexOf(' ', lastGap - 1) + 1);
        if (lastGap > 0 && pairs.contains(pair)) {
            return !lastPairs.contains(pair);
        }
        return !lastWords.contains(last);
    }
}
