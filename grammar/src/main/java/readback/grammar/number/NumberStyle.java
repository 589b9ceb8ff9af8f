package readback.grammar.number;

import java.math.BigDecimal;
import java.util.Optional;

/** A way of saying a number. Each says only the values that it suits. */
public enum NumberStyle {
    /** "one hundred eighteen point five". */
    CARDINAL,
    /** "a hundred and eighteen". */
    CARDINAL_WITH_AND,
    /** "one one eight point five", as aviation says it: FAA AIM 4-2-8. */
    DIGITS,
    /** "one eighteen", "three forty two", "twelve fifty", "one oh five". */
    GROUPED,
    /** "sixty eight and a half", "seven eighths", "two and three quarters". */
    FRACTION;

    private static final int LARGEST = 99_999;
    private static final BigDecimal SIXTEEN = BigDecimal.valueOf(16);

    /**
     * The value in words of this style, or empty if nobody says it so.
     *
     * @param value -99,999 to 99,999; its decimals are said as they stand, "118.0" ends in "point zero"
     */
    public Optional<String> say(BigDecimal value) {
        BigDecimal size = value.abs();
        if (size.compareTo(BigDecimal.valueOf(LARGEST)) > 0) {
            return Optional.empty();
        }
        Optional<String> words = this == FRACTION ? fraction(size) : decimal(size);
        return value.signum() < 0 ? words.map(said -> "minus " + said) : words;
    }

    private Optional<String> decimal(BigDecimal size) {
        int whole = size.intValue();
        Optional<String> said = whole(whole);
        if (size.scale() <= 0) {
            return said;
        }
        String digits = size.toPlainString().substring(size.toPlainString().indexOf('.') + 1);
        return said.map(words -> words + " point " + digits(digits, "zero"));
    }

    private Optional<String> whole(int value) {
        return switch (this) {
            case CARDINAL -> Optional.of(cardinal(value, " "));
            case CARDINAL_WITH_AND ->
                value > 100 && value % 100 != 0
                        ? Optional.of(article(cardinal(value, " and "), value))
                        : Optional.empty();
            case DIGITS -> value > 9 ? Optional.of(digits(Integer.toString(value), "zero")) : Optional.empty();
            case GROUPED -> grouped(value);
            case FRACTION -> Optional.empty();
        };
    }

    private static String article(String words, int value) {
        return value < 200 ? "a" + words.substring("one".length()) : words;
    }

    private static Optional<String> grouped(int value) {
        int hundreds = value / 100;
        int rest = value % 100;
        boolean group = hundreds >= 1 && hundreds <= 19 && hundreds != 10;
        if (!group || rest == 0) {
            // "twelve hundred", but one hundred is said as it is
            return group && rest == 0 && hundreds > 10
                    ? Optional.of(belowHundred(hundreds) + " hundred")
                    : Optional.empty();
        }
        String tail = rest < 10 ? "oh " + NumberWord.DIGITS.get(rest) : belowHundred(rest);
        return Optional.of(belowHundred(hundreds) + " " + tail);
    }

    private static Optional<String> fraction(BigDecimal size) {
        BigDecimal sixteenths = size.remainder(BigDecimal.ONE).multiply(SIXTEEN).stripTrailingZeros();
        if (sixteenths.signum() == 0 || sixteenths.scale() > 0) {
            return Optional.empty();
        }
        int parts = 16;
        int over = sixteenths.intValueExact();
        while (over % 2 == 0) {
            over /= 2;
            parts /= 2;
        }
        String name = switch (parts) {
            case 2 -> "half";
            case 4 -> over == 1 ? "quarter" : "quarters";
            case 8 -> over == 1 ? "eighth" : "eighths";
            default -> over == 1 ? "sixteenth" : "sixteenths";
        };
        String share = (over == 1 ? parts == 8 ? "an" : "a" : belowHundred(over)) + " " + name;
        int whole = size.intValue();
        return Optional.of(whole == 0 ? share : cardinal(whole, " ") + " and " + share);
    }

    private static String cardinal(int value, String beforeTens) {
        if (value < 100) {
            return belowHundred(value);
        }
        if (value < 1000) {
            int rest = value % 100;
            return NumberWord.DIGITS.get(value / 100) + " hundred" + (rest == 0 ? "" : beforeTens + belowHundred(rest));
        }
        int rest = value % 1000;
        String thousands = belowHundred(value / 1000) + " thousand";
        if (rest == 0) {
            return thousands;
        }
        return thousands + (rest < 100 ? beforeTens + belowHundred(rest) : " " + cardinal(rest, beforeTens));
    }

    private static String belowHundred(int value) {
        if (value < 10) {
            return NumberWord.DIGITS.get(value);
        }
        if (value < 20) {
            return NumberWord.TEENS.get(value - 10);
        }
        String tens = NumberWord.TENS.get(value / 10 - 2);
        return value % 10 == 0 ? tens : tens + " " + NumberWord.DIGITS.get(value % 10);
    }

    /** Digits one by one, with another word for nought. */
    static String digits(String figures, String nought) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < figures.length(); i++) {
            int digit = figures.charAt(i) - '0';
            words.append(i == 0 ? "" : " ").append(digit == 0 ? nought : NumberWord.DIGITS.get(digit));
        }
        return words.toString();
    }
}
