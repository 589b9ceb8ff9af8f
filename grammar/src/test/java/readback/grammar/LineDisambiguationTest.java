package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.quantity.Quantity.LIQUID_LINE_TEMPERATURE;
import static readback.calc.quantity.Quantity.LIQUID_PRESSURE;
import static readback.calc.quantity.Quantity.LIQUID_TUBE_SIZE;
import static readback.calc.quantity.Quantity.SUCTION_LINE_TEMPERATURE;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;
import static readback.calc.quantity.Quantity.SUCTION_TUBE_SIZE;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;

/**
 * "Vapor fifty" is a temperature where one is asked for, and never silently a pressure. Ways of saying: common
 * practice, no source.
 */
class LineDisambiguationTest {

    private static final Grammar GRAMMAR = Grammar.standard();

    private static Decision decide(String words, Quantity asked) {
        return GRAMMAR.decide(
                List.of(Hypothesis.typed(words)), Expectation.of(asked, UnitSetting.US), Prior.indifferent());
    }

    private static Meaning values(Reading... readings) {
        return new Meaning.Values(List.of(readings));
    }

    private static void taken(String words, Quantity asked, Reading... readings) {
        assertThat(decide(words, asked))
                .as("%s at %s", words, asked)
                .isInstanceOfSatisfying(Decision.Accept.class, accept -> {
                    assertThat(accept.meaning()).isEqualTo(values(readings));
                    assertThat(accept.doubtful()).isFalse();
                });
    }

    private static void askedBetween(String words, Quantity asked, Reading... readings) {
        assertThat(decide(words, asked))
                .as("%s at %s", words, asked)
                .isInstanceOfSatisfying(Decision.AskBetween.class, between -> {
                    for (Reading reading : readings) {
                        assertThat(between.candidates()).contains(values(reading));
                    }
                });
    }

    @ParameterizedTest
    @CsvSource({
        "vapor, SUCTION_LINE_TEMPERATURE, 50",
        "suction, SUCTION_LINE_TEMPERATURE, 50",
        "low side, SUCTION_LINE_TEMPERATURE, 50",
        "liquid, LIQUID_LINE_TEMPERATURE, 95",
        "high side, LIQUID_LINE_TEMPERATURE, 95",
        "discharge, DISCHARGE_LINE_TEMPERATURE, 180",
        "liquid line, LIQUID_TUBE_SIZE, 0.375",
        "suction line, SUCTION_TUBE_SIZE, 0.75",
        "vapor line, SUCTION_TUBE_SIZE, 0.75"
    })
    void aSideIsShortForWhatWasAsked(String side, Quantity asked, BigDecimal value) {
        Reading reading = new Reading(asked, value, asked.usualUnit());

        taken(side + " " + value, asked, reading);
        taken(side + " is " + value, asked, reading);
        taken(value + " on the " + side, asked, reading);
    }

    @ParameterizedTest
    @CsvSource({
        "liquid, SUCTION_LINE_TEMPERATURE, LIQUID_PRESSURE, LIQUID_LINE_TEMPERATURE, 95",
        "high side, SUCTION_LINE_TEMPERATURE, LIQUID_PRESSURE, LIQUID_LINE_TEMPERATURE, 95",
        "vapor, LIQUID_LINE_TEMPERATURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 50",
        "suction, LIQUID_LINE_TEMPERATURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 50",
        "low side, LIQUID_LINE_TEMPERATURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 50",
        "suction line, SUCTION_PRESSURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 60",
        "vapor line, SUCTION_PRESSURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 60",
        "gas line, SUCTION_PRESSURE, SUCTION_PRESSURE, SUCTION_LINE_TEMPERATURE, 60",
        "liquid line, LIQUID_PRESSURE, LIQUID_PRESSURE, LIQUID_LINE_TEMPERATURE, 120",
        "discharge line, LIQUID_PRESSURE, LIQUID_PRESSURE, DISCHARGE_LINE_TEMPERATURE, 200"
    })
    void aSideThatDoesNotDecideIsAskedAbout(
            String side, Quantity asked, Quantity pressure, Quantity temperature, BigDecimal value) {
        askedBetween(
                side + " " + value,
                asked,
                new Reading(pressure, value, pressure.usualUnit()),
                new Reading(temperature, value, temperature.usualUnit()));
    }

    @Test
    void aUnitOrTheFullNameLeavesNoDoubt() {
        taken("suction one eighteen psi", SUCTION_LINE_TEMPERATURE, Reading.of(SUCTION_PRESSURE, "118"));
        taken("suction pressure one eighteen", SUCTION_LINE_TEMPERATURE, Reading.of(SUCTION_PRESSURE, "118"));
        taken("head three forty", LIQUID_LINE_TEMPERATURE, Reading.of(LIQUID_PRESSURE, "340"));
        taken("suction line temperature fifty", SUCTION_PRESSURE, Reading.of(SUCTION_LINE_TEMPERATURE, "50"));
        taken("suction line fifty", LIQUID_PRESSURE, Reading.of(SUCTION_LINE_TEMPERATURE, "50"));
        taken("vapor one eighteen", Quantity.OUTDOOR_TEMPERATURE, Reading.of(SUCTION_PRESSURE, "118"));
        taken("three eighths", LIQUID_TUBE_SIZE, Reading.of(LIQUID_TUBE_SIZE, "0.375"));
        taken("liquid line ninety five degrees", LIQUID_TUBE_SIZE, Reading.of(LIQUID_LINE_TEMPERATURE, "95"));
    }

    @Test
    void severalReadingsInOneBreathExplainEachOther() {
        taken(
                "suction one eighteen suction line fifty",
                SUCTION_LINE_TEMPERATURE,
                Reading.of(SUCTION_PRESSURE, "118"),
                Reading.of(SUCTION_LINE_TEMPERATURE, "50"));
        taken(
                "suction one eighteen suction line fifty",
                SUCTION_PRESSURE,
                Reading.of(SUCTION_PRESSURE, "118"),
                Reading.of(SUCTION_LINE_TEMPERATURE, "50"));
    }

    @Test
    void aPressureThatCannotBeTheTemperatureIsConfirmed() {
        for (String words :
                List.of("suction three hundred", "liquid three forty", "suction one eighteen liquid three forty")) {
            assertThat(decide(words, SUCTION_LINE_TEMPERATURE))
                    .as(words)
                    .isInstanceOfSatisfying(
                            Decision.Accept.class,
                            accept -> assertThat(accept.doubtful()).isTrue());
        }
    }

    @Test
    void bothTubesAreMeantByTheirLines() {
        assertThat(decide("suction line three quarters", LIQUID_TUBE_SIZE))
                .isNotEqualTo(decide("suction line three quarters", SUCTION_PRESSURE))
                .isInstanceOfSatisfying(
                        Decision.AskBetween.class,
                        between -> assertThat(between.candidates())
                                .contains(values(Reading.of(SUCTION_TUBE_SIZE, "0.75"))));
    }
}
