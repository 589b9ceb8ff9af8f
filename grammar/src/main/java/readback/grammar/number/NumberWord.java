package readback.grammar.number;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A word that can stand in a spoken number.
 *
 * @param kind its part in the number
 * @param value what it is worth: the digit, the tens, the denominator of a fraction; 0 where the kind says all
 */
record NumberWord(Kind kind, int value, @Nullable BigDecimal numeral) {

    enum Kind {
        DIGIT,
        /** The letter name of nought: a digit, but never a number alone. */
        OH,
        TEEN,
        TENS,
        HUNDRED,
        THOUSAND,
        POINT,
        AND,
        A,
        /** The denominator of a fraction. */
        PARTS,
        MINUS,
        PLUS,
        BELOW,
        /** Says the next digit more than once; the value says how often. */
        TIMES,
        /** Figures, as they are typed. */
        NUMERAL
    }

    /** Zero to nine. */
    static final List<String> DIGITS =
            List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    /** Ten to nineteen. */
    static final List<String> TEENS = List.of(
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");

    /** Twenty to ninety. */
    static final List<String> TENS =
            List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

    private static final Map<String, NumberWord> WORDS = words();
    private static final Pattern FIGURES = Pattern.compile("-?(\\d{1,9}(\\.\\d{1,9})?|\\.\\d{1,9})");
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,2})/(2|4|8|10|16|100)");

    private NumberWord(Kind kind, int value) {
        this(kind, value, null);
    }

    /** The part that a lower-case word can have in a number, or null if it has none. */
    static @Nullable NumberWord of(String word) {
        NumberWord known = WORDS.get(word);
        return known != null ? known : figures(word);
    }

    private static @Nullable NumberWord figures(String word) {
        char first = word.isEmpty() ? 'x' : word.charAt(0);
        if (first != '-' && first != '.' && (first < '0' || first > '9')) {
            return null;
        }
        if (FIGURES.matcher(word).matches()) {
            return new NumberWord(Kind.NUMERAL, 0, new BigDecimal(word));
        }
        var fraction = FRACTION.matcher(word);
        if (fraction.matches()) {
            BigDecimal numerator = new BigDecimal(fraction.group(1));
            return new NumberWord(Kind.NUMERAL, 0, numerator.divide(new BigDecimal(fraction.group(2))));
        }
        return null;
    }

    private static Map<String, NumberWord> words() {
        Map<String, NumberWord> words = new HashMap<>();
        put(words, Kind.DIGIT, 0, 1, DIGITS);
        words.put("nought", new NumberWord(Kind.DIGIT, 0));
        words.put("niner", new NumberWord(Kind.DIGIT, 9));
        words.put("oh", new NumberWord(Kind.OH, 0));
        words.put("o", new NumberWord(Kind.OH, 0));
        put(words, Kind.TEEN, 10, 1, TEENS);
        put(words, Kind.TENS, 20, 10, TENS);
        words.put("hundred", new NumberWord(Kind.HUNDRED, 0));
        words.put("thousand", new NumberWord(Kind.THOUSAND, 0));
        words.put("point", new NumberWord(Kind.POINT, 0));
        words.put("decimal", new NumberWord(Kind.POINT, 0));
        words.put("and", new NumberWord(Kind.AND, 0));
        words.put("a", new NumberWord(Kind.A, 0));
        words.put("an", new NumberWord(Kind.A, 0));
        parts(words, 2, "half", "halves");
        parts(words, 4, "quarter", "quarters");
        parts(words, 8, "eighth", "eighths");
        // as it is often written
        parts(words, 8, "eighth", "eights");
        parts(words, 10, "tenth", "tenths");
        parts(words, 16, "sixteenth", "sixteenths");
        parts(words, 100, "hundredth", "hundredths");
        words.put("minus", new NumberWord(Kind.MINUS, 0));
        words.put("negative", new NumberWord(Kind.MINUS, 0));
        words.put("plus", new NumberWord(Kind.PLUS, 0));
        words.put("below", new NumberWord(Kind.BELOW, 0));
        words.put("double", new NumberWord(Kind.TIMES, 2));
        words.put("triple", new NumberWord(Kind.TIMES, 3));
        return words;
    }

    private static void put(Map<String, NumberWord> words, Kind kind, int first, int step, List<String> names) {
        int value = first;
        for (String name : names) {
            words.put(name, new NumberWord(kind, value));
            value += step;
        }
    }

    private static void parts(Map<String, NumberWord> words, int denominator, String one, String several) {
        words.put(one, new NumberWord(Kind.PARTS, denominator));
        words.put(several, new NumberWord(Kind.PARTS, denominator));
    }
}
