package readback.grammar;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;
import readback.calc.quantity.Quantity;

/**
 * Questions made of words that ask and a topic: "what's my superheat right now", "what does superheat mean". Used by
 * one thread, for one call.
 */
final class Topics {

    private static final Set<Quantity> WORKED_OUT =
            EnumSet.of(Quantity.PLATE_SUPERHEAT, Quantity.PLATE_SUBCOOLING, Quantity.TEMPERATURE_SPLIT);

    private static final double TOPIC = 0.9;

    /** The set of the words of the trade whose meaning is asked for. */
    private static final String TERMS = "term";

    private final ParseChart utterance;
    private final Ways values = new Ways();
    private final Ways meanings = new Ways();

    Topics(ParseChart utterance) {
        this.utterance = utterance;
    }

    /** A topic behind words that ask for its value, which end here. */
    void asked(int at, double score) {
        find(at, score, topic -> !topic.set().equals(TERMS), values);
    }

    /** A topic behind words that ask for its meaning, which end here. */
    void defined(int at, double score) {
        find(at, score, topic -> topic.set().equals(TERMS), meanings);
    }

    private void find(int at, double score, Predicate<Item.Topic> ofKind, Ways ways) {
        for (int place : utterance.afterOptional(at, Item.Word.FILLER)) {
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Topic topic && ofKind.test(topic) && onlyTail(match.end())) {
                    ways.add(new Meaning.Choice(topic.set(), topic.option()), score * TOPIC);
                }
            }
        }
    }

    /**
     * What a word means is no value and no answer. A question for what is worked out comes before one for a value of
     * that name; any other value comes first.
     *
     * @param inFull whether the utterance is, word for word, something that can be said anywhere
     */
    void into(Ways found, boolean inFull) {
        if (!meanings.isEmpty() && !inFull) {
            found.removeIf(meaning -> true);
            found.addAll(meanings);
        } else if (!values.isEmpty()) {
            found.removeIf(meaning -> meaning instanceof Meaning.Ordered ordered && asksForWorkedOut(ordered));
            boolean asked = found.any(meaning -> meaning instanceof Meaning.Ordered ordered
                    && ordered.about().isPresent());
            if (!asked) {
                found.addAll(values);
            }
        }
    }

    /** "What was the superheat": the one that was worked out, not that of the rating plate. */
    static boolean asksForWorkedOut(Meaning.Ordered ordered) {
        return ordered.command() == Command.SAY_AGAIN
                && ordered.about().filter(WORKED_OUT::contains).isPresent();
    }

    private boolean onlyTail(int at) {
        if (at == utterance.length()) {
            return true;
        }
        for (ParseChart.Match match : utterance.matches(at)) {
            boolean small = utterance.isSmall(match, Item.Word.TAIL) || utterance.isSmall(match, Item.Word.FILLER);
            if (small && onlyTail(match.end())) {
                return true;
            }
        }
        return false;
    }
}
