package readback.grammar.lexicon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.quantity.Quantity.LINE_LENGTH;
import static readback.calc.quantity.Quantity.NAMEPLATE_CHARGE;
import static readback.calc.quantity.Quantity.OUTDOOR_TEMPERATURE;
import static readback.calc.quantity.Quantity.STATIC_PRESSURE;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.AcousticModel;

class LexiconTest {

    private static final Lexicon LEXICON =
            Lexicon.standard(AcousticModel.bundled().words());

    private static QuantityWords words(Quantity quantity) {
        return Optional.ofNullable(LEXICON.quantities().get(quantity)).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void everyQuantityHasNamesUnitsAndSamplesThatCanBe(Quantity quantity) {
        QuantityWords words = words(quantity);

        assertThat(words.names()).isNotEmpty();
        assertThat(words.names().get(0).heard())
                .as("the full name can be heard")
                .isTrue();
        assertThat(words.units())
                .contains(quantity.usualUnit())
                .allMatch(unit -> unit.dimension() == quantity.dimension());
        assertThat(words.us()).isNotEmpty();
        assertThat(words.metric()).isNotEmpty();
        for (QuantityWords.Sample sample : words.us()) {
            Unit unit = sample.units().get(0);
            assertThat(words.units()).containsAll(sample.units());
            assertThat(words.canBe(new Reading(quantity, sample.low(), unit))).isTrue();
            assertThat(words.canBe(new Reading(quantity, sample.high(), unit))).isTrue();
            assertThat(words.isUsual(new Reading(quantity, sample.high(), unit)))
                    .isTrue();
        }
        for (QuantityWords.Sample sample : words.metric()) {
            Unit unit = sample.units().get(0);
            assertThat(List.of(sample.low(), sample.high()))
                    .as("usual in " + unit)
                    .allMatch(value -> words.isUsual(new Reading(quantity, value, unit)));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Unit.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"VOLT", "PERCENT", "POUND_AND_OUNCES"})
    void everyUnitOfAQuantityIsSaid(Unit unit) {
        assertThat(LEXICON.units()).containsKey(unit);
    }

    @ParameterizedTest
    @CsvSource({"-14.5, true", "-15.1, false", "410, true", "600, false", "118, true"})
    void whatCanBeEndsAtTheLimits(String value, boolean possible) {
        assertThat(words(SUCTION_PRESSURE).canBe(Reading.of(SUCTION_PRESSURE, value)))
                .isEqualTo(possible);
    }

    @ParameterizedTest
    @CsvSource({
        "9, FAHRENHEIT, false",
        "10, FAHRENHEIT, true",
        "115, FAHRENHEIT, true",
        "116, FAHRENHEIT, false",
        "46, CELSIUS, true",
        "48, CELSIUS, false",
    })
    void whatIsUsualIsWhatCalcSays(String value, Unit unit, boolean usual) {
        assertThat(words(OUTDOOR_TEMPERATURE).isUsual(new Reading(OUTDOOR_TEMPERATURE, new BigDecimal(value), unit)))
                .isEqualTo(usual);
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void whatCanBeIsWhatIsPlausible(Quantity quantity) {
        Grade.Span possible = Plausibility.possible(quantity);

        assertThat(words(quantity).lowest().in(possible.unit())).isCloseTo(possible.low(), within(1e-6));
        assertThat(words(quantity).highest().in(possible.unit())).isCloseTo(possible.high(), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"DISCHARGE_LINE_TEMPERATURE, 360", "CAPACITY, 0.3", "RUN_TIME, 1440", "AIRFLOW, 12000"})
    void aValueThatCalcAllowsCanBe(Quantity quantity, String value) {
        assertThat(words(quantity).canBe(Reading.of(quantity, value))).isTrue();
    }

    @Test
    void aCompoundIsUsualUpToTheNextWholeUnit() {
        assertThat(words(NAMEPLATE_CHARGE).isUsual(new Reading(NAMEPLATE_CHARGE, new BigDecimal("255"), Unit.OUNCE)))
                .isTrue();
        assertThat(words(NAMEPLATE_CHARGE).isUsual(new Reading(NAMEPLATE_CHARGE, new BigDecimal("257"), Unit.OUNCE)))
                .isFalse();
    }

    @Test
    void unitsThatMakeNoSenseForAQuantityAreNotTaken() {
        assertThat(words(STATIC_PRESSURE).units()).containsExactly(Unit.INCH_WATER);
        assertThat(words(LINE_LENGTH).units()).doesNotContain(Unit.INCH, Unit.MILLIMETRE);
        assertThat(words(SUCTION_PRESSURE).units()).doesNotContain(Unit.INCH_WATER);
    }

    @Test
    void anUnknownKindOfSmallWordIsABrokenInstallation() {
        assertThat(LEXICON.smallWords("filler")).isNotEmpty();
        assertThatThrownBy(() -> LEXICON.smallWords("chatter")).hasMessageContaining("chatter");
    }
}
