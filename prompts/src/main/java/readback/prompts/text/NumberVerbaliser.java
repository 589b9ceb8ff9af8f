package readback.prompts.text;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import readback.calc.quantity.Unit;

/**
 * Numbers for the ear, in the words of a language. Digits are spoken singly so that thirteen and thirty cannot be
 * confused, round hundreds and thousands as words, decimals after "point": FAA Aeronautical Information Manual 4-2-8
 * and 4-2-9. Words are given in plain spelling; how they are pronounced is up to the voice.
 */
public final class NumberVerbaliser {

    private static final BigInteger HUNDRED = BigInteger.valueOf(100);
    private static final BigInteger THOUSAND = BigInteger.valueOf(1000);
    private static final BigInteger TEN_THOUSAND = BigInteger.valueOf(10_000);

    private static final int FIRST_OF_TWO_WORDS = 20;
    private static final int TOO_MANY_TO_COUNT = 100;

    private final UnaryOperator<String> text;

    /** @param text the texts of the language, by key */
    NumberVerbaliser(UnaryOperator<String> text) {
        this.text = text;
    }

    /** The words for any decimal number, as in "minus four point five" or "five hundred". */
    public String words(BigDecimal number) {
        List<String> words = new ArrayList<>();
        if (number.signum() < 0) {
            words.add(text.apply("number.minus"));
        }
        BigDecimal size = number.abs();
        BigInteger whole = size.toBigInteger();
        String plain = size.toPlainString();
        int point = plain.indexOf('.');
        if (point < 0 && isRound(whole)) {
            roundWords(whole, words);
        } else {
            digits(whole.toString(), words);
        }
        if (point >= 0) {
            words.add(text.apply("number.point"));
            digits(plain.substring(point + 1), words);
        }
        return String.join(" ", words);
    }

    /**
     * How many there are, as people count: "twenty five minutes". Nobody writes it down, so that it need not be told
     * digit by digit.
     */
    String count(int number) {
        if (number < 0 || number >= TOO_MANY_TO_COUNT) {
            return words(BigDecimal.valueOf(number));
        }
        int ones = number % 10;
        return number < FIRST_OF_TWO_WORDS || ones == 0
                ? text.apply("number." + number)
                : text.apply("number." + (number - ones)) + " " + text.apply("number." + ones);
    }

    /** "seven pounds, four ounces", digits singly; a part that is nothing is left out. */
    String words(PoundsAndOunces mass) {
        String pounds = counted(mass.pounds(), Unit.POUND);
        String ounces = counted(mass.ounces(), Unit.OUNCE);
        String both =
                mass.pounds().signum() == 0 ? ounces : mass.ounces().signum() == 0 ? pounds : pounds + ", " + ounces;
        return mass.negative() ? text.apply("number.minus") + " " + both : both;
    }

    private String counted(BigDecimal number, Unit unit) {
        return words(number) + " " + unit(number.compareTo(BigDecimal.ONE) == 0, unit);
    }

    /** The unit where it alone is counted, and there is a single one or not: "minute", "minutes". */
    String unit(boolean one, Unit unit) {
        return text.apply("term.unit." + unit.name() + (one ? ".one" : ""));
    }

    /** "one and five eighths". */
    String words(TubeFraction size) {
        if (size.numerator() == 0) {
            return count(size.whole());
        }
        String several = size.numerator() == 1 ? "" : ".several";
        String part = count(size.numerator()) + " " + text.apply("fraction." + size.denominator() + several);
        return size.whole() == 0 ? part : count(size.whole()) + " " + text.apply("fraction.and") + " " + part;
    }

    private static boolean isRound(BigInteger whole) {
        return whole.signum() > 0
                && whole.compareTo(TEN_THOUSAND) < 0
                && whole.mod(HUNDRED).signum() == 0;
    }

    private void roundWords(BigInteger whole, List<String> words) {
        int thousands = whole.divide(THOUSAND).intValue();
        int hundreds = whole.mod(THOUSAND).divide(HUNDRED).intValue();
        if (thousands > 0) {
            words.add(count(thousands));
            words.add(text.apply("number.thousand"));
        }
        if (hundreds > 0) {
            words.add(count(hundreds));
            words.add(text.apply("number.hundred"));
        }
    }

    private void digits(String digits, List<String> words) {
        for (int i = 0; i < digits.length(); i++) {
            words.add(count(digits.charAt(i) - '0'));
        }
    }
}
