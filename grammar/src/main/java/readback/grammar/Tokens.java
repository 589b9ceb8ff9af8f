package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import readback.grammar.number.NumberParser;

/**
 * From words as they are heard or typed to the words that the grammar knows: lower case, no punctuation, figures apart
 * from their units, "side's" as "side is", a word once that was said twice.
 */
final class Tokens {

    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(\\D|$))");
    private static final Pattern DEGREES = Pattern.compile("°");
    private static final Pattern HYPHEN = Pattern.compile("(?<=[a-z])-(?=[a-z0-9])");
    private static final Pattern PUNCTUATION = Pattern.compile("[;!?\"“”()]|[.:](?!\\d)");
    /** Both gauges, typed: a fraction has a smaller denominator or two figures at most above it. */
    private static final Pattern OVER = Pattern.compile("(?<=\\d\\d)/(?=\\d{3})|(?<=\\d{3}(\\.\\d)?)/(?=\\d)");

    private static final Pattern FIGURES_AND_LETTERS = Pattern.compile("(-?[\\d.]+)([a-z]+)");

    private static final String COMMA = ",";

    private Tokens() {}

    static List<String> of(String said, PhraseTree phrases) {
        String plain = isPlain(said) ? said : clean(said);
        List<String> tokens = new ArrayList<>(8);
        int start = 0;
        int length = plain.length();
        while (start < length) {
            int end = plain.indexOf(' ', start);
            if (end < 0) {
                end = length;
            }
            if (end > start) {
                add(tokens, plain.substring(start, end), phrases);
                dropStutter(tokens);
            }
            start = end + 1;
        }
        return unitsAndFractions(tokens.contains(COMMA) ? betweenNumbers(tokens) : tokens);
    }

    /**
     * A word said twice is said once, "liquid line line"; but each digit of "one one eight" counts, each letter of "e e
     * v".
     */
    private static void dropStutter(List<String> tokens) {
        int last = tokens.size() - 1;
        if (last > 0
                && tokens.get(last).length() > 1
                && tokens.get(last).equals(tokens.get(last - 1))
                && new NumberParser(tokens.subList(last, last + 1)).endOfRun(0) == 0) {
            tokens.remove(last);
        }
    }

    /** Without the commas, but for those that keep two numbers apart: "eighty, fifty percent". */
    private static List<String> betweenNumbers(List<String> tokens) {
        List<String> kept = new ArrayList<>(tokens.size());
        NumberParser numbers = new NumberParser(tokens);
        for (int i = 0; i < tokens.size(); i++) {
            boolean parts = tokens.get(i).equals(COMMA)
                    && i > 0
                    && i + 1 < tokens.size()
                    && numbers.endOfRun(i - 1) == i
                    && numbers.endOfRun(i + 1) > i + 1;
            // "one, one, eight" is one number, digit by digit
            boolean digits = parts && numbers.isDigit(i - 1) && numbers.isDigit(i + 1);
            if (!tokens.get(i).equals(COMMA) || (parts && !digits)) {
                kept.add(tokens.get(i));
            }
        }
        return kept;
    }

    private static boolean isPlain(String said) {
        for (int i = 0; i < said.length(); i++) {
            char c = said.charAt(i);
            boolean letter = (c >= 'a' && c <= 'z') || c == ' ' || c == '\'' || c == '[' || c == ']';
            if (!letter) {
                return false;
            }
        }
        return true;
    }

    private static String clean(String said) {
        String text = said.toLowerCase(Locale.ROOT).replace('’', '\'').replaceAll("\\s+", " ");
        text = THOUSANDS.matcher(text).replaceAll("");
        text = DEGREES.matcher(text).replaceAll(" degrees ");
        text = HYPHEN.matcher(text).replaceAll(" ");
        text = OVER.matcher(text).replaceAll(" / ");
        text = text.replace(COMMA, " , ");
        return PUNCTUATION.matcher(text).replaceAll(" ");
    }

    private static void add(List<String> tokens, String token, PhraseTree phrases) {
        char first = token.charAt(0);
        boolean figures = first == '-' || first == '.' || Character.isDigit(first);
        boolean shortened = token.endsWith("'s") && token.length() > 2;
        if ((!figures && !shortened) || phrases.knows(token)) {
            tokens.add(token);
            return;
        }
        if (shortened) {
            tokens.add(token.substring(0, token.length() - 2));
            tokens.add("is");
            return;
        }
        var typed = FIGURES_AND_LETTERS.matcher(token);
        if (typed.matches() && phrases.knows(typed.group(2))) {
            tokens.add(typed.group(1));
            tokens.add(typed.group(2));
            return;
        }
        tokens.add(token);
    }

    /** "an inch and an eighth" as "one and an eighth inch", "a pound and a half" as "one and a half pound". */
    private static List<String> unitsAndFractions(List<String> tokens) {
        NumberParser numbers = new NumberParser(tokens);
        for (String unit : List.of("inch", "pound")) {
            int at = tokens.indexOf(unit);
            boolean and =
                    at >= 0 && at + 2 < tokens.size() && tokens.get(at + 1).equals("and");
            int end = and ? numbers.endOfRun(at + 2) : 0;
            if (and && end > at + 2 && isFraction(numbers, at + 2, end)) {
                return numberFirst(tokens, at, end, numbers);
            }
        }
        return tokens;
    }

    /** "And three ounces" is no part of the pound before it. */
    private static boolean isFraction(NumberParser numbers, int from, int to) {
        return numbers.values(from, to).stream()
                .anyMatch(each -> each.value().signum() > 0 && each.value().compareTo(BigDecimal.ONE) < 0);
    }

    private static List<String> numberFirst(List<String> tokens, int unit, int end, NumberParser numbers) {
        boolean article = unit > 0 && List.of("a", "an").contains(tokens.get(unit - 1));
        boolean counted = unit > 0 && !article && numbers.endOfRun(unit - 1) == unit;
        List<String> said = new ArrayList<>(tokens.subList(0, article ? unit - 1 : unit));
        if (!counted) {
            said.add("one");
        }
        said.addAll(tokens.subList(unit + 1, end));
        said.add(tokens.get(unit));
        boolean again = end < tokens.size() && tokens.get(end).startsWith(tokens.get(unit));
        said.addAll(tokens.subList(again ? end + 1 : end, tokens.size()));
        return said;
    }
}
