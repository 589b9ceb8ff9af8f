package readback.grammar.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each style at the ends of what it says. Ways of saying: common practice, no source. */
class NumberStyleTest {

    @ParameterizedTest
    @CsvSource({
        "GROUPED, 105, one oh five",
        "GROUPED, 109, one oh nine",
        "GROUPED, 110, one ten",
        "GROUPED, 199, one ninety nine",
        "GROUPED, 1100, eleven hundred",
        "GROUPED, 1250, twelve fifty",
        "GROUPED, 1950, nineteen fifty",
        "CARDINAL_WITH_AND, 101, a hundred and one",
        "CARDINAL_WITH_AND, 199, a hundred and ninety nine",
        "CARDINAL_WITH_AND, 201, two hundred and one",
        "CARDINAL, 1001, one thousand one",
        "CARDINAL, 99999, ninety nine thousand nine hundred ninety nine",
        "DIGITS, 10, one zero",
        "CARDINAL, -4, minus four",
        "CARDINAL, 118.0, one hundred eighteen point zero",
        "FRACTION, 0.5, a half",
        "FRACTION, 0.25, a quarter",
        "FRACTION, 0.75, three quarters",
        "FRACTION, 0.125, an eighth",
        "FRACTION, 0.375, three eighths",
        "FRACTION, 0.0625, a sixteenth",
        "FRACTION, 0.8125, thirteen sixteenths",
        "FRACTION, 2.5, two and a half",
    })
    void whatIsSaid(NumberStyle style, BigDecimal value, String words) {
        assertThat(style.say(value)).contains(words);
    }

    @ParameterizedTest
    @CsvSource({
        "GROUPED, 99",
        "GROUPED, 100",
        "GROUPED, 200",
        "GROUPED, 1000",
        "GROUPED, 1050",
        "GROUPED, 2000",
        "GROUPED, 2050",
        "CARDINAL_WITH_AND, 100",
        "CARDINAL_WITH_AND, 99",
        "CARDINAL_WITH_AND, 200",
        "DIGITS, 9",
        "CARDINAL, 100000",
        "FRACTION, 0.3",
        "FRACTION, 2",
    })
    void whatNobodySaysSo(NumberStyle style, BigDecimal value) {
        assertThat(style.say(value)).isEmpty();
    }
}
