package readback.grammar.number;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.grammar.number.SpokenNumber.Admitted;
import readback.grammar.number.SpokenNumber.Value;

/** Every whole number from 0 to 9,999 and every tenth from -99.9 to 999.9, in each way of saying it. */
class EveryNumberTest {

    private static List<BigDecimal> all() {
        Stream<BigDecimal> whole = IntStream.rangeClosed(0, 9_999).mapToObj(BigDecimal::valueOf);
        Stream<BigDecimal> tenths = IntStream.rangeClosed(-999, 9_999).mapToObj(tenth -> BigDecimal.valueOf(tenth, 1));
        return Stream.concat(whole, tenths).toList();
    }

    /** What came back, one line each, where it is not exactly the value alone. */
    private static void check(List<String> wrong, BigDecimal value, String words) {
        SpokenNumber read = new NumberParser(Arrays.asList(words.split(" ", -1))).read();
        List<BigDecimal> values = read instanceof Admitted admitted
                ? admitted.values().stream().map(Value::value).toList()
                : List.of();
        // "minus zero point zero" is refused: nobody says it, and a digit may be lost
        boolean refusedZero = value.signum() == 0 && words.startsWith("minus");
        if (!values.equals(List.of(value)) && !refusedZero) {
            wrong.add(value + " \"" + words + "\" " + read);
        }
    }

    /** ICU's rule-based spell-out is the independent source of the words. */
    @Test
    void everyNumberSpelledByIcuComesBackExactly() {
        RuleBasedNumberFormat icu = new RuleBasedNumberFormat(Locale.US, RuleBasedNumberFormat.SPELLOUT);
        List<String> wrong = new ArrayList<>();
        for (String rules : List.of("%spellout-cardinal", "%spellout-cardinal-verbose")) {
            for (BigDecimal value : all()) {
                String words =
                        icu.format(value.doubleValue(), rules).replace('-', ' ').replace(",", "");
                // ICU says whole tenths without their zero
                boolean whole = value.stripTrailingZeros().scale() <= 0;
                check(wrong, whole ? value.setScale(0) : value, words);
            }
        }
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(NumberStyle.class)
    void everyNumberInEachOfOurStylesComesBackExactly(NumberStyle style) {
        List<String> wrong = new ArrayList<>();
        int said = 0;
        for (BigDecimal value : all()) {
            String words = style.say(value).orElse("");
            if (!words.isEmpty()) {
                check(wrong, value, words);
                check(wrong, value, words.replace("zero", "oh").replaceFirst("^(minus )?oh", "$1zero"));
                said++;
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(said).isGreaterThan(1_000);
    }

    @Test
    void everySixteenthOfAnInchComesBackExactly() {
        List<String> wrong = new ArrayList<>();
        for (int sixteenths = 1; sixteenths < 16 * 5; sixteenths++) {
            BigDecimal value = BigDecimal.valueOf(sixteenths).divide(BigDecimal.valueOf(16));
            NumberStyle.FRACTION.say(value).ifPresent(words -> check(wrong, value, words));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void digitsAreSaidAsTheyStand() {
        assertThat(NumberStyle.DIGITS.say(new BigDecimal("118.50"))).contains("one one eight point five zero");
        assertThat(NumberStyle.GROUPED.say(new BigDecimal("1105"))).contains("eleven oh five");
        assertThat(NumberStyle.GROUPED.say(new BigDecimal("100"))).isEmpty();
        assertThat(NumberStyle.CARDINAL_WITH_AND.say(new BigDecimal("118"))).contains("a hundred and eighteen");
        assertThat(NumberStyle.CARDINAL.say(new BigDecimal("-12500"))).contains("minus twelve thousand five hundred");
        assertThat(NumberStyle.FRACTION.say(new BigDecimal("2.75"))).contains("two and three quarters");
        assertThat(NumberStyle.FRACTION.say(new BigDecimal("2.3"))).isEmpty();
        assertThat(NumberStyle.CARDINAL.say(new BigDecimal("100000"))).isEmpty();
    }
}
