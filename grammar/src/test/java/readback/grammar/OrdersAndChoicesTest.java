package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static readback.calc.quantity.Quantity.LIQUID_PRESSURE;
import static readback.calc.quantity.Quantity.PLATE_SUBCOOLING;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.fluid.Catalogue;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** What orders, choices, notes and questions mean. The ways of saying are common practice, no source. */
class OrdersAndChoicesTest {

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

    private static Expectation choosing(String set) {
        return new Expectation(set, Optional.empty(), Optional.of(set), Optional.empty(), UnitSetting.US);
    }

    @ParameterizedTest
    @CsvSource({
        "what do i do if my hose leaks, emergency, leak",
        "what do i do when i smell gas, emergency, gas",
        "so what if i get refrigerant in my eye, emergency, eye",
        "what should i do if my partner gets shocked, emergency, shock",
        "what do i do if the coil freezes up, situation, frozen",
        "what if it's a mini split, situation, mini-split"
    })
    void whatWouldBeToDoIsAskedAboutAndNoCryForHelp(String words, String set, String option) {
        assertThat(only(words, OPEN)).isEqualTo(new Meaning.Mentioned(new Meaning.Choice(set, option)));
    }

    @ParameterizedTest
    @CsvSource({
        "winter set up please, winter-set-up",
        "weigh in, weigh-in",
        "evacuation now, evacuation",
        "do i need to do a pressure test, pressure-test",
        "capacity check, capacity"
    })
    void aJobThatIsNamedAloneOrAmongOtherWordsIsSpokenOf(String words, String job) {
        assertThat(only(words, asked(Quantity.SUCTION_PRESSURE)))
                .isEqualTo(new Meaning.Mentioned(new Meaning.Choice("checklist", job)));
    }

    @Test
    void aJobIsNotSpokenOfWhereItsNameIsAskedForOrDeniedOrANumberFollows() {
        assertThat(only("pressure test", choosing("leak-test")))
                .isEqualTo(new Meaning.Choice("leak-test", "standing-pressure"));
        assertThat(only("airflow", asked(Quantity.AIRFLOW)).understood()).isFalse();
        assertThat(only("not the pressure test", OPEN).understood()).isFalse();
        assertThat(all("vacuum five hundred microns", OPEN)).noneMatch(Meaning.Mentioned.class::isInstance);
    }

    @Test
    void theNamesOfJobsAreListenedForBetweenReadings() {
        assertThat(GRAMMAR.vocabulary(OPEN).phrases()).contains("weigh in", "winter set up", "pressure test");
        assertThat(GRAMMAR.vocabulary(asked(Quantity.SUCTION_PRESSURE)).phrases())
                .doesNotContain("winter set up");
    }

    private static Meaning values(Reading... readings) {
        return new Meaning.Values(List.of(readings));
    }

    private static Reading in(Quantity quantity, String value, Unit unit) {
        return new Reading(quantity, new BigDecimal(value), unit);
    }

    @ParameterizedTest
    @CsvSource({
        "am i overcharged, verdict",
        "is it undercharged, verdict",
        "how long till i can measure, time-left",
        "when can i measure, time-left"
    })
    void what_is_asked_in_other_words_is_the_same_question(String words, String question) {
        assertThat(best(words, OPEN))
                .isInstanceOfSatisfying(
                        Meaning.Choice.class,
                        choice -> assertThat(choice.option()).isEqualTo(question));
    }

    @ParameterizedTest
    @CsvSource({
        "yes, YES",
        "yep, YES",
        "that's correct, YES",
        "affirmative, YES",
        "okay, YES",
        "no, NO",
        "negative, NO",
        "that's wrong, NO",
        "say again, SAY_AGAIN",
        "say that again please, SAY_AGAIN",
        "why, WHY",
        "how do i do that, HOW",
        "help, HELP",
        "go back, GO_BACK",
        "scratch that, SCRATCH_THAT",
        "correction, SCRATCH_THAT",
        "hold on, HOLD_ON",
        "okay hold on, HOLD_ON",
        "carry on, CARRY_ON",
        "where are we, WHERE_ARE_WE",
        "read me the readings, READ_READINGS",
        "stop talking, STOP_TALKING",
        "finish, FINISH",
        "guide me, GUIDE",
        "brief, BRIEF",
        "skip that, SKIP",
        "done, DONE",
        "understood, DONE",
        "i don't know, UNKNOWN",
        "hang on, HOLD_ON",
        "give me a minute, HOLD_ON",
        "wait a minute, HOLD_ON",
        "hold it, HOLD_ON",
        "hang on a second please, HOLD_ON",
        "I will measure now, MEASURE_NOW",
        "measure now, MEASURE_NOW",
        "take the readings now, MEASURE_NOW"
    })
    void commandsHaveTheirVariants(String words, Command command) {
        assertThat(best(words, asked(SUCTION_PRESSURE))).isEqualTo(new Meaning.Ordered(command));
    }

    @ParameterizedTest
    @CsvSource({
        "why the suction pressure, WHY, SUCTION_PRESSURE",
        "scratch the liquid line temperature, SCRATCH_THAT, LIQUID_LINE_TEMPERATURE",
        "how do i read the wet bulb, HOW, RETURN_WET_BULB",
        "go back to the head pressure, GO_BACK, LIQUID_PRESSURE",
        "correction head pressure, GO_BACK, LIQUID_PRESSURE",
        "change the outdoor, GO_BACK, OUTDOOR_TEMPERATURE",
        "what was the low side, SAY_AGAIN, SUCTION_PRESSURE",
    })
    void aCommandCanNameAQuantity(String words, Command command, Quantity quantity) {
        assertThat(only(words, OPEN)).isEqualTo(new Meaning.Ordered(command, Optional.of(quantity)));
    }

    @ParameterizedTest
    @CsvSource({
        "refrigerant, four ten a, R-410A",
        "refrigerant, R-410A, R-410A",
        "refrigerant, 410a, R-410A",
        "refrigerant, R410A, R-410A",
        "refrigerant, r twenty two, R-22",
        "refrigerant, it's r twenty two, R-22",
        "refrigerant, four fifty four b, R-454B",
        "refrigerant, thirty two, R-32",
        "refrigerant, four oh seven c, R-407C",
        "refrigerant, one thirty four a, R-134a",
        "refrigerant, four forty eight a, R-448A",
        "refrigerant, r 454 b, R-454B",
        "refrigerant, R-454C, R-454C",
        "refrigerant, four o seven c, R-407C",
        "refrigerant, five thirteen a, R-513A",
        "refrigerant, propane, R-290",
        "refrigerant, r four thirty eight a, R-438A",
        "refrigerant, carbon dioxide, R-744",
        "refrigerant, R-1234ze(E), R-1234ze(E)",
        "metering-device, it's a piston, piston",
        "metering-device, fixed orifice, piston",
        "metering-device, cap tube, capillary-tube",
        "metering-device, t x v, thermostatic-expansion-valve",
        "metering-device, electronic expansion valve, electronic-expansion-valve",
        "metering-device, i don't know, unknown",
        "checklist, charge check, charge-check",
        "checklist, evacuation, evacuation",
        "checklist, iced up, frozen-coil",
        "units, metric, metric",
        "units, psi and fahrenheit, us",
    })
    void anOptionOfTheAskedSetNeedsNoIntroduction(String set, String words, String option) {
        assertThat(only(words, choosing(set))).isEqualTo(new Meaning.Choice(set, option));
    }

    @ParameterizedTest
    @CsvSource({
        "refrigerant, four ten a piston, piston",
        "refrigerant, it's four ten a with a txv, thermostatic-expansion-valve",
        "metering-device, four ten a cap tube, capillary-tube",
    })
    void refrigerantAndMeteringDeviceAreToldInOneBreath(String asked, String words, String device) {
        assertThat(best(words, choosing(asked)))
                .isEqualTo(new Meaning.Choices(List.of(
                        new Meaning.Choice("refrigerant", "R-410A"), new Meaning.Choice("metering-device", device))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"four ten a thirty two", "four ten a unknown", "four ten a yes"})
    void twoOptionsThatDoNotBelongTogetherAreNotTaken(String words) {
        assertThat(best(words, choosing("refrigerant"))).isNotInstanceOf(Meaning.Choices.class);
    }

    @ParameterizedTest
    @CsvSource({
        "the refrigerant is four ten a, refrigerant, R-410A",
        "metering device is a piston, metering-device, piston",
        "start the pressure test, checklist, pressure-test",
        "switch to evacuation, checklist, evacuation",
        "set units to metric, units, metric",
    })
    void anOptionOfAnotherSetIsIntroduced(String words, String set, String option) {
        assertThat(best(words, asked(SUCTION_PRESSURE))).isEqualTo(new Meaning.Choice(set, option));
    }

    @ParameterizedTest
    @CsvSource({
        "piston, piston",
        "it's a txv, thermostatic-expansion-valve",
        "it's a t x v, thermostatic-expansion-valve",
        "a cap tube, capillary-tube",
        "eev, electronic-expansion-valve"
    })
    void aQuestionThatLeadsToAnOptionIsAnsweredByNamingIt(String words, String option) {
        Expectation question = choosing("metering-device").answeredBy(Command.YES, Command.NO);

        assertThat(only(words, question)).isEqualTo(new Meaning.Choice("metering-device", option));
        assertThat(only("yes", question)).isEqualTo(new Meaning.Ordered(Command.YES));
        assertThat(only("i don't know", question)).isEqualTo(new Meaning.Ordered(Command.UNKNOWN));
        assertThat(GRAMMAR.vocabulary(question).phrases()).contains("piston", "it's a piston", "yes", "i don't know");
    }

    @Test
    void anOptionThatNobodyAskedForIsNotTaken() {
        assertThat(only("metric", asked(SUCTION_PRESSURE))).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(only("four ten", asked(SUCTION_PRESSURE))).isEqualTo(values(Reading.of(SUCTION_PRESSURE, "410")));
    }

    @Test
    void aNoteKeepsItsWords() {
        assertThat(only("note dirty condenser coil", OPEN)).isEqualTo(new Meaning.Note("dirty condenser coil"));
        assertThat(only("make a note suction one eighteen", OPEN)).isEqualTo(new Meaning.Note("suction one eighteen"));
        assertThat(only("note", OPEN)).isInstanceOf(Meaning.NotUnderstood.class);
    }

    @Test
    void everyRefrigerantOfTheCatalogueIsUnderstoodByEachOfItsNames() {
        Expectation refrigerant = choosing("refrigerant");
        Catalogue.standard().spokenNames().forEach((designation, names) -> {
            Meaning meant = new Meaning.Choice("refrigerant", designation);
            assertThat(only(designation, refrigerant)).isEqualTo(meant);
            for (String name : names) {
                assertThat(only(name, refrigerant)).as(name).isEqualTo(meant);
                assertThat(only("it's r " + name, refrigerant)).as("r " + name).isEqualTo(meant);
            }
        });
    }

    @Test
    void everyRefrigerantIsUnderstoodAsItIsWrittenAndSpelledAndWithSmallWordsAroundIt() {
        Expectation refrigerant = choosing("refrigerant");
        Catalogue.standard().spokenNames().forEach((designation, names) -> {
            String code = designation.substring(2).replaceAll("\\(.*\\)", "");
            String spelled = code.replaceFirst("^(\\d+)", "$1 ");
            List<String> said = new ArrayList<>(List.of(
                    "R" + code, "r " + spelled, "it's an r " + spelled, "plate says " + designation, "it's " + code));
            for (String name : names) {
                said.add("it's an r " + name);
                said.add("it's a " + name + " system");
                said.add(name.replace("oh", "o"));
            }
            for (String words : said) {
                assertThat(only(words, refrigerant))
                        .as(words)
                        .isEqualTo(new Meaning.Choice("refrigerant", designation));
            }
        });
        assertThat(only("propane", refrigerant)).isEqualTo(new Meaning.Choice("refrigerant", "R-290"));
    }

    @Test
    void theOneOptionOfWhatIsAskedIsFoundAmongOtherWordsUnlessTheyMayDenyIt() {
        assertThat(only("the sticker on the side says r thirty two", choosing("refrigerant")))
                .isEqualTo(new Meaning.Choice("refrigerant", "R-32"));
        assertThat(only("i would bet on a piston", choosing("metering-device")))
                .isEqualTo(new Meaning.Choice("metering-device", "piston"));
        for (String words : List.of(
                "it is not a piston", "there isn't a piston", "a piston or a txv i would say", "[unk] piston [unk]")) {
            assertThat(only(words, choosing("metering-device"))).as(words).isInstanceOf(Meaning.NotUnderstood.class);
        }
        for (String words : List.of("sticker says one twenty two", "sticker says twenty two seven")) {
            assertThat(only(words, choosing("refrigerant"))).as(words).isInstanceOf(Meaning.NotUnderstood.class);
        }
    }

    @Test
    void whatIsWorkedOutIsAskedForByATopicAndOtherValuesByTheirNames() {
        for (String words : List.of("what was the superheat", "tell me my superheat", "how much superheat do i have")) {
            assertThat(only(words, OPEN)).as(words).isEqualTo(new Meaning.Choice("question", "superheat"));
        }
        assertThat(only("tell me about superheat", OPEN))
                .isEqualTo(new Meaning.Ordered(Command.WHY, Optional.of(Quantity.PLATE_SUPERHEAT)));
        assertThat(only("what's my suction", OPEN))
                .isEqualTo(new Meaning.Ordered(Command.SAY_AGAIN, Optional.of(SUCTION_PRESSURE)));
    }

    @Test
    void aCryForHelpIsFoundAmongOtherWords() {
        assertThat(only("my partner over there got hurt badly", asked(SUCTION_PRESSURE)))
                .isEqualTo(new Meaning.Choice("emergency", "hurt"));
        assertThat(only("note the contactor is burned", asked(SUCTION_PRESSURE)))
                .isEqualTo(new Meaning.Note("the contactor is burned"));
        assertThat(only("the contactor is burned", asked(SUCTION_PRESSURE))).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(only("go to leak test", asked(SUCTION_PRESSURE)))
                .isEqualTo(new Meaning.Choice("checklist", "pressure-test"));
    }

    @Test
    void aValueIsSaidToBeUnknownByItsName() {
        Meaning unknown = new Meaning.Ordered(Command.UNKNOWN, Optional.of(PLATE_SUBCOOLING));
        for (String words : List.of("plate subcooling unknown", "plate subcooling is unknown", "no plate subcooling")) {
            assertThat(only(words, asked(SUCTION_PRESSURE))).as(words).isEqualTo(unknown);
        }
        assertThat(only("no plate", asked(PLATE_SUBCOOLING))).isEqualTo(new Meaning.Ordered(Command.UNKNOWN));
    }

    @Test
    void aNumberOfSeveralRefrigerantsIsNoneOfThem() {
        for (String words : List.of("four oh seven", "407", "r four fifty four", "454")) {
            assertThat(only(words, choosing("refrigerant"))).as(words).isInstanceOf(Meaning.NotUnderstood.class);
        }
        assertThat(only("410", choosing("refrigerant"))).isEqualTo(new Meaning.Choice("refrigerant", "R-410A"));
    }

    @Test
    void aQuestionForSaturationFillsNothing() {
        assertThat(only("what is saturation at one eighteen", OPEN))
                .isEqualTo(new Meaning.SaturationQuestion(Reading.of(SUCTION_PRESSURE, "118")));
        assertThat(only("saturation at eight bar", OPEN))
                .isEqualTo(new Meaning.SaturationQuestion(in(SUCTION_PRESSURE, "8", Unit.BAR_GAUGE)));
        assertThat(only("saturation at three forty", asked(LIQUID_PRESSURE)))
                .isEqualTo(new Meaning.SaturationQuestion(Reading.of(LIQUID_PRESSURE, "340")));
        assertThat(only("saturation at sixty fifteen", OPEN)).isInstanceOf(Meaning.NotUnderstood.class);
        assertThat(only("saturation at fifty degrees", OPEN)).isInstanceOf(Meaning.NotUnderstood.class);
    }

    @Test
    void choicesListTheirOptionsAndPhrases() {
        Choices choices = GRAMMAR.choices();

        assertThat(choices.sets()).contains("refrigerant", "metering-device", "checklist", "units");
        assertThat(choices.options("metering-device"))
                .containsExactly(
                        "piston",
                        "capillary-tube",
                        "thermostatic-expansion-valve",
                        "electronic-expansion-valve",
                        "unknown");
        assertThat(choices.phrases("refrigerant", "R-22")).contains("r twenty two");
        assertThatThrownBy(() -> choices.options("colour")).hasMessageContaining("colour");
        assertThatThrownBy(() -> choices.phrases("refrigerant", "R-1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("R-1");
    }

    /**
     * "No" and "know" sound alike (CMUdict: N OW both), and the recogniser, which has "don't know" in its lists too,
     * writes either.
     */
    @Test
    void aLoneKnowIsANo() {
        assertThat(best("know", OPEN)).isEqualTo(new Meaning.Ordered(Command.NO));
        assertThat(best("know", asked(SUCTION_PRESSURE))).isEqualTo(new Meaning.Ordered(Command.NO));
        assertThat(best("don't know", asked(SUCTION_PRESSURE))).isEqualTo(new Meaning.Ordered(Command.UNKNOWN));
    }
}
