package readback.assistant.measure;

import java.util.Locale;

/** A part of a whole that was counted. */
public record Share(int part, int whole) {

    /** In percent; zero of nothing. */
    double percent() {
        return whole == 0 ? 0 : 100.0 * part / whole;
    }

    /**
     * The interval that holds the true share about 95 times in 100, in percent: lowest, highest. Wilson's score
     * interval (E. B. Wilson, Journal of the American Statistical Association 22, 1927).
     */
    double[] interval() {
        if (whole == 0) {
            return new double[] {0, 100};
        }
        double z = 1.959964;
        double share = (double) part / whole;
        double scale = 1 + z * z / whole;
        double middle = (share + z * z / (2 * whole)) / scale;
        double half = z * Math.sqrt(share * (1 - share) / whole + z * z / (4.0 * whole * whole)) / scale;
        return new double[] {100 * Math.max(0, middle - half), 100 * Math.min(1, middle + half)};
    }

    /** "97.3 (96.1 to 98.2)", in percent. */
    @Override
    public String toString() {
        double[] interval = interval();
        return String.format(Locale.ROOT, "%.1f (%.1f to %.1f)", percent(), interval[0], interval[1]);
    }

    /** A line of a table: what was counted, how many of how many, and the share with its interval. */
    public String line(String what) {
        return String.format(Locale.ROOT, "%-54s %5d of %5d %s", what, part, whole, this);
    }
}
