package readback.grammar.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.grammar.number.SpokenNumber.Admitted;
import readback.grammar.number.SpokenNumber.NotANumber;
import readback.grammar.number.SpokenNumber.Refusal;

class NumberParserTest {

    private static SpokenNumber read(String words) {
        return new NumberParser(Arrays.asList(words.split(" ", -1))).read();
    }

    private static List<String> values(String words) {
        return read(words) instanceof Admitted admitted
                ? admitted.values().stream()
                        .map(value -> value.value().toPlainString())
                        .toList()
                : List.of();
    }

    @ParameterizedTest
    @CsvSource({
        // FAA Aeronautical Information Manual 4-2-8 to 4-2-10: figures, hundreds, thousands, decimals
        "one zero, 10",
        "five hundred, 500",
        "four thousand five hundred, 4500",
        "one zero thousand, 10000",
        "one three thousand five hundred, 13500",
        "one two two point one, 122.1",
        "one one thousand, 11000",
        "eleven thousand, 11000",
        "one three, 13",
        "three zero, 30",
        // ICAO Annex 10 volume II 5.2.1.4 (from memory): "decimal" for the point
        "one one eight decimal five, 118.5",
        // the trade's way, common practice
        "one eighteen, 118",
        "one one eight, 118",
        "a hundred and eighteen, 118",
        "one hundred eighteen, 118",
        "one eighteen point five, 118.5",
        "sixty eight and a half, 68.5",
        "minus four, -4",
        "negative four, -4",
        "plus four, 4",
        "four below, -4",
        "four below zero, -4",
        "three forty, 340",
        "three forty two, 342",
        "twelve fifty, 1250",
        "eleven oh five, 1105",
        "ten fifty, 1050",
        "one oh five, 105",
        "one nought five, 105",
        "one ten, 110",
        "fifteen hundred, 1500",
        "fifteen hundred and fifty, 1550",
        "two and a half, 2.5",
        "two and three quarters, 2.75",
        "one and five eighths, 1.625",
        "one and an eighth, 1.125",
        "a quarter, 0.25",
        "quarter, 0.25",
        "half, 0.5",
        "three quarter, 0.75",
        "three eighths, 0.375",
        "three eights, 0.375",
        "thirteen sixteenths, 0.8125",
        "eighteen and five tenths, 18.5",
        "five hundredths, 0.05",
        "a hundred and a half, 100.5",
        "one hundred and five and a half, 105.5",
        "point eight, 0.8",
        "oh point eight, 0.8",
        "zero point eight, 0.8",
        "point eight oh, 0.80",
        "point twenty five, 0.25",
        "eighteen point zero, 18.0",
        "one point two three four five six seven, 1.234567",
        "niner, 9",
        "nine niner, 99",
        "double five, 55",
        "one double five, 155",
        "one triple one, 1111",
        "one eighteen point double five, 118.55",
        "a thousand, 1000",
        "two thousand and five, 2005",
        "ninety nine thousand nine hundred and ninety nine, 99999",
        "nine nine nine nine nine, 99999",
        "zero, 0",
        // figures, as they are typed
        "118.5, 118.5",
        "-4, -4",
        ".8, 0.8",
        "5/8, 0.625",
    })
    void wordsOfTheFieldAreOneValue(String words, String value) {
        assertThat(values(words)).containsExactly(value);
        boolean signed = words.matches("(minus|negative|plus|-).*|.*below.*") || value.equals("0");
        if (!signed) {
            assertThat(values("minus " + words)).containsExactly("-" + value);
            assertThat(values("plus " + words)).containsExactly(value);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "eighteen five, 18.5, 185",
        "sixty eight five, 68.5, 685",
        "one eighteen five, 118.5, 1185",
        "ten five, 10.5, 105",
        "one three sixteenths, 1.1875, 0.8125",
    })
    void wordsThatAdmitTwoValuesGiveBoth(String words, String one, String other) {
        assertThat(values(words)).containsExactlyInAnyOrder(one, other);
    }

    @Test
    void theMoreNaturalValueComesFirst() {
        assertThat(((Admitted) read("hundred and ten")).values().get(0).naturalness())
                .isLessThan(
                        ((Admitted) read("a hundred and ten")).values().get(0).naturalness());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sixty fifteen",
                "twenty four twenty four",
                "fifty zero three",
                "fifty two fifty two",
                "twenty fifteen",
                "one eighteen one eighty",
                "one eighteen fifty two",
                "one twenty thirty",
                "one hundred one fifty",
                "one hundred eighteen five",
                "twelve fifty five five",
                "twenty hundred",
                "ten hundred",
                "two thousand twelve hundred",
                "two thousand two thousand",
                "one hundred hundred",
                "hundred thousand",
                "thousand",
                "zero hundred",
                "zero zero",
                "oh five",
                "zero one two",
                "double oh seven",
                "oh",
                "point",
                "one point",
                "one point two point three",
                "one point hundred",
                "one point two fifty",
                "one minus two",
                "minus",
                "minus zero",
                "minus minus four",
                "minus -4",
                "below",
                "double",
                "one double",
                "and",
                "five and five",
                "one eighteen and fifty two",
                "nine eighths",
                "zero eighths",
                "one and nine eighths",
                "sixteen sixteenths",
                "zero and a half",
                "eighteen five and a half",
                "eighteen five point five",
                "one two three four five six",
                "one hundred thousand",
                "two 118",
                "118 118",
                "1/3",
                "a",
                "a five",
                "couple",
                "one couple",
            })
    void whatIsNotOneNumberIsRefusedWithTheReason(String words) {
        assertThat(read(words))
                .isInstanceOfSatisfying(
                        NotANumber.class, refused -> assertThat(words).contains(refused.where()));
        assertThat(read("minus " + words)).isInstanceOf(NotANumber.class);
    }

    @Test
    void oddWaysOfSayingAValueAreLessNatural() {
        assertThat(((Admitted) read("point twenty five")).values().get(0).naturalness())
                .isLessThan(((Admitted) read("point two five")).values().get(0).naturalness());
        assertThat(((Admitted) read("eighteen five")).values().get(0).naturalness())
                .isLessThan(((Admitted) read("hundred and ten")).values().get(0).naturalness());
    }

    @Test
    void theRefusalSaysWhereTheNumberEnds() {
        assertThat(read("twenty four twenty four"))
                .isEqualTo(new NotANumber("twenty four", Refusal.TWO_NUMBERS, "twenty four"));
        assertThat(read("oh five")).isEqualTo(NotANumber.of("oh five", Refusal.BEGINS_WITH_ZERO));
        assertThat(read("five couple")).isEqualTo(NotANumber.of("couple", Refusal.STRANGE_WORD));
        assertThat(read("point")).isEqualTo(NotANumber.of("point", Refusal.NO_NUMBER));
        assertThat(new NumberParser(List.of()).read()).isEqualTo(NotANumber.of("", Refusal.NO_WORDS));
    }

    @Test
    void aRunOfWordsTooLongToBeANumberIsRefused() {
        String words = "one hundred ".repeat(20).strip();

        assertThat(read(words)).isEqualTo(NotANumber.of(words, Refusal.TOO_LONG));
    }

    @ParameterizedTest
    @CsvSource({
        "one eighteen psi, 0, 2",
        "suction one eighteen, 0, 0",
        "suction one eighteen, 1, 3",
        "one eighteen and liquid, 0, 2",
        "one hundred and five psi, 0, 4",
        "a piston, 0, 0",
        "a half inch, 0, 2",
        "four ten a, 0, 2",
        "and five, 0, 0",
        "below, 0, 0",
        "minus four, 0, 2",
        "fifty and a, 0, 1",
        "fifty and a half, 0, 4",
        "five, 1, 1",
    })
    void aRunEndsWhereNoNumberCanGoOn(String words, int from, int end) {
        assertThat(new NumberParser(Arrays.asList(words.split(" ", -1))).endOfRun(from))
                .isEqualTo(end);
    }

    @Test
    void noValueIsAdmittedTwice() {
        List<BigDecimal> values = ((Admitted) read("one eighteen"))
                .values().stream().map(SpokenNumber.Value::value).collect(Collectors.toList());

        assertThat(values).doesNotHaveDuplicates().hasSize(1);
    }
}
