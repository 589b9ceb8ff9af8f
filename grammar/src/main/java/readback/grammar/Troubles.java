package readback.grammar;

import org.jspecify.annotations.Nullable;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.SpokenNumber;

/**
 * Why an utterance could not be understood: of all the ways that failed, the reason of the one that got furthest. Used by
 * one thread, for one call.
 */
final class Troubles {

    private static final int STRANGE = 0;
    private static final int UNNAMED = 1;
    private static final int SPECIFIC = 2;

    private int furthest = -1;
    private int rank = -1;
    private Meaning.@Nullable NotUnderstood reason;

    /** The best reason, or that the words mean nothing here. */
    Meaning.NotUnderstood reason(Utterance utterance) {
        Meaning.NotUnderstood known = reason;
        return known != null
                ? known
                : new Meaning.NotUnderstood(utterance.words(0, utterance.length()), "I did not understand that.");
    }

    private boolean matters(int at, int newRank) {
        if (newRank < rank || (newRank == rank && at <= furthest)) {
            return false;
        }
        rank = newRank;
        furthest = at;
        return true;
    }

    /** Nothing that is known starts here. */
    void strange(Utterance utterance, int at) {
        if (utterance.matches(at).isEmpty() && utterance.number(at).isEmpty() && matters(at, STRANGE)) {
            String word = utterance.word(at);
            reason = word.equals(Vocabulary.UNKNOWN)
                    ? new Meaning.NotUnderstood(word, "I did not catch all of that.")
                    : new Meaning.NotUnderstood(word, "I do not know \"" + word + "\" here.");
        }
    }

    /** A number that nobody asked for. */
    void unnamed(Utterance utterance, int from, int to) {
        if (matters(from, UNNAMED)) {
            String number = utterance.words(from, to);
            reason = new Meaning.NotUnderstood(
                    number, "I heard \"" + number + "\", but not what it is of. Say its name first.");
        }
    }

    void notANumber(int at, SpokenNumber.NotANumber refused) {
        if (matters(at, SPECIFIC)) {
            reason = new Meaning.NotUnderstood(refused.where(), refused.why());
        }
    }

    /** A word that may have been part of a number was not recognised. */
    void unheard(Utterance utterance, int at) {
        if (matters(at, SPECIFIC)) {
            reason = new Meaning.NotUnderstood(
                    utterance.word(at), "A word beside the number was not clear. Say the number again.");
        }
    }

    void wrongUnit(Utterance utterance, int at, QuantityWords quantity) {
        if (matters(at, SPECIFIC)) {
            String unit = utterance.word(at);
            reason = new Meaning.NotUnderstood(
                    unit, "The " + name(quantity) + " is not stated in " + unit + ". Say it again with its unit.");
        }
    }

    void twice(Utterance utterance, int at, QuantityWords quantity) {
        if (matters(at, SPECIFIC)) {
            reason = new Meaning.NotUnderstood(
                    utterance.words(0, at), "I heard two values for the " + name(quantity) + ". Say one.");
        }
    }

    void correctsNothing(Utterance utterance, int at, QuantityWords quantity) {
        if (matters(at, SPECIFIC)) {
            reason = new Meaning.NotUnderstood(
                    utterance.words(0, at),
                    "The " + name(quantity) + " was not said before, so I do not know what to correct.");
        }
    }

    private static String name(QuantityWords quantity) {
        return quantity.names().get(0).words();
    }
}
