package readback.grammar.number;

import java.math.BigDecimal;
import java.util.List;

/** What a run of number words is worth. */
public sealed interface SpokenNumber {

    /**
     * One value that the words admit.
     *
     * @param value exactly the digits that were said
     * @param naturalness 0 to 1: how usual it is to say the value this way; comparable between values of the same words
     */
    record Value(BigDecimal value, double naturalness) {}

    /**
     * The values that the words admit.
     *
     * @param values most natural first, no value twice, never empty
     */
    record Admitted(List<Value> values) implements SpokenNumber {
        public Admitted {
            values = List.copyOf(values);
            if (values.isEmpty()) {
                throw new IllegalArgumentException("a number without a value");
            }
        }
    }

    /**
     * Number words that are not one number.
     *
     * @param where the words that do not fit
     * @param why what is wrong with them
     * @param before the number before them, where they are a second one; empty otherwise
     */
    record NotANumber(String where, Refusal why, String before) implements SpokenNumber {

        /** Words that do not fit for a reason of their own. */
        static NotANumber of(String where, Refusal why) {
            return new NotANumber(where, why, "");
        }
    }

    /** Why words are not one number. */
    enum Refusal {
        NO_WORDS,
        TOO_LONG,
        /** A word is no number word. */
        STRANGE_WORD,
        /** A number does not begin with zero; a word may have been lost. */
        BEGINS_WITH_ZERO,
        NO_NUMBER,
        TWO_NUMBERS
    }
}
