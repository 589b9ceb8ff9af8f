package readback.grammar;

import java.util.function.Supplier;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.SpokenNumber;

/**
 * Why an utterance could not be understood: of all the ways that failed, the reason of the one that got furthest. It is
 * only made when it is asked for. Used by one thread, for one call.
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
        this.reason =
                () -> reason(quoted(utterance.words(0, utterance.length())), Reason.of(Reason.Kind.NOTHING_KNOWN));
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
                && utterance.matches(at).length == 0
                && utterance.number(at).isEmpty()) {
            record(at, STRANGE, () -> {
                String word = quoted(utterance.word(at));
                return word.equals(Vocabulary.UNKNOWN)
                        ? reason(word, Reason.of(Reason.Kind.PARTLY_HEARD))
                        : reason(word, Reason.of(Reason.Kind.UNKNOWN_WORD, word));
            });
        }
    }

    /** A number that nobody asked for. */
    void unnamed(int from, int to) {
        record(from, UNNAMED, () -> {
            String number = quoted(utterance.words(from, to));
            return reason(number, Reason.of(Reason.Kind.UNNAMED_NUMBER, number));
        });
    }

    void notANumber(int from, int to) {
        record(from, SPECIFIC, () -> {
            SpokenNumber.NotANumber refused = utterance.refusal(from, to);
            String where = quoted(refused.where());
            return reason(where, refusal(refused, where));
        });
    }

    /** A word that may have been part of a number was not recognised. */
    void unheard(int at) {
        record(at, SPECIFIC, () -> reason(utterance.word(at), Reason.of(Reason.Kind.UNHEARD_BESIDE_NUMBER)));
    }

    void wrongUnit(int at, QuantityWords quantity) {
        record(at, SPECIFIC, () -> {
            String unit = utterance.word(at);
            return reason(unit, Reason.of(Reason.Kind.OTHER_UNIT, quantity.quantity(), unit));
        });
    }

    void twice(int at, QuantityWords quantity) {
        record(
                at,
                SPECIFIC,
                () -> reason(utterance.words(0, at), Reason.of(Reason.Kind.TWO_VALUES, quantity.quantity())));
    }

    void correctsNothing(int at, QuantityWords quantity) {
        record(
                at,
                SPECIFIC,
                () -> reason(utterance.words(0, at), Reason.of(Reason.Kind.NOTHING_TO_CORRECT, quantity.quantity())));
    }

    /** Words as they are quoted, cut where nobody would listen to the rest. */
    private static String quoted(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + "…";
    }

    private static Meaning.NotUnderstood reason(String where, Reason why) {
        return new Meaning.NotUnderstood(where, why);
    }

    private static Reason refusal(SpokenNumber.NotANumber refused, String where) {
        return switch (refused.why()) {
            case NO_WORDS -> Reason.of(Reason.Kind.NO_NUMBER);
            case TOO_LONG -> Reason.of(Reason.Kind.NUMBER_TOO_LONG);
            case STRANGE_WORD -> Reason.of(Reason.Kind.NOT_OF_A_NUMBER, where);
            case BEGINS_WITH_ZERO -> Reason.of(Reason.Kind.BEGINS_WITH_ZERO);
            case NO_NUMBER -> Reason.of(Reason.Kind.NOT_A_NUMBER, where);
            case TWO_NUMBERS -> Reason.of(Reason.Kind.TWO_NUMBERS, quoted(refused.before()), where);
        };
    }
}
