package readback.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * The ways found to understand an utterance: each meaning once, with the score of its most natural way, in the order in
 * which they were found. They are a handful, so they are told apart one by one. Used by one thread, for one call.
 */
final class Ways {

    private final List<Interpretation> found = new ArrayList<>(0);

    void add(Meaning meaning, double score) {
        for (int i = 0; i < found.size(); i++) {
            Interpretation before = found.get(i);
            if (before.meaning().equals(meaning)) {
                if (score > before.score()) {
                    found.set(i, new Interpretation(before.meaning(), score));
                }
                return;
            }
        }
        found.add(new Interpretation(meaning, score));
    }

    void addAll(Ways others) {
        for (Interpretation each : others.found) {
            add(each.meaning(), each.score());
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    boolean any(Predicate<Meaning> condition) {
        for (Interpretation each : found) {
            if (condition.test(each.meaning())) {
                return true;
            }
        }
        return false;
    }

    void removeIf(Predicate<Meaning> condition) {
        if (!found.isEmpty()) {
            found.removeIf(each -> condition.test(each.meaning()));
        }
    }

    /** Best first. */
    List<Interpretation> ranked() {
        if (found.size() > 1) {
            found.sort(Comparator.comparingDouble(Interpretation::score).reversed());
        }
        return List.copyOf(found);
    }
}
