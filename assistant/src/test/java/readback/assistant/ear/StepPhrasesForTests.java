package readback.assistant.ear;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Phrases wider than any step's: quantities with numbers in the ways people say them, choices and commands. */
public final class StepPhrasesForTests {
    private static final String[] ONES = {"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
    };
    private static final String[] TEENS = {
        "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"
    };
    private static final String[] TENS = {
        "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };
    private static final List<String> OTHERS = List.of(
            "yes",
            "no",
            "why",
            "how",
            "say again",
            "help",
            "hold on",
            "carry on",
            "finish",
            "understood",
            "done",
            "go back",
            "scratch that",
            "piston",
            "capillary tube",
            "expansion valve",
            "t x v",
            "r four ten a",
            "r twenty two",
            "r thirty two",
            "r four fifty four b",
            "where are we",
            "skip");

    public static final List<String> ALL = all();

    private StepPhrasesForTests() {}

    private static List<String> all() {
        List<String> phrases = new ArrayList<>();
        for (String quantity : List.of("suction", "suction pressure", "liquid pressure", "correction")) {
            IntStream.range(20, 500).forEach(n -> add(phrases, quantity, n));
        }
        for (String quantity : List.of("outdoor", "wet bulb", "suction line", "liquid line", "plate subcooling")) {
            IntStream.range(5, 140).forEach(n -> add(phrases, quantity, n));
        }
        for (String other : OTHERS) {
            phrases.addAll(Collections.nCopies(20, other));
        }
        return phrases;
    }

    private static void add(List<String> phrases, String quantity, int number) {
        StringBuilder digits = new StringBuilder(quantity);
        for (char digit : Integer.toString(number).toCharArray()) {
            digits.append(' ').append(ONES[digit - '0']);
        }
        phrases.add(digits.toString());
        if (number < 100) {
            phrases.add(quantity + ' ' + belowHundred(number));
        } else {
            String rest = number % 100 == 0 ? "" : ' ' + belowHundred(number % 100);
            phrases.add(quantity + ' ' + ONES[number / 100] + " hundred" + rest);
            if (number % 100 >= 10) {
                phrases.add(quantity + ' ' + ONES[number / 100] + rest);
            }
        }
    }

    private static String belowHundred(int number) {
        if (number < 10) {
            return ONES[number];
        }
        if (number < 20) {
            return TEENS[number - 10];
        }
        return TENS[number / 10] + (number % 10 == 0 ? "" : ' ' + ONES[number % 10]);
    }
}
