package readback.assistant.settings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The name that was probably meant. */
final class Nearest {

    private Nearest() {}

    /** The name that takes the fewest single-letter changes; none when half of the letters would have to change. */
    static Optional<String> to(String name, List<String> names) {
        return names.stream()
                .min(Comparator.comparingInt(each -> distance(name, each)))
                .filter(nearest -> 2 * distance(name, nearest) <= Math.max(name.length(), nearest.length()));
    }

    /** Insertions, deletions and replacements between two words (V. I. Levenshtein, 1966). */
    static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int replaced = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
