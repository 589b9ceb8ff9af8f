package readback.prompts.text;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Numbers for the ear. Digits are spoken singly so that thirteen and thirty cannot be confused, round hundreds and
 * thousands as words, decimals after "point": FAA Aeronautical Information Manual 4-2-8 and 4-2-9. Words are given in
 * plain spelling; how they are pronounced is up to the voice.
 */
public final class NumberVerbaliser {

    private static final List<String> DIGITS =
            List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
    private static final BigInteger HUNDRED = BigInteger.valueOf(100);
    private static final BigInteger THOUSAND = BigInteger.valueOf(1000);
    private static final BigInteger TEN_THOUSAND = BigInteger.valueOf(10_000);

    private NumberVerbaliser() {}

    /** The words for any decimal number, as in "minus four point five" or "five hundred". */
    public static String words(BigDecimal number) {
        List<String> words = new ArrayList<>();
        if (number.signum() < 0) {
            words.add("minus");
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
            words.add("point");
            digits(plain.substring(point + 1), words);
        }
        return String.join(" ", words);
    }

    private static boolean isRound(BigInteger whole) {
        return whole.signum() > 0
                && whole.compareTo(TEN_THOUSAND) < 0
                && whole.mod(HUNDRED).signum() == 0;
    }

    private static void roundWords(BigInteger whole, List<String> words) {
        int thousands = whole.divide(THOUSAND).intValue();
        int hundreds = whole.mod(THOUSAND).divide(HUNDRED).intValue();
        if (thousands > 0) {
            words.add(DIGITS.get(thousands));
            words.add("thousand");
        }
        if (hundreds > 0) {
            words.add(DIGITS.get(hundreds));
            words.add("hundred");
        }
    }

    private static void digits(String digits, List<String> words) {
        for (int i = 0; i < digits.length(); i++) {
            words.add(DIGITS.get(digits.charAt(i) - '0'));
        }
    }
}
