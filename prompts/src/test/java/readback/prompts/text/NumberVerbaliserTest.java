package readback.prompts.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spoken forms against FAA Aeronautical Information Manual 4-2-8 (figures) and 4-2-9 (altitudes), in plain spelling.
 */
class NumberVerbaliserTest {

    private static final NumberVerbaliser NUMBERS = new NumberVerbaliser(Language.english()::label);

    @ParameterizedTest
    @CsvSource({
        // AIM 4-2-8: digits singly, hundreds and thousands in round numbers as words
        "10, one zero",
        "500, five hundred",
        "4500, four thousand five hundred",
        "122.1, one two two point one",
        // thirteen and thirty never sound alike
        "13, one three",
        "30, three zero",
        "118, one one eight",
        "-4, minus four",
        "0, zero",
        "0.50, zero point five zero",
        "-0.5, minus zero point five",
        "100, one hundred",
        "1000, one thousand",
        "10000, one zero zero zero zero"
    })
    void numbers_are_spoken_as_radio_practice_has_them(String number, String words) {
        assertThat(NUMBERS.words(new BigDecimal(number))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "0, zero",
        "5, five",
        "15, fifteen",
        "19, nineteen",
        "20, twenty",
        "25, twenty five",
        "90, ninety",
        "99, ninety nine",
        "100, one hundred",
        "118, one one eight",
        "-3, minus three"
    })
    void what_nobody_writes_down_is_spoken_as_people_count(int number, String words) {
        assertThat(NUMBERS.count(number)).isEqualTo(words);
    }

    @Test
    void no_two_numbers_of_a_gauge_sound_alike() {
        assertThat(java.util.stream.IntStream.rangeClosed(-999, 9999)
                        .mapToObj(number -> NUMBERS.words(BigDecimal.valueOf(number)))
                        .distinct()
                        .count())
                .isEqualTo(999 + 9999 + 1);
    }

    @Test
    void a_teen_or_a_ten_is_never_spoken_as_one_word() {
        for (int number = 10; number < 100; number++) {
            assertThat(NUMBERS.words(BigDecimal.valueOf(number)).split(" ")).hasSize(2);
        }
    }
}
