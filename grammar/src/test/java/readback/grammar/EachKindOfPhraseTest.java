package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.QuantityWords;

/**
 * A grammar that was just made knows every kind of phrase of its definitions. Ways of saying: common practice, no
 * source.
 */
class EachKindOfPhraseTest {

    private final Grammar grammar = Grammar.standard();
    private final Expectation open = Expectation.open(UnitSetting.US);

    private Meaning best(String words, Expectation expectation) {
        return grammar.understand(words, expectation).get(0).meaning();
    }

    private static Meaning value(Quantity quantity, String value, Unit unit) {
        return new Meaning.Values(List.of(new Reading(quantity, new BigDecimal(value), unit)));
    }

    @ParameterizedTest
    @CsvSource({
        "suction one eighteen, SUCTION_PRESSURE, 118, PSIG",
        "suction line fifty psi, SUCTION_PRESSURE, 50, PSIG",
        "suction line fifty, SUCTION_LINE_TEMPERATURE, 50, FAHRENHEIT",
        "suction line fifty degrees, SUCTION_LINE_TEMPERATURE, 50, FAHRENHEIT",
        "suction line ten celsius, SUCTION_LINE_TEMPERATURE, 10, CELSIUS",
        "discharge three hundred, LIQUID_PRESSURE, 300, PSIG",
        "subcooling is ten, PLATE_SUBCOOLING, 10, FAHRENHEIT_DEGREES",
        "and then suction at one eighteen please, SUCTION_PRESSURE, 118, PSIG",
        "one eighteen psi on the suction, SUCTION_PRESSURE, 118, PSIG",
        "suction eight bar, SUCTION_PRESSURE, 8, BAR_GAUGE",
    })
    void valuesWithNamesUnitsAndSmallWords(String words, Quantity quantity, String value, Unit unit) {
        assertThat(best(words, open)).isEqualTo(value(quantity, value, unit));
    }

    @Test
    void ordersAloneAndAboutAQuantity() {
        assertThat(best("say again", open)).isEqualTo(new Meaning.Ordered(Command.SAY_AGAIN));
        assertThat(best("please say again please", open)).isEqualTo(new Meaning.Ordered(Command.SAY_AGAIN));
        assertThat(best("scratch the suction", open))
                .isEqualTo(new Meaning.Ordered(Command.SCRATCH_THAT, Optional.of(Quantity.SUCTION_PRESSURE)));
    }

    @Test
    void theAskedOptionNeedsNoIntroductionAndAnotherOneDoes() {
        Expectation refrigerant = new Expectation(
                "refrigerant", Optional.empty(), Optional.of("refrigerant"), Optional.empty(), UnitSetting.US);

        assertThat(best("four ten a", refrigerant)).isInstanceOf(Meaning.Choice.class);
        assertThat(best("four ten a", open)).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(best("refrigerant is four ten a", open)).isEqualTo(best("four ten a", refrigerant));
    }

    @Test
    void correctionsNotesAndQuestions() {
        Expectation suction = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);
        Reading corrected = Reading.of(Quantity.SUCTION_PRESSURE, "110");

        assertThat(best("correction one ten", suction)).isEqualTo(new Meaning.Correction(List.of(corrected)));
        assertThat(best("change suction to one ten", open)).isEqualTo(new Meaning.Correction(List.of(corrected)));
        assertThat(best("note dirty coil", open)).isEqualTo(new Meaning.Note("dirty coil"));
        assertThat(best("saturation at one ten", open)).isEqualTo(new Meaning.SaturationQuestion(corrected));
    }

    @Test
    void aUnitOfAnotherDimensionIsRefusedWithItsName() {
        assertThat(best("suction line fifty minutes", open)).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(best("airflow nine hundred celsius", open)).isInstanceOf(Meaning.NotUnderstood.class);
    }

    @Test
    void aUnitThatNobodyUsesForTheQuantityIsRefused() {
        assertThat(best("line length twenty five inches", open)).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(best("line length twenty five feet", open)).isEqualTo(value(Quantity.LINE_LENGTH, "25", Unit.FOOT));
        assertThat(best("fifty foot run", open)).isEqualTo(value(Quantity.LINE_LENGTH, "50", Unit.FOOT));
        assertThat(best("run fifty", open)).isEqualTo(value(Quantity.RUN_TIME, "50", Unit.MINUTE));
    }

    @ParameterizedTest
    @CsvSource({
        "suction line fifty suction line sixty, TWO_VALUES, ''",
        "suction one [unk] eighteen, UNHEARD_BESIDE_NUMBER, ''",
        "one eighteen, UNNAMED_NUMBER, one eighteen",
        "suction sixty fifteen, TWO_NUMBERS, sixty/fifteen",
        "saturation at sixty fifteen, TWO_NUMBERS, sixty/fifteen",
    })
    void theReasonOfTheReadingThatGotFurthestIsTold(String words, Reason.Kind why, String about) {
        assertThat(best(words, open)).isInstanceOfSatisfying(Meaning.NotUnderstood.class, reason -> {
            assertThat(reason.why().kind()).isEqualTo(why);
            assertThat(String.join("/", reason.why().words())).isEqualTo(about);
        });
    }

    @Test
    void aCompoundIsUsualUpToItsNextWholeUnit() {
        QuantityWords charge = Objects.requireNonNull(
                Lexicon.standard(AcousticModel.bundled().words()).quantities().get(Quantity.NAMEPLATE_CHARGE));

        // the samples end with fifteen pounds and some ounces
        assertThat(charge.isUsual(new Reading(Quantity.NAMEPLATE_CHARGE, BigDecimal.valueOf(255), Unit.OUNCE)))
                .isTrue();
        assertThat(charge.isUsual(new Reading(Quantity.NAMEPLATE_CHARGE, BigDecimal.valueOf(260), Unit.OUNCE)))
                .isFalse();
    }
}
