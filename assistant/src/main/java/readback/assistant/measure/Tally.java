package readback.assistant.measure;

import java.util.Arrays;
import java.util.List;

/** Counts of one kind of clips at one noise level. Owned by one thread. */
final class Tally {

    int clips;
    int right;
    /** Right before any acceptance rule. */
    int rightWithoutRule;

    int words;
    int wordErrors;
    /** Taken at once with the right meaning. */
    int understood;
    /** A value was found, and asked about. */
    int doubted;
    /** Nothing was taken: asked to say again, or not noticed. */
    int again;
    /** Taken at once with a wrong meaning: the worst that can happen. */
    int wrong;
    /** Words accepted in speech that was not meant for us. */
    int falseWords;
    /** The same before any acceptance rule. */
    int falseWordsWithoutRule;

    int falseCommands;
    int falseValues;
    double seconds;

    int values() {
        return understood + doubted + again + wrong;
    }

    /** Fewest insertions, deletions and substitutions that make the words heard of the words said. */
    static int distance(List<String> said, List<String> heard) {
        int[] previous = new int[heard.size() + 1];
        Arrays.setAll(previous, i -> i);
        for (int i = 1; i <= said.size(); i++) {
            int[] row = new int[heard.size() + 1];
            row[0] = i;
            for (int j = 1; j <= heard.size(); j++) {
                int substituted = previous[j - 1] + (said.get(i - 1).equals(heard.get(j - 1)) ? 0 : 1);
                row[j] = Math.min(substituted, Math.min(previous[j], row[j - 1]) + 1);
            }
            previous = row;
        }
        return previous[heard.size()];
    }
}
