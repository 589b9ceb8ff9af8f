package readback.grammar;

import java.util.function.Supplier;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.SpokenNumber;

/**
 * Why an utterance could not be understood: of all the ways that failed, the reason of the one that got furthest. The
 * sentence is only made when it is asked for. Used by one thread, for one call.
 */
final class Troubles {

    private static final int STRANGE = 0;
    private static final int UNNAMED = 1;
    private static final int SPECIFIC = 2;
    /** Letters of a quotation. */
    private static final int LONGEST = 60;

    private final ParseChart utterance;
    private int furthest = -1;
    private int rank = -1;
    private Supplier<Meaning.NotUnderstood> reason;

    Troubles(ParseChart utterance) {
        this.utterance = utterance;
        this.reason = () ->
                new Meaning.NotUnderstood(quoted(utterance.words(0, utterance.length())), "I did not understand that.");
    }

    /** The best reason, or that the words mean nothing here. */
    Meaning.NotUnderstood reason() {
        return reason.get();
    }

    private void record(int at, int newRank, Supplier<Meaning.NotUnderstood> newReason) {
        if (newRank > rank || (newRank == rank && at > furthest)) {
            rank = newRank;
            furthest = at;
            reason = newReason;
        }
    }

    /** Nothing that is known starts here. */
    void strange(int at) {
        if (rank <= STRANGE
                && utterance.matches(at).isEmpty()
                && utterance.number(at).isEmpty()) {
            record(at, STRANGE, () -> {
                String word = quoted(utterance.word(at));
                return word.equals(Vocabulary.UNKNOWN)
                        ? new Meaning.NotUnderstood(word, "I did not catch all of that.")
                        : new Meaning.NotUnderstood(word, "I do not know \"" + word + "\" here.");
            });
        }
    }

    /** A number that nobody asked for. */
    void unnamed(int from, int to) {
        record(from, UNNAMED, () -> {
            String number = quoted(utterance.words(from, to));
            return new Meaning.NotUnderstood(
                    number, "I heard \"" + number + "\", but not what it is of. Say its name first.");
        });
    }

    void notANumber(int from, int to) {
        record(from, SPECIFIC, () -> {
            SpokenNumber.NotANumber refused = utterance.refusal(from, to);
            String where = quoted(refused.where());
            return new Meaning.NotUnderstood(where, refused.why().replace(refused.where(), where));
        });
    }

    /** A word that may have been part of a number was not recognised. */
    void unheard(int at) {
        record(
                at,
                SPECIFIC,
                () -> new Meaning.NotUnderstood(
                        utterance.word(at), "A word beside the number was not clear. Say the number again."));
    }

    void wrongUnit(int at, QuantityWords quantity) {
        record(at, SPECIFIC, () -> {
            String unit = utterance.word(at);
            return new Meaning.NotUnderstood(
                    unit, "The " + name(quantity) + " is not stated in " + unit + ". Say it again with its unit.");
        });
    }

    void twice(int at, QuantityWords quantity) {
        record(
                at,
                SPECIFIC,
                () -> new Meaning.NotUnderstood(
                        utterance.words(0, at), "I heard two values for the " + name(quantity) + ". Say one."));
    }

    void correctsNothing(int at, QuantityWords quantity) {
        record(
                at,
                SPECIFIC,
                () -> new Meaning.NotUnderstood(
                        utterance.words(0, at),
                        "The " + name(quantity) + " was not said before, so I do not know what to correct."));
    }

    /** Words as they are quoted, cut where nobody would listen to the rest. */
    private static String quoted(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + "…";
    }

    private static String name(QuantityWords quantity) {
        return quantity.names().get(0).words();
    }
}
