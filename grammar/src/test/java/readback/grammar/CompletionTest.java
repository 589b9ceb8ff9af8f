package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Completion.Extent;

/** Judged by what gauges and thermometers at an air-conditioner show, and by how English numbers are said. */
class CompletionTest {
    private static final Grammar GRAMMAR = Grammar.standard();

    private static Extent extent(Quantity asked, UnitSetting units, String words) {
        return GRAMMAR.vocabulary(Expectation.of(asked, units)).completion().of(words);
    }

    @ParameterizedTest
    @CsvSource({
        "SUCTION_PRESSURE, one, BEGUN",
        "SUCTION_PRESSURE, one one, BEGUN",
        "SUCTION_PRESSURE, one one eight, MAY_GET_DECIMALS",
        "SUCTION_PRESSURE, one eighteen, MAY_GET_DECIMALS",
        "SUCTION_PRESSURE, one eighteen point five, WHOLE",
        "SUCTION_PRESSURE, suction, BEGUN",
        "SUCTION_PRESSURE, suction pressure, BEGUN",
        "SUCTION_PRESSURE, suction one, BEGUN",
        "SUCTION_PRESSURE, suction one eighteen, MAY_GET_DECIMALS",
        "SUCTION_PRESSURE, suction one eighteen head three, BEGUN",
        "SUCTION_PRESSURE, one eighteen over, BEGUN",
        "LIQUID_PRESSURE, three, BEGUN",
        "LIQUID_PRESSURE, three four, BEGUN",
        "LIQUID_PRESSURE, three forty, MAY_GO_ON",
        "LIQUID_PRESSURE, three forty two, MAY_GET_DECIMALS",
        "SUCTION_LINE_TEMPERATURE, six, BEGUN",
        "SUCTION_LINE_TEMPERATURE, sixty, MAY_GO_ON",
        "SUCTION_LINE_TEMPERATURE, sixty two, MAY_GET_DECIMALS",
        "SUCTION_LINE_TEMPERATURE, six two, MAY_GET_DECIMALS",
        "SUCTION_LINE_TEMPERATURE, sixty two point, BEGUN",
        "SUCTION_LINE_TEMPERATURE, sixty two point five, WHOLE",
        "OUTDOOR_TEMPERATURE, one hundred, MAY_GO_ON",
        "OUTDOOR_TEMPERATURE, ninety five, MAY_GET_DECIMALS"
    })
    void aUsualValueIsCompleteAndItsBeginningIsNot(Quantity asked, String words, Extent expected) {
        assertThat(extent(asked, UnitSetting.US, words)).isEqualTo(expected);
    }

    /** A discharge line above 300 °F is rare, and all the more reason to hear it whole. */
    @ParameterizedTest
    @CsvSource({
        "DISCHARGE_LINE_TEMPERATURE, three zero, MAY_GO_ON",
        "DISCHARGE_LINE_TEMPERATURE, three zero five, MAY_GET_DECIMALS",
        "DISCHARGE_LINE_TEMPERATURE, three zero five point two, WHOLE",
        "DISCHARGE_LINE_TEMPERATURE, three zero five point two correction three zero, MAY_GO_ON",
        "OUTDOOR_TEMPERATURE, three hundred, WHOLE",
        "STATIC_PRESSURE, two point five, MAY_GET_DECIMALS"
    })
    void what_makes_a_rare_value_with_the_next_word_is_waited_for(Quantity asked, String words, Extent expected) {
        assertThat(extent(asked, UnitSetting.US, words)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"point four, MAY_GET_DECIMALS", "point four five, WHOLE"})
    void a_second_decimal_is_waited_for_where_hundredths_are_read(String words, Extent expected) {
        assertThat(extent(Quantity.STATIC_PRESSURE, UnitSetting.US, words)).isEqualTo(expected);
    }

    @Test
    void whatIsUsualDependsOnTheUnit() {
        assertThat(extent(Quantity.SUCTION_PRESSURE, UnitSetting.METRIC, "eight"))
                .isNotEqualTo(Extent.BEGUN);
        assertThat(extent(Quantity.SUCTION_PRESSURE, UnitSetting.US, "eight")).isEqualTo(Extent.BEGUN);
    }

    @ParameterizedTest
    @CsvSource({"yes, WHOLE", "go back, WHOLE", "go, BEGUN", "hold on, WHOLE", "correction, BEGUN"})
    void anOrderIsWholeWhenNothingIsMissing(String words, Extent expected) {
        assertThat(extent(Quantity.SUCTION_PRESSURE, UnitSetting.US, words)).isEqualTo(expected);
    }

    @Test
    void aValueThatNothingCanMakeUsualIsNotWaitedFor() {
        assertThat(extent(Quantity.SUCTION_PRESSURE, UnitSetting.US, "nine hundred"))
                .isEqualTo(Extent.WHOLE);
    }

    @Test
    void talkOfOthersIsNotWaitedFor() {
        assertThat(extent(Quantity.SUCTION_PRESSURE, UnitSetting.US, "one [unk]"))
                .isEqualTo(Extent.WHOLE);
    }

    @Test
    void whereNoNumberIsAskedForThePhrasesDecide() {
        Expectation device = new Expectation(
                "metering-device", Optional.empty(), Optional.of("metering-device"), Optional.empty(), UnitSetting.US);
        Completion completion = GRAMMAR.vocabulary(device).completion();

        assertThat(completion.of("piston")).isEqualTo(Extent.WHOLE);
        assertThat(completion.of("expansion")).isEqualTo(Extent.BEGUN);
    }

    /** What is waited for in vain delays every answer: what is sampled as a whole utterance must not count as begun. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(names = {"SUCTION_PRESSURE", "LIQUID_PRESSURE", "RETURN_WET_BULB", "NAMEPLATE_CHARGE", "VACUUM_LEVEL"})
    void hardlyAnyValueThatIsSaidWholeCountsAsBegun(Quantity asked) {
        Expectation expectation = Expectation.of(asked, UnitSetting.US);
        Completion completion = GRAMMAR.vocabulary(expectation).completion();
        List<String> begun = new ArrayList<>();
        List<StepPhrases.Sample> values = GRAMMAR.samples(expectation, 7).stream()
                .filter(sample -> sample.meaning().readings().size() == 1)
                .toList();
        for (StepPhrases.Sample sample : values) {
            if (completion.of(sample.words()) == Extent.BEGUN) {
                begun.add(sample.words());
            }
        }
        assertThat(begun).as("of %d", values.size()).hasSizeLessThan(values.size() / 100);
    }
}
