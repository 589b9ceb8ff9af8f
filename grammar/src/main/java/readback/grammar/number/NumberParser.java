package readback.grammar.number;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.grammar.number.NumberWord.Kind;
import readback.grammar.number.SpokenNumber.Admitted;
import readback.grammar.number.SpokenNumber.NotANumber;
import readback.grammar.number.SpokenNumber.Refusal;
import readback.grammar.number.SpokenNumber.Value;

/**
 * From number words to values. A run of number words is one number or none: nothing is taken from the middle of a run
 * and two numbers are never joined, so a lost or a wrong word makes a refusal rather than another value.
 *
 * <p>Numbers go to 99,999, with any count of decimals. Stateless.
 */
public final class NumberParser {

    private static final int MOST_WORDS = 24;
    private static final double CLEAR = 0.5;

    private static final Set<Kind> COUNTED =
            EnumSet.of(Kind.DIGIT, Kind.TEEN, Kind.TENS, Kind.HUNDRED, Kind.THOUSAND, Kind.NUMERAL);

    private NumberParser() {}

    /** The words of the whole numbers, from "zero" to "ninety", then "hundred" and "thousand". */
    public static List<String> cardinals() {
        return Stream.of(NumberWord.DIGITS, NumberWord.TEENS, NumberWord.TENS, List.of("hundred", "thousand"))
                .flatMap(List::stream)
                .toList();
    }

    /**
     * Where the run of number words that starts at a position ends, exclusive; the position itself if none starts
     * there. "And" and "a" belong to the run only where a number can go on after them.
     */
    public static int endOfRun(List<String> words, int from) {
        if (!startsAt(words, from)) {
            return from;
        }
        int end = from;
        while (end < words.size()) {
            NumberWord word = NumberWord.of(words.get(end));
            if (word == null) {
                break;
            }
            if ((word.kind() == Kind.AND && !startsAt(words, end + 1))
                    || (word.kind() == Kind.A && !multiplies(words, end + 1))) {
                break;
            }
            end++;
        }
        return end;
    }

    /** How many of the words are worth something in a number; "and", "a" and "point" are not. */
    public static int countOf(List<String> words) {
        int count = 0;
        for (String word : words) {
            NumberWord part = NumberWord.of(word);
            count += part != null && COUNTED.contains(part.kind()) ? 1 : 0;
        }
        return count;
    }

    private static boolean startsAt(List<String> words, int at) {
        NumberWord word = at < words.size() ? NumberWord.of(words.get(at)) : null;
        if (word == null) {
            return false;
        }
        return switch (word.kind()) {
            case AND, BELOW -> false;
            case A -> multiplies(words, at + 1);
            default -> true;
        };
    }

    private static boolean multiplies(List<String> words, int at) {
        NumberWord word = at < words.size() ? NumberWord.of(words.get(at)) : null;
        return word != null
                && (word.kind() == Kind.HUNDRED || word.kind() == Kind.THOUSAND || word.kind() == Kind.PARTS);
    }

    /** Every value that the words admit as one number, or why they are none. */
    public static SpokenNumber read(List<String> words) {
        return read(words, 0, words.size());
    }

    /** The same for the words from one position to another, exclusive. */
    public static SpokenNumber read(List<String> words, int from, int to) {
        List<Value> values = values(words, from, to);
        return values.isEmpty() ? refusal(words, from, to) : new Admitted(values);
    }

    /**
     * The values that the words from one position to another admit, most natural first; none where {@link #read}
     * refuses, at a fraction of its cost.
     */
    public static List<Value> values(List<String> words, int from, int to) {
        if (from >= to || to - from > MOST_WORDS) {
            return List.of();
        }
        NumberWord[] parts = parts(words, from, to);
        return parts == null ? List.of() : new NumberRun(parts).values();
    }

    /** The words as parts of a number, or null if one of them is none. */
    private static NumberWord @Nullable [] parts(List<String> words, int from, int to) {
        NumberWord[] parts = new NumberWord[to - from];
        for (int i = from; i < to; i++) {
            NumberWord word = NumberWord.of(words.get(i));
            if (word == null) {
                return null;
            }
            parts[i - from] = word;
        }
        return parts;
    }

    private static NotANumber refusal(List<String> words, int from, int to) {
        if (from >= to) {
            return NotANumber.of("", Refusal.NO_WORDS);
        }
        if (to - from > MOST_WORDS) {
            return NotANumber.of(join(words, from, to), Refusal.TOO_LONG);
        }
        NumberWord[] parts = parts(words, from, to);
        if (parts == null) {
            String stranger = words.subList(from, to).stream()
                    .filter(word -> NumberWord.of(word) == null)
                    .findFirst()
                    .orElseThrow();
            return NotANumber.of(stranger, Refusal.STRANGE_WORD);
        }
        int prefix = longestNumber(parts);
        String all = join(words, from, to);
        if (prefix == 0) {
            boolean nought = parts[0].kind() == Kind.OH || (parts[0].kind() == Kind.DIGIT && parts[0].value() == 0);
            return NotANumber.of(all, nought && parts.length > 1 ? Refusal.BEGINS_WITH_ZERO : Refusal.NO_NUMBER);
        }
        String first = join(words, from, from + prefix);
        String rest = join(words, from + prefix, to);
        return new NotANumber(rest, Refusal.TWO_NUMBERS, first);
    }

    private static int longestNumber(NumberWord[] parts) {
        for (int n = parts.length - 1; n > 0; n--) {
            NumberWord[] prefix = Arrays.copyOf(parts, n);
            List<Value> values = new NumberRun(prefix).values();
            // "one eighteen one" is hardly one number: the break is before its last word
            if (!values.isEmpty() && values.get(0).naturalness() >= CLEAR) {
                return n;
            }
        }
        return 0;
    }

    private static String join(List<String> words, int from, int to) {
        return String.join(" ", words.subList(from, to));
    }
}
