package readback.assistant.ear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import readback.grammar.Hypothesis;

/**
 * What the ear made of one stretch of speech.
 *
 * @param alternatives at least one, the most likely first, all different; their confidences add up to 1 at most
 * @param startSeconds where its first word begins, from the start of the sound
 * @param endSeconds where its last word ends
 */
public record Utterance(List<Hypothesis> alternatives, double startSeconds, double endSeconds) {
    /** Seconds before its first and after its last word that belong to the sound of an utterance. */
    public static final double MARGIN_SECONDS = 0.2;

    public Utterance {
        alternatives = List.copyOf(alternatives);
        if (alternatives.isEmpty()) {
            throw new IllegalArgumentException("An utterance has at least one alternative.");
        }
    }

    /** The words of the most likely alternative. */
    public String words() {
        return alternatives.get(0).words();
    }

    /** The confidence of the most likely alternative, 0 to 1. */
    public double confidence() {
        return alternatives.get(0).confidence();
    }

    /** Whether no word of the phrases was heard in it. */
    public boolean onlyUnknown() {
        return words().replace(Ear.UNKNOWN, "").isBlank();
    }

    /** Both in one; what is likely of this may be followed by anything of the next. */
    Utterance then(Utterance next) {
        List<Hypothesis> both = new ArrayList<>();
        for (Hypothesis before : alternatives) {
            for (Hypothesis after : next.alternatives) {
                List<Hypothesis.Word> words = new ArrayList<>(before.details());
                words.addAll(after.details());
                String said = (before.words() + ' ' + after.words()).strip();
                both.add(new Hypothesis(said, before.confidence() * after.confidence(), words));
            }
        }
        both.sort(Comparator.comparingDouble(Hypothesis::confidence).reversed());
        return new Utterance(both, startSeconds, next.endSeconds);
    }

    /** The same utterance where the sound began {@code seconds} later on the clock of the whole. */
    Utterance later(double seconds) {
        List<Hypothesis> moved = alternatives.stream()
                .map(h -> new Hypothesis(
                        h.words(),
                        h.confidence(),
                        h.details().stream()
                                .map(w -> new Hypothesis.Word(
                                        w.word(), w.confidence(), w.start() + seconds, w.end() + seconds))
                                .toList()))
                .toList();
        return new Utterance(moved, startSeconds + seconds, endSeconds + seconds);
    }
}
