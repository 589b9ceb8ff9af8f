package readback.assistant.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * From the end of what was said to the first sound of the answer, turn by turn, and what the time went into. Owned by
 * one thread.
 */
final class AnswerTimes {

    /**
     * One answer, in seconds.
     *
     * @param heard from the end of the last word until the ear was sure that it was the last
     * @param decided until the answer was known and on disk
     * @param spoken until it began to sound
     */
    record Answer(double heard, double decided, double spoken) {
        double whole() {
            return heard + decided + spoken;
        }
    }

    private final List<Answer> answers = new ArrayList<>();

    /** Takes one answer; the four moments are those of one clock in nanoseconds. */
    void add(long endedAt, long understoodAt, long decidedAt, long soundsAt) {
        answers.add(new Answer(
                (understoodAt - endedAt) / 1e9, (decidedAt - understoodAt) / 1e9, (soundsAt - decidedAt) / 1e9));
    }

    int count() {
        return answers.size();
    }

    /** One line for the user; how many answers, their median and 95th percentile, and the medians of the parts. */
    String summary() {
        return String.format(
                Locale.ROOT,
                "Answers by voice: %d, begun %.2f s after the last word in the median, %.2f s at the 95th percentile"
                        + " (hearing %.2f and %.2f, deciding %.2f and %.2f, voice %.2f and %.2f).",
                answers.size(),
                percentile(50),
                percentile(95),
                percentile(Answer::heard, 50),
                percentile(Answer::heard, 95),
                percentile(Answer::decided, 50),
                percentile(Answer::decided, 95),
                percentile(Answer::spoken, 50),
                percentile(Answer::spoken, 95));
    }

    /** Nearest-rank percentile in seconds, 0 before the first answer. */
    double percentile(int percent) {
        return percentile(Answer::whole, percent);
    }

    private double percentile(ToDoubleFunction<Answer> part, int percent) {
        List<Double> sorted = new ArrayList<>();
        answers.forEach(answer -> sorted.add(part.applyAsDouble(answer)));
        Collections.sort(sorted);
        return sorted.isEmpty() ? 0 : sorted.get((int) Math.ceil(percent / 100.0 * sorted.size()) - 1);
    }
}
