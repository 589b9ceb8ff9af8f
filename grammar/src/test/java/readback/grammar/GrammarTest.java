package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.quantity.Quantity.LIQUID_PRESSURE;
import static readback.calc.quantity.Quantity.LIQUID_TUBE_SIZE;
import static readback.calc.quantity.Quantity.NAMEPLATE_CHARGE;
import static readback.calc.quantity.Quantity.OUTDOOR_TEMPERATURE;
import static readback.calc.quantity.Quantity.REFRIGERANT_ADDED;
import static readback.calc.quantity.Quantity.RETURN_DRY_BULB;
import static readback.calc.quantity.Quantity.RETURN_WET_BULB;
import static readback.calc.quantity.Quantity.SUCTION_LINE_TEMPERATURE;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** What the words of the trade mean. The ways of saying are common practice, no source. */
class GrammarTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation OPEN = Expectation.open(UnitSetting.US);

    private static List<Meaning> all(String words, Expectation expectation) {
        return GRAMMAR.understand(words, expectation).stream()
                .map(Interpretation::meaning)
                .toList();
    }

    private static Meaning only(String words, Expectation expectation) {
        List<Meaning> meanings = all(words, expectation);
        assertThat(meanings).as(words).hasSize(1);
        return meanings.get(0);
    }

    private static Meaning best(String words, Expectation expectation) {
        return all(words, expectation).get(0);
    }

    private static Expectation asked(Quantity quantity) {
        return Expectation.of(quantity, UnitSetting.US);
    }

    private static Expectation after(Quantity last) {
        return new Expectation(
                "next", Optional.of(OUTDOOR_TEMPERATURE), Optional.empty(), Optional.of(last), UnitSetting.US);
    }

    private static Meaning values(Reading... readings) {
        return new Meaning.Values(List.of(readings));
    }

    private static Meaning correction(Reading... readings) {
        return new Meaning.Correction(List.of(readings));
    }

    private static Reading in(Quantity quantity, String value, Unit unit) {
        return new Reading(quantity, new BigDecimal(value), unit);
    }

    @Test
    void aBareNumberFillsTheStepThatWasAsked() {
        assertThat(only("one eighteen", asked(SUCTION_PRESSURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118")));
        assertThat(only("sixty eight and a half", asked(RETURN_WET_BULB)))
                .isEqualTo(values(Reading.of(RETURN_WET_BULB, "68.5")));
    }

    @Test
    void aBareNumberIsRefusedWhenNothingWasAsked() {
        assertThat(only("one eighteen", OPEN))
                .isEqualTo(new Meaning.NotUnderstood(
                        "one eighteen", Reason.of(Reason.Kind.UNNAMED_NUMBER, "one eighteen")));
    }

    @ParameterizedTest
    @CsvSource({
        "low side one twenty, SUCTION_PRESSURE, 120",
        "suction one eighteen psi, SUCTION_PRESSURE, 118",
        "the low side is at one twenty, SUCTION_PRESSURE, 120",
        "low side's one twenty, SUCTION_PRESSURE, 120",
        "suction line pressure one twenty, SUCTION_PRESSURE, 120",
        "suction line one twenty psi, SUCTION_PRESSURE, 120",
        "one eighteen psi on the suction, SUCTION_PRESSURE, 118",
        "the low side is sitting on one twenty two, SUCTION_PRESSURE, 122",
        "my suction line reads about fifty one, SUCTION_LINE_TEMPERATURE, 51",
        "outdoors it is ninety six degrees, OUTDOOR_TEMPERATURE, 96",
        "its ninety one outside, OUTDOOR_TEMPERATURE, 91",
        "wet bulb came out at sixty six, RETURN_WET_BULB, 66",
        "head three forty, LIQUID_PRESSURE, 340",
        "high side reads three forty two, LIQUID_PRESSURE, 342",
        "liquid pressure three sixty five, LIQUID_PRESSURE, 365",
        "discharge three sixty five, LIQUID_PRESSURE, 365",
        "vapor line fifty two, SUCTION_LINE_TEMPERATURE, 52",
        "suction line temp is fifty two point five, SUCTION_LINE_TEMPERATURE, 52.5",
        "suction fifty two degrees, SUCTION_LINE_TEMPERATURE, 52",
        "liquid line one hundred, LIQUID_LINE_TEMPERATURE, 100",
        "liquid one hundred degrees, LIQUID_LINE_TEMPERATURE, 100",
        "discharge line one ninety, DISCHARGE_LINE_TEMPERATURE, 190",
        "ambient ninety five, OUTDOOR_TEMPERATURE, 95",
        "outdoor's ninety five, OUTDOOR_TEMPERATURE, 95",
        "wet bulb sixty seven, RETURN_WET_BULB, 67",
        "return air seventy six, RETURN_DRY_BULB, 76",
        "supply fifty five, SUPPLY_DRY_BULB, 55",
        "minus four degrees ambient, OUTDOOR_TEMPERATURE, -4",
        "outdoor four below, OUTDOOR_TEMPERATURE, -4",
        "plate subcooling ten, PLATE_SUBCOOLING, 10",
        "target superheat twelve, PLATE_SUPERHEAT, 12",
        "vacuum twelve fifty, VACUUM_LEVEL, 1250",
        "four eighty microns, VACUUM_LEVEL, 480",
        "nitrogen three hundred, NITROGEN_PRESSURE, 300",
        "altitude five thousand two hundred eighty, ALTITUDE, 5280",
        "run time fifteen, RUN_TIME, 15",
        "my gauges are digital one percent, GAUGE_ACCURACY_OF_READING, 1",
        "gauges are good to point five percent, GAUGE_ACCURACY_OF_READING, 0.5",
        "gauges are good to two psi, GAUGE_ACCURACY, 2",
        "gauges are good to two, GAUGE_ACCURACY, 2",
        "my clamps are good to one degree, CLAMP_ACCURACY, 1",
        "clamp is good to one degree, CLAMP_ACCURACY, 1",
        "psychrometer is good to point five degrees, WET_BULB_ACCURACY, 0.5",
        "thermometer is good to one, AIR_PROBE_ACCURACY, 1",
        "static point five, STATIC_PRESSURE, 0.5",
        "airflow twelve hundred, AIRFLOW, 1200",
        "twelve hundred cfm airflow, AIRFLOW, 1200",
        "capacity three and a half tons, CAPACITY, 3.5",
        "compressor amps eleven point two, COMPRESSOR_CURRENT, 11.2",
        "line length forty, LINE_LENGTH, 40",
        "six ounces added, REFRIGERANT_ADDED, 6",
        "i added six and a half ounces, REFRIGERANT_ADDED, 6.5",
        "recovered eight ounces, REFRIGERANT_RECOVERED, 8",
        "suction line size seven eighths, SUCTION_TUBE_SIZE, 0.875",
        "liquid line three eighths inch, LIQUID_TUBE_SIZE, 0.375",
        "suction line size an inch and an eighth, SUCTION_TUBE_SIZE, 1.125",
        "vapor line size one inch and three eighths, SUCTION_TUBE_SIZE, 1.375",
        "suction line size inch and an eighth inches, SUCTION_TUBE_SIZE, 1.125",
    })
    void namesOfTheTradeAreUnderstoodInTheUsualUnit(String words, Quantity quantity, String value) {
        assertThat(only(words, OPEN)).isEqualTo(values(Reading.of(quantity, value)));
    }

    @ParameterizedTest
    @CsvSource({
        "suction eight point two bar, SUCTION_PRESSURE, 8.2, BAR_GAUGE",
        "suction eight hundred twenty kilopascals, SUCTION_PRESSURE, 820, KILOPASCAL_GAUGE",
        "suction eight hundred twenty k p a, SUCTION_PRESSURE, 820, KILOPASCAL_GAUGE",
        "suction point eight two megapascals, SUCTION_PRESSURE, 0.82, MEGAPASCAL_GAUGE",
        "suction ten inches of mercury, SUCTION_PRESSURE, 10, INCH_MERCURY_VACUUM",
        "ambient thirty five celsius, OUTDOOR_TEMPERATURE, 35, CELSIUS",
        "plate subcooling five degrees celsius, PLATE_SUBCOOLING, 5, KELVINS",
        "charge is seven pounds, NAMEPLATE_CHARGE, 7, POUND",
        "charge is seven pounds four ounces, NAMEPLATE_CHARGE, 7.25, POUND_AND_OUNCES",
        "charge is seven pounds and four and a half ounces, NAMEPLATE_CHARGE, 7.28125, POUND_AND_OUNCES",
        "charge two point one kilos, NAMEPLATE_CHARGE, 2.1, KILOGRAM",
        "charge two kilograms three hundred grams, NAMEPLATE_CHARGE, 2300, GRAM",
        "charge is seven pounds four, NAMEPLATE_CHARGE, 7.25, POUND_AND_OUNCES",
        "plate says seven pounds eight, NAMEPLATE_CHARGE, 7.5, POUND_AND_OUNCES",
        "charge seven pounds and a half, NAMEPLATE_CHARGE, 7.5, POUND_AND_OUNCES",
        "charge seven pounds eight and a half, NAMEPLATE_CHARGE, 7.53125, POUND_AND_OUNCES",
        "the tag says six pounds, NAMEPLATE_CHARGE, 6, POUND",
        "it calls for ninety six ounces, NAMEPLATE_CHARGE, 96, OUNCE",
        "i added one pound two, REFRIGERANT_ADDED, 1.125, POUND_AND_OUNCES",
        "run time one hour and thirty minutes, RUN_TIME, 90, MINUTE",
        "run time one hour thirty, RUN_TIME, 90, MINUTE",
        "seven pounds four ounces nameplate charge, NAMEPLATE_CHARGE, 7.25, POUND_AND_OUNCES",
        "charge is seven pounds zero ounces, NAMEPLATE_CHARGE, 7, POUND_AND_OUNCES",
        "charge is one hundred sixteen ounces, NAMEPLATE_CHARGE, 116, OUNCE",
        "i put in half a pound, REFRIGERANT_ADDED, 0.5, POUND",
        "i added a quarter of a pound, REFRIGERANT_ADDED, 0.25, POUND",
        "recovered half an ounce, REFRIGERANT_RECOVERED, 0.5, OUNCE",
        "line length twelve meters, LINE_LENGTH, 12, METRE",
        "capacity thirty six thousand btus, CAPACITY, 36000, BTU_PER_HOUR",
        "capacity ten kilowatts, CAPACITY, 10, KILOWATT",
    })
    void aSpokenUnitWinsOverTheSetting(String words, Quantity quantity, String value, Unit unit) {
        assertThat(only(words, OPEN)).isEqualTo(values(in(quantity, value, unit)));
    }

    @Test
    void whatCannotBeOuncesIsAValueOfItsOwn() {
        assertThat(only("charge is seven pounds suction one eighteen", OPEN))
                .isEqualTo(values(in(NAMEPLATE_CHARGE, "7", Unit.POUND), Reading.of(SUCTION_PRESSURE, "118")));
        assertThat(only("charge two kilograms three hundred grams suction eight bar", OPEN))
                .isEqualTo(values(in(NAMEPLATE_CHARGE, "2300", Unit.GRAM), in(SUCTION_PRESSURE, "8", Unit.BAR_GAUGE)));
    }

    @Test
    void theSettingGivesTheUnitThatIsNotSaid() {
        assertThat(only("suction eight point two", Expectation.open(UnitSetting.METRIC)))
                .isEqualTo(values(in(SUCTION_PRESSURE, "8.2", Unit.BAR_GAUGE)));
        assertThat(only("ambient thirty five degrees", Expectation.open(UnitSetting.METRIC)))
                .isEqualTo(values(in(OUTDOOR_TEMPERATURE, "35", Unit.CELSIUS)));
    }

    @ParameterizedTest
    @CsvSource({
        "'Low side''s one twenty, vapor line fifty two.', 120, 52",
        "SUCTION 120 PSI SUCTION LINE 52°F, 120, 52",
        "suction: 118.5psi; suction line: 52 f, 118.5, 52",
        "one eighteen psi suction and fifty two degrees suction line, 118, 52",
        "suction is one eighteen and the suction line is fifty two, 118, 52",
    })
    void severalReadingsComeInOneBreath(String words, String pressure, String temperature) {
        assertThat(only(words, OPEN))
                .isEqualTo(values(
                        Reading.of(SUCTION_PRESSURE, pressure), Reading.of(SUCTION_LINE_TEMPERATURE, temperature)));
    }

    @ParameterizedTest
    @CsvSource({
        "'one eighteen, no, one eighty', 180",
        "suction one eighteen correction one ten, 110",
        "suction one eighteen correction suction one ten, 110",
        "one eighteen make that one ten, 110",
        "one eighteen sorry one ten psi, 110",
        "one eighteen correction one ten no one twelve, 112",
    })
    void aCorrectionInsideTheUtteranceReplacesTheValue(String words, String value) {
        assertThat(best(words, asked(SUCTION_PRESSURE))).isEqualTo(values(Reading.of(SUCTION_PRESSURE, value)));
    }

    @Test
    void aCorrectionInsideReplacesTheNamedValue() {
        assertThat(only("suction one eighteen liquid three forty correction suction one ten", OPEN))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "110"), Reading.of(LIQUID_PRESSURE, "340")));
        assertThat(only("suction one eighteen liquid three forty no three fifty", OPEN))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118"), Reading.of(LIQUID_PRESSURE, "350")));
    }

    @Test
    void aCorrectionOfAValueThatWasNotSaidIsRefused() {
        assertThat(only("suction one eighteen correction liquid three forty", OPEN))
                .isEqualTo(new Meaning.NotUnderstood(
                        "suction one eighteen correction liquid three forty",
                        Reason.of(Reason.Kind.NOTHING_TO_CORRECT, LIQUID_PRESSURE)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "correction one one zero",
                "no one ten",
                "make that one ten",
                "correction suction one ten",
                "change the suction to one ten",
                "scratch that one ten",
                "okay correction one ten",
            })
    void aCorrectionRefersToTheValueReadBackLast(String words) {
        assertThat(best(words, after(SUCTION_PRESSURE))).isEqualTo(correction(Reading.of(SUCTION_PRESSURE, "110")));
    }

    @Test
    void aCorrectionRefersToTheAskedValueWhenNoneWasReadBack() {
        assertThat(only("correction one ten", asked(SUCTION_PRESSURE)))
                .isEqualTo(correction(Reading.of(SUCTION_PRESSURE, "110")));
    }

    @Test
    void negativeBeforeANumberCanBeACorrectionOrASign() {
        assertThat(all("negative one ten", asked(SUCTION_PRESSURE)))
                .containsExactlyInAnyOrder(
                        correction(Reading.of(SUCTION_PRESSURE, "110")), values(Reading.of(SUCTION_PRESSURE, "-110")));
    }

    @ParameterizedTest
    @CsvSource({
        "sixty fifteen, fifteen",
        "twenty four twenty four, twenty four",
        "fifty zero three, zero three",
        "a couple, couple",
        "one eighteen one eighty, one eighty",
        "suction one eighteen fifty two, fifty two",
        "one eighteen [unk], [unk]",
        "[unk] one eighteen, [unk]",
        "fifty two degrees, degrees",
        "suction one eighteen suction one ten, suction one eighteen suction one ten",
        "suction one eighteen banana, banana",
        "banana, banana",
        "suction, suction",
        "suction line one eighteen microns, microns",
    })
    void whatCannotBePlacedIsRefusedWithTheWords(String words, String where) {
        assertThat(only(words, asked(SUCTION_PRESSURE)))
                .isInstanceOfSatisfying(
                        Meaning.NotUnderstood.class,
                        refused -> assertThat(refused.where()).isEqualTo(where));
    }

    @Test
    void nothingSaidIsSaidToBeNothing() {
        assertThat(only("  ", OPEN)).isEqualTo(Meaning.NotUnderstood.of(Reason.Kind.NOTHING_HEARD));
    }

    @Test
    void anUnclearWordAwayFromTheNumberMakesTheMeaningLessSure() {
        assertThat(GRAMMAR.understand("[unk] suction one eighteen", OPEN))
                .containsExactly(new Interpretation(values(Reading.of(SUCTION_PRESSURE, "118")), 0.4));
    }

    @Test
    void wordsThatCanMeanTwoValuesGiveBoth() {
        assertThat(all("eighteen five", asked(SUCTION_LINE_TEMPERATURE)))
                .containsExactlyInAnyOrder(
                        values(Reading.of(SUCTION_LINE_TEMPERATURE, "18.5")),
                        values(Reading.of(SUCTION_LINE_TEMPERATURE, "185")));
    }

    @Test
    void eighthsAreUnlikelyWhereNobodyMeasuresInThem() {
        assertThat(GRAMMAR.understand("four and three eighths", asked(SUCTION_PRESSURE))
                        .get(0)
                        .score())
                .isLessThan(0.3);
        assertThat(GRAMMAR.understand("four and three sixteenths", asked(SUCTION_PRESSURE))
                        .get(0)
                        .score())
                .isLessThan(0.3);
        assertThat(GRAMMAR.understand("three eighths", asked(LIQUID_TUBE_SIZE))
                        .get(0)
                        .score())
                .isEqualTo(1);
        assertThat(GRAMMAR.understand("four and three eighths ounces", asked(REFRIGERANT_ADDED))
                        .get(0)
                        .score())
                .isEqualTo(1);
    }

    @Test
    void aNameThatCanMeanTwoQuantitiesMeansTheAskedOne() {
        assertThat(best("return sixty seven", asked(RETURN_WET_BULB)))
                .isEqualTo(values(Reading.of(RETURN_WET_BULB, "67")));
        assertThat(best("return seventy five", asked(RETURN_DRY_BULB)))
                .isEqualTo(values(Reading.of(RETURN_DRY_BULB, "75")));
        assertThat(all("return seventy five", OPEN)).hasSize(2);
    }

    @Test
    void poundsAreAPressureOrAMassAsTheQuantityHasIt() {
        assertThat(only("one eighteen pounds", asked(SUCTION_PRESSURE)))
                .isEqualTo(values(Reading.of(SUCTION_PRESSURE, "118")));
        assertThat(only("seven pounds", asked(NAMEPLATE_CHARGE)))
                .isEqualTo(values(in(NAMEPLATE_CHARGE, "7", Unit.POUND)));
    }

    @Test
    void aChargeWithoutAUnitIsLessSureThanOneWith() {
        assertThat(GRAMMAR.understand("seventy four", asked(NAMEPLATE_CHARGE))
                        .get(0)
                        .score())
                .isLessThan(GRAMMAR.understand("seventy four ounces", asked(NAMEPLATE_CHARGE))
                        .get(0)
                        .score());
    }

    @ParameterizedTest
    @CsvSource({
        "'1,250 microns', VACUUM_LEVEL, 1250",
        "suction -4.5, SUCTION_PRESSURE, -4.5",
        "liquid line size 5/8, LIQUID_TUBE_SIZE, 0.625",
        "suction-line size 7/8 in., SUCTION_TUBE_SIZE, 0.875",
        "Ambient: 95°., OUTDOOR_TEMPERATURE, 95",
        "twenty-four microns, VACUUM_LEVEL, 24",
    })
    void figuresAndPunctuationAreUnderstoodAsTyped(String words, Quantity quantity, String value) {
        assertThat(only(words, OPEN)).isEqualTo(values(Reading.of(quantity, value)));
    }
}
