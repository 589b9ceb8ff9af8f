package readback.grammar.number;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import readback.grammar.number.NumberWord.Kind;
import readback.grammar.number.SpokenNumber.Value;

/** The values of one unbroken run of number words. Used once, by one thread. */
final class NumberRun {

    private static final int MOST_DIGITS = 5;
    private static final double USUAL = 1;
    private static final double FAIR = 0.8;
    /** "hundred and ten": the word before may have been lost. */
    private static final double LACKING = 0.6;
    /** "eighteen five" is said for 18.5 and for 185. */
    private static final double AMBIGUOUS = 0.4;

    private final NumberWord[] words;
    private final List<Value> found = new ArrayList<>(2);

    NumberRun(NumberWord[] words) {
        this.words = words;
    }

    List<Value> values() {
        int from = 0;
        int to = words.length;
        boolean negative = false;
        if (is(from, Kind.MINUS)) {
            negative = true;
            from++;
        } else if (is(from, Kind.PLUS)) {
            from++;
        } else if (to >= 2 && is(to - 1, Kind.BELOW)) {
            negative = true;
            to--;
        } else if (to >= 3 && is(to - 2, Kind.BELOW) && is(to - 1, Kind.DIGIT) && words[to - 1].value() == 0) {
            negative = true;
            to -= 2;
        }
        if (from < to) {
            unsigned(from, to);
        }
        return negative ? negated() : found;
    }

    private List<Value> negated() {
        List<Value> negative = new ArrayList<>(found.size());
        for (Value value : found) {
            // "minus zero" and "minus minus four" are only misheard numbers
            if (value.value().signum() > 0) {
                negative.add(new Value(value.value().negate(), value.naturalness()));
            }
        }
        return negative;
    }

    private boolean is(int at, Kind kind) {
        return at < words.length && words[at].kind() == kind;
    }

    private void admit(@Nullable BigDecimal value, double naturalness) {
        if (value == null) {
            return;
        }
        for (int i = 0; i < found.size(); i++) {
            Value before = found.get(i);
            if (before.value().compareTo(value) == 0) {
                if (before.naturalness() < naturalness) {
                    found.set(i, new Value(value, naturalness));
                }
                return;
            }
        }
        int place = found.size();
        while (place > 0 && found.get(place - 1).naturalness() < naturalness) {
            place--;
        }
        found.add(place, new Value(value, naturalness));
    }

    private void unsigned(int from, int to) {
        if (to - from == 1 && is(from, Kind.NUMERAL)) {
            admit(words[from].numeral(), USUAL);
            return;
        }
        int point = indexOf(Kind.POINT, from, to);
        if (point >= 0) {
            decimals(from, point, to);
            return;
        }
        if (words[to - 1].kind() == Kind.PARTS) {
            fraction(from, to);
            return;
        }
        long whole = whole(from, to);
        if (whole >= 0) {
            admit(BigDecimal.valueOf(whole), lacksMultiplier(from) ? LACKING : USUAL);
        }
        dropsThePoint(from, to);
    }

    /** Hundred without one before it. */
    private boolean lacksMultiplier(int from) {
        return is(from, Kind.HUNDRED);
    }

    private int indexOf(Kind kind, int from, int to) {
        for (int i = from; i < to; i++) {
            if (words[i].kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    private void decimals(int from, int point, int to) {
        long whole = point == from || (point == from + 1 && is(from, Kind.OH)) ? 0 : whole(from, point);
        if (whole < 0 || lacksMultiplier(from)) {
            return;
        }
        StringBuilder digits = new StringBuilder();
        boolean pair = false;
        if (!appendDigits(digits, point + 1, to)) {
            int two = belowHundred(point + 1, to);
            if (two < 10) {
                return;
            }
            digits.setLength(0);
            digits.append(two);
            pair = true;
        }
        admit(new BigDecimal(whole + "." + digits), pair ? FAIR : USUAL);
    }

    private boolean appendDigits(StringBuilder digits, int from, int to) {
        int i = from;
        while (i < to) {
            int times = 1;
            if (words[i].kind() == Kind.TIMES) {
                times = words[i].value();
                i++;
            }
            if (i >= to || (words[i].kind() != Kind.DIGIT && words[i].kind() != Kind.OH)) {
                return false;
            }
            for (int k = 0; k < times; k++) {
                digits.append((char) ('0' + words[i].value()));
            }
            i++;
        }
        return from < to;
    }

    /** "a half", "three quarters", "two and a half", "one and five eighths", "thirteen sixteenths". */
    private void fraction(int from, int to) {
        int parts = words[to - 1].value();
        int and = indexOf(Kind.AND, from, to);
        if (and >= 0) {
            int after = indexOf(Kind.AND, and + 1, to);
            if (after >= 0) {
                and = after;
            }
            long whole = whole(from, and);
            int over = numerator(and + 1, to - 1, parts);
            if (whole > 0 && over > 0) {
                admit(BigDecimal.valueOf(whole).add(share(over, parts)), USUAL);
            }
            return;
        }
        int over = numerator(from, to - 1, parts);
        if (over > 0) {
            admit(share(over, parts), USUAL);
        }
        // "one three sixteenths" can be 1 3/16, and with lost words 13/16
        if (to - from == 3 && digit(from) > 0 && numerator(from + 1, to - 1, parts) > 0) {
            int rest = numerator(from + 1, to - 1, parts);
            admit(BigDecimal.valueOf(digit(from)).add(share(rest, parts)), FAIR);
            int joined = digit(from) * 10 + rest;
            if (rest < 10 && is(from + 1, Kind.DIGIT) && joined < parts) {
                admit(share(joined, parts), FAIR);
            }
        }
    }

    private static BigDecimal share(int over, int parts) {
        return BigDecimal.valueOf(over).divide(BigDecimal.valueOf(parts));
    }

    /** The numerator, below the denominator; 0 if the words are none. */
    private int numerator(int from, int to, int parts) {
        if (from == to) {
            return 1;
        }
        int over = to - from == 1 && is(from, Kind.A) ? 1 : belowHundred(from, to);
        return over > 0 && over < parts ? over : 0;
    }

    private int digit(int at) {
        return is(at, Kind.DIGIT) ? words[at].value() : -1;
    }

    /** The value of a whole number in any of the accepted styles, or -1. */
    private long whole(int from, int to) {
        if (from >= to) {
            return -1;
        }
        long value = cardinal(from, to);
        if (value < 0) {
            value = grouped(from, to);
        }
        return value >= 0 ? value : digits(from, to);
    }

    private long digits(int from, int to) {
        if (words[from].kind() != Kind.DIGIT && words[from].kind() != Kind.TIMES) {
            return -1;
        }
        StringBuilder digits = new StringBuilder();
        boolean all = appendDigits(digits, from, to);
        boolean number = all && digits.length() <= MOST_DIGITS && (digits.length() == 1 || digits.charAt(0) != '0');
        return number ? Long.parseLong(digits.toString()) : -1;
    }

    private long cardinal(int from, int to) {
        int thousand = indexOf(Kind.THOUSAND, from, to);
        if (thousand < 0) {
            return hundreds(from, to, true);
        }
        long thousands = thousands(from, thousand);
        if (thousands <= 0) {
            return -1;
        }
        if (thousand + 1 == to) {
            return thousands * 1000;
        }
        long rest;
        if (is(thousand + 1, Kind.AND)) {
            rest = belowHundred(thousand + 2, to);
        } else {
            rest = is(thousand + 1, Kind.HUNDRED) ? -1 : hundreds(thousand + 1, to, false);
        }
        return rest <= 0 ? -1 : thousands * 1000 + rest;
    }

    private long thousands(int from, int to) {
        if (to - from == 1 && is(from, Kind.A)) {
            return 1;
        }
        int value = belowHundred(from, to);
        // aviation says "one three thousand five hundred": FAA AIM 4-2-8
        return value < 0 && to - from == 2 ? digits(from, to) : value;
    }

    private long hundreds(int from, int to, boolean alone) {
        int hundred = indexOf(Kind.HUNDRED, from, to);
        if (hundred < 0) {
            return belowHundred(from, to);
        }
        long count;
        if (hundred == from) {
            count = alone ? 1 : -1;
        } else if (hundred == from + 1 && is(from, Kind.A)) {
            count = 1;
        } else {
            count = belowHundred(from, hundred);
            // "twelve hundred", but neither "twenty hundred" nor "two thousand twelve hundred"
            if (count > 9 && (!alone || count % 10 == 0)) {
                return -1;
            }
        }
        if (count <= 0) {
            return -1;
        }
        if (hundred + 1 == to) {
            return count * 100;
        }
        int rest = belowHundred(is(hundred + 1, Kind.AND) ? hundred + 2 : hundred + 1, to);
        return rest <= 0 ? -1 : count * 100 + rest;
    }

    /** 0 to 99 as a cardinal, or -1. */
    private int belowHundred(int from, int to) {
        if (to - from == 1) {
            return switch (words[from].kind()) {
                case DIGIT, TEEN, TENS -> words[from].value();
                default -> -1;
            };
        }
        boolean both = to - from == 2 && is(from, Kind.TENS) && digit(from + 1) > 0;
        return both ? words[from].value() + words[from + 1].value() : -1;
    }

    /** "one eighteen", "three forty two", "twelve fifty", "eleven oh five". */
    private long grouped(int from, int to) {
        if (digit(from) > 0 && to - from >= 2) {
            int pair = belowHundred(from + 1, to);
            return pair >= 10 ? digit(from) * 100L + pair : -1;
        }
        if (is(from, Kind.TEEN) && to - from >= 2) {
            int pair = belowHundred(from + 1, to);
            boolean oh = to - from == 3 && (is(from + 1, Kind.OH) || digit(from + 1) == 0) && digit(from + 2) > 0;
            if (oh) {
                pair = digit(from + 2);
            }
            return oh || pair >= 10 ? words[from].value() * 100L + pair : -1;
        }
        return -1;
    }

    /** "eighteen five", "sixty eight five", "one eighteen five": a point may have been dropped, or not. */
    private void dropsThePoint(int from, int to) {
        if (to - from < 2 || digit(to - 1) <= 0) {
            return;
        }
        long before = belowHundred(from, to - 1);
        if (before < 10 || (before % 10 == 0 && before >= 20)) {
            before = grouped(from, to - 1);
            boolean roundTens = before > 0 && is(to - 2, Kind.TENS);
            if (before < 0 || before > 999 || roundTens) {
                return;
            }
        }
        long joined = 10 * before + digit(to - 1);
        admit(BigDecimal.valueOf(joined, 1), AMBIGUOUS);
        admit(BigDecimal.valueOf(joined), AMBIGUOUS);
    }
}
