package readback.assistant.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** From the end of what was said to the first sound of the answer, turn by turn. Owned by one thread. */
final class AnswerTimes {

    private final List<Double> seconds = new ArrayList<>();

    void add(double answeredAfter) {
        seconds.add(answeredAfter);
    }

    int count() {
        return seconds.size();
    }

    /** One line for the user; how many answers, their median and 95th percentile. */
    String summary() {
        return String.format(
                Locale.ROOT,
                "Answers by voice: %d, begun %.2f s after the last word in the median, %.2f s at the 95th percentile.",
                seconds.size(),
                percentile(50),
                percentile(95));
    }

    /** Nearest-rank percentile in seconds, 0 before the first answer. */
    double percentile(int percent) {
        List<Double> sorted = new ArrayList<>(seconds);
        Collections.sort(sorted);
        return sorted.isEmpty() ? 0 : sorted.get((int) Math.ceil(percent / 100.0 * sorted.size()) - 1);
    }
}
