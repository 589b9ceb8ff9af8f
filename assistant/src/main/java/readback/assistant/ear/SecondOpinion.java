package readback.assistant.ear;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/**
 * Two ears: the first one hears everything and finds where utterances begin and end; where what it heard would be asked
 * about, the second one hears the same sound once more, and both are believed by their weights. What the first one is
 * sure of stays as it is. Decision 0013.
 */
public final class SecondOpinion implements Ear {

    /**
     * Weight of the first ear where both were asked; the second one has the rest. Chosen on development readings:
     * decision 0013.
     */
    private static final double FIRST = 0.2;

    /** What both together believe less than this was not said. Chosen with the weight. */
    private static final double FAINT = 0.02;

    private final Ear first;
    private final Ear second;

    /** Both belong to this ear from now on. */
    public SecondOpinion(Ear first, Ear second) {
        this.first = first;
        this.second = second;
    }

    @Override
    public String name() {
        return first.name() + "; in doubt " + second.name();
    }

    @Override
    public String place() {
        return first.place() + " and " + second.place();
    }

    @Override
    public Listening listen(Vocabulary vocabulary) {
        return new ListeningTwice(first.listen(vocabulary), () -> second.listen(vocabulary), vocabulary);
    }

    @Override
    public Ear keenest() {
        return second;
    }

    @Override
    public SortedSet<String> missing(Collection<String> words) {
        return first.missing(words);
    }

    @Override
    public void close() {
        second.close();
        first.close();
    }

    /**
     * What the first ear heard, and what the second heard of the same sound; nothing heard is an opinion, too. How sure
     * it is of each word the second tells, who counts for more.
     */
    static Utterance weighed(Utterance heard, List<Hypothesis> again) {
        Map<String, Hypothesis> both = new LinkedHashMap<>();
        add(both, heard.alternatives(), FIRST);
        add(both, again, 1 - FIRST);
        List<Hypothesis> ranked = new ArrayList<>(both.values());
        ranked.sort(Comparator.comparingDouble(Hypothesis::confidence).reversed());
        ranked.subList(Math.min(1, ranked.size()), ranked.size()).removeIf(each -> each.confidence() < FAINT);
        return new Utterance(ranked, heard.startSeconds(), heard.endSeconds());
    }

    private static void add(Map<String, Hypothesis> both, List<Hypothesis> alternatives, double weight) {
        for (Hypothesis each : alternatives) {
            both.merge(
                    each.words(),
                    new Hypothesis(each.words(), weight * each.confidence(), each.details()),
                    (before, more) ->
                            new Hypothesis(before.words(), before.confidence() + more.confidence(), more.details()));
        }
    }
}
