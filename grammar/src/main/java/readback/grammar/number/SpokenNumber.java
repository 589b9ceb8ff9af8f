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
     * @param why one sentence for the technician
     */
    record NotANumber(String where, String why) implements SpokenNumber {}
}
