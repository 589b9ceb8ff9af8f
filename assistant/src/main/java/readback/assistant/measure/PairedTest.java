package readback.assistant.measure;

import java.util.Locale;

/**
 * The same clips in two ways: how many came right in one of them only.
 *
 * @param firstOnly right in the first way only
 * @param secondOnly right in the second way only
 */
public record PairedTest(int firstOnly, int secondOnly) {

    /** Counts the pairs; both of one length, a place for each clip. */
    static PairedTest of(boolean[] first, boolean[] second) {
        int firstOnly = 0;
        int secondOnly = 0;
        for (int i = 0; i < first.length; i++) {
            firstOnly += first[i] && !second[i] ? 1 : 0;
            secondOnly += second[i] && !first[i] ? 1 : 0;
        }
        return new PairedTest(firstOnly, secondOnly);
    }

    /**
     * How probable so great a difference or a greater one is where both ways are equally good, 0 to 1: McNemar's test
     * in its exact form, two-sided (Q. McNemar, Psychometrika 12, 1947).
     */
    double probability() {
        int all = firstOnly + secondOnly;
        double logTerm = -all * Math.log(2);
        double sum = 0;
        for (int k = 0; k <= Math.min(firstOnly, secondOnly); k++) {
            sum += Math.exp(logTerm);
            logTerm += Math.log(all - k) - Math.log(k + 1);
        }
        return Math.min(1, 2 * sum);
    }

    /** "9 only without, 41 only with, p 0.0001". */
    String line() {
        return String.format(
                Locale.ROOT, "%d only without, %d only with, p %.2g", firstOnly, secondOnly, probability());
    }
}
