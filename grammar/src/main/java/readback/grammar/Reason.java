package readback.grammar;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * Why words could not be taken: what was wrong, with its facts. What is said of it is up to the language.
 *
 * @param words heard words that it is about, as {@link Kind} has them
 * @param about the quantity that it is about
 * @param readings as {@link Kind} has them
 */
public record Reason(Kind kind, List<String> words, Optional<Quantity> about, List<Reading> readings) {

    /** What was wrong. */
    public enum Kind {
        /** Words were taken for an order or a choice, too weakly to act on it. */
        UNSURE,
        /** There were no words. */
        NOTHING_HEARD,
        /** The words mean nothing here. */
        NOTHING_KNOWN,
        /** A part of the words was not recognised. */
        PARTLY_HEARD,
        /** No meaning was heard clearly enough. */
        UNCLEAR,
        /** A number was asked for and number words were heard, too weakly to take or to pass over. */
        NUMBER_UNCLEAR,
        /** A word is not known here; {@code words} has it. */
        UNKNOWN_WORD,
        /** A number was said without what it is of; {@code words} has it. */
        UNNAMED_NUMBER,
        /** A word beside a number was not recognised. */
        UNHEARD_BESIDE_NUMBER,
        /** {@code about} is not stated in this unit; {@code words} has it. */
        OTHER_UNIT,
        /** Two values were said for {@code about}. */
        TWO_VALUES,
        /** {@code about} is to be corrected and was not said before. */
        NOTHING_TO_CORRECT,
        /** The value, first of {@code readings}, cannot be here. */
        IMPOSSIBLE,
        /** The value cannot be at all: {@code readings} has it, the least and the largest that can be. */
        OUT_OF_RANGE,
        /** There is no number. */
        NO_NUMBER,
        /** There are more number words than one number has. */
        NUMBER_TOO_LONG,
        /** A word is not part of a number; {@code words} has it. */
        NOT_OF_A_NUMBER,
        /** A number cannot begin with zero. */
        BEGINS_WITH_ZERO,
        /** The number words, first of {@code words}, are no number. */
        NOT_A_NUMBER,
        /** The number words are two numbers: {@code words} has both. */
        TWO_NUMBERS,
        /** An earlier version recorded its own sentence: {@code words} has it. */
        RECORDED_SENTENCE
    }

    public Reason {
        words = List.copyOf(words);
        readings = List.copyOf(readings);
    }

    /** A reason without facts. */
    public static Reason of(Kind kind) {
        return new Reason(kind, List.of(), Optional.empty(), List.of());
    }

    /** A reason about words. */
    public static Reason of(Kind kind, String... words) {
        return new Reason(kind, List.of(words), Optional.empty(), List.of());
    }

    static Reason of(Kind kind, Quantity about, String... words) {
        return new Reason(kind, List.of(words), Optional.of(about), List.of());
    }

    static Reason of(Kind kind, Reading value, Reading... limits) {
        List<Reading> readings = new java.util.ArrayList<>(List.of(value));
        readings.addAll(List.of(limits));
        return new Reason(kind, List.of(), Optional.of(value.quantity()), readings);
    }
}
