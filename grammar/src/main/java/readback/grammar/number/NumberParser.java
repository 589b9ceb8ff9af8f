package readback.grammar.number;

import java.math.BigDecimal;
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
 * From the number words of an utterance to values. A run of number words is one number or none: nothing is taken from
 * the middle of a run and two numbers are never joined, so a lost or a wrong word makes a refusal rather than another
 * value.
 *
 * <p>Numbers go to 99,999, with any count of decimals. Immutable.
 */
public final class NumberParser {

    private static final int MOST_WORDS = 24;
    private static final double CLEAR = 0.5;

    private static final Set<Kind> COUNTED =
            EnumSet.of(Kind.DIGIT, Kind.TEEN, Kind.TENS, Kind.HUNDRED, Kind.THOUSAND, Kind.NUMERAL);

    private final List<String> words;

    /** What each word is in a number; null where it is nothing in one. */
    private final @Nullable NumberWord[] parts;

    /** @param words in lower case, without punctuation */
    public NumberParser(List<String> words) {
        this.words = List.copyOf(words);
        this.parts = new NumberWord[words.size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = NumberWord.of(words.get(i));
        }
    }

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
    public int endOfRun(int from) {
        if (!startsAt(from)) {
            return from;
        }
        int end = from;
        while (end < parts.length) {
            NumberWord word = parts[end];
            if (word == null) {
                break;
            }
            if ((word.kind() == Kind.AND && !startsAt(end + 1)) || (word.kind() == Kind.A && !multiplies(end + 1))) {
                break;
            }
            end++;
        }
        return end;
    }

    /** How many of the words are worth something in a number; "and", "a" and "point" are not. */
    public int count() {
        int count = 0;
        for (NumberWord part : parts) {
            count += part != null && COUNTED.contains(part.kind()) ? 1 : 0;
        }
        return count;
    }

    private boolean startsAt(int at) {
        NumberWord word = at < parts.length ? parts[at] : null;
        if (word == null) {
            return false;
        }
        return switch (word.kind()) {
            case AND, BELOW -> false;
            case A -> multiplies(at + 1);
            default -> true;
        };
    }

    private boolean multiplies(int at) {
        NumberWord word = at < parts.length ? parts[at] : null;
        return word != null
                && (word.kind() == Kind.HUNDRED || word.kind() == Kind.THOUSAND || word.kind() == Kind.PARTS);
    }

    /** Every value that the words admit as one number, or why they are none. */
    public SpokenNumber read() {
        return read(0, parts.length);
    }

    /** The same for the words from one position to another, exclusive. */
    public SpokenNumber read(int from, int to) {
        List<Value> values = values(from, to);
        return values.isEmpty() ? refusal(from, to) : new Admitted(values);
    }

    /**
     * The values that the words from one position to another admit, most natural first; none where {@link #read}
     * refuses, at a fraction of its cost.
     */
    public List<Value> values(int from, int to) {
        if (from >= to || to - from > MOST_WORDS) {
            return List.of();
        }
        NumberWord[] run = run(from, to);
        return run == null ? List.of() : new NumberRun(run).values();
    }

    /** Whether the word at a position is a digit by itself: a half is none, though it is less than ten. */
    public boolean isDigit(int at) {
        NumberWord word = parts[at];
        boolean single = word != null && (word.kind() == Kind.DIGIT || word.kind() == Kind.NUMERAL);
        return single
                && values(at, at + 1).stream().anyMatch(value -> value.value().compareTo(BigDecimal.TEN) < 0);
    }

    /** The words as parts of a number, or null if one of them is none. */
    private NumberWord @Nullable [] run(int from, int to) {
        NumberWord[] run = new NumberWord[to - from];
        for (int i = from; i < to; i++) {
            NumberWord word = parts[i];
            if (word == null) {
                return null;
            }
            run[i - from] = word;
        }
        return run;
    }

    private NotANumber refusal(int from, int to) {
        if (from >= to) {
            return NotANumber.of("", Refusal.NO_WORDS);
        }
        if (to - from > MOST_WORDS) {
            return NotANumber.of(join(from, to), Refusal.TOO_LONG);
        }
        NumberWord[] run = run(from, to);
        if (run == null) {
            int stranger = from;
            while (parts[stranger] != null) {
                stranger++;
            }
            return NotANumber.of(words.get(stranger), Refusal.STRANGE_WORD);
        }
        int prefix = longestNumber(run);
        String all = join(from, to);
        if (prefix == 0) {
            boolean nought = run[0].kind() == Kind.OH || (run[0].kind() == Kind.DIGIT && run[0].value() == 0);
            return NotANumber.of(all, nought && run.length > 1 ? Refusal.BEGINS_WITH_ZERO : Refusal.NO_NUMBER);
        }
        String first = join(from, from + prefix);
        String rest = join(from + prefix, to);
        return new NotANumber(rest, Refusal.TWO_NUMBERS, first);
    }

    private static int longestNumber(NumberWord[] run) {
        for (int n = run.length - 1; n > 0; n--) {
            NumberWord[] prefix = Arrays.copyOf(run, n);
            List<Value> values = new NumberRun(prefix).values();
            // "one eighteen one" is hardly one number: the break is before its last word
            if (!values.isEmpty() && values.get(0).naturalness() >= CLEAR) {
                return n;
            }
        }
        return 0;
    }

    private String join(int from, int to) {
        return String.join(" ", words.subList(from, to));
    }
}
