package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

class LateDecimalsTest {

    @ParameterizedTest(name = "{0}, then \"{1}\"")
    @CsvSource({"81, point five, 81.5", "81, Point two five, 81.25", "-4, point five, -4.5", "81, point zero, 81.0"})
    void decimalsBehindAWholeValueBelongToIt(String before, String words, String value) {
        assertThat(LateDecimals.of(words, Reading.of(Quantity.LIQUID_LINE_TEMPERATURE, before)))
                .map(Reading::value)
                .contains(new BigDecimal(value));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "five",
                "zero point five",
                "one point five",
                "point",
                "point five degrees",
                "subcooling point five",
                ""
            })
    void anythingElseIsAValueOfItsOwn(String words) {
        assertThat(LateDecimals.of(words, Reading.of(Quantity.LIQUID_LINE_TEMPERATURE, "81")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"81.5", "81.0"})
    void aValueThatHasDecimalsGetsNone(String before) {
        assertThat(LateDecimals.of("point five", Reading.of(Quantity.LIQUID_LINE_TEMPERATURE, before)))
                .isEmpty();
    }
}
