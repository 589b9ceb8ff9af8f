package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static readback.calc.quantity.Quantity.NITROGEN_PRESSURE;
import static readback.calc.quantity.Quantity.RUN_TIME;
import static readback.calc.quantity.Quantity.SUCTION_PRESSURE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Confusions.Confusion;
import readback.grammar.Prior.Grade;

class WeighingTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation STEP = Expectation.of(RUN_TIME, UnitSetting.US);
    private static final Confusions NONE = new Confusions(List.of());

    private static Hypothesis heard(String words, double confidence) {
        List<Hypothesis.Word> details = List.of(words.split(" ", -1)).stream()
                .map(word -> new Hypothesis.Word(word, confidence, 0, 0))
                .toList();
        return new Hypothesis(words, confidence, details);
    }

    private static Decision decide(Prior prior, Hypothesis... hypotheses) {
        return new Weighing(GRAMMAR, GRAMMAR.lexicon(), NONE, STEP, prior).decide(List.of(hypotheses));
    }

    private static Decision decide(Hypothesis... hypotheses) {
        return decide(Prior.indifferent(), hypotheses);
    }

    private static Meaning minutes(String value) {
        return new Meaning.Values(List.of(Reading.of(RUN_TIME, value)));
    }

    private static Prior grades(Grade grade, String value) {
        return reading -> reading.value().toPlainString().equals(value) ? grade : Grade.TYPICAL;
    }

    @ParameterizedTest
    @CsvSource({"three eighths, 0.375", "a quarter, 0.25", "one half, 0.5", "five eighths inch, 0.625"})
    void aFractionLacksNoDigit(String words, String value) {
        Expectation tube = Expectation.of(Quantity.LIQUID_TUBE_SIZE, UnitSetting.US);

        assertThat(GRAMMAR.decide(List.of(heard(words, 0.95)), tube, Prior.indifferent()))
                .isEqualTo(new Decision.Accept(
                        new Meaning.Values(List.of(Reading.of(Quantity.LIQUID_TUBE_SIZE, value))), 0.95, false));
    }

    @Test
    void typedWordsAreTakenAtOnce() {
        assertThat(GRAMMAR.decide(List.of(Hypothesis.typed("fifty")), STEP, Prior.indifferent()))
                .isEqualTo(new Decision.Accept(minutes("50"), 1, false));
    }

    @Test
    void aValueHeardWithoutRivalIsTakenAtOnce() {
        assertThat(decide(heard("fifty two", 0.96), heard("fifty three", 0.04)))
                .isEqualTo(new Decision.Accept(minutes("52"), 0.96, false));
    }

    @Test
    void aNumberAndTheSameWithAZeroBehindItAreOneValue() {
        assertThat(decide(heard("nine point five", 0.6), heard("nine point fifty", 0.4)))
                .isEqualTo(new Decision.Accept(minutes("9.5"), 1, false));
    }

    @Test
    void nothingBehindAndMayBeALostDigit() {
        assertThat(decide(heard("a hundred and a", 0.98))).isEqualTo(new Decision.Accept(minutes("100"), 0.98, true));
    }

    @Test
    void aRefrigerantMayEndOnALetter() {
        Expectation plate = new Expectation(
                "refrigerant", Optional.empty(), Optional.of("refrigerant"), Optional.empty(), UnitSetting.US);

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), NONE, plate, Prior.indifferent())
                        .decide(List.of(heard("four ten a", 0.98))))
                .isEqualTo(new Decision.Accept(new Meaning.Choice("refrigerant", "R-410A"), 0.98, false));
    }

    @Test
    void wordsThatMeanNothingAreTakenForWhatTheyAreKnownToBeHeardForAndAskedAbout() {
        Confusions known = new Confusions(List.of(new Confusion(List.of("a"), List.of("eight"), 0.1)));
        Hypothesis nonsense = heard("a hundred and a minutes", 0.98);

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), known, STEP, Prior.indifferent()).decide(List.of(nonsense)))
                .isInstanceOfSatisfying(Decision.Accept.class, accepted -> {
                    assertThat(accepted.meaning()).isEqualTo(minutes("108"));
                    assertThat(accepted.doubtful()).isTrue();
                });
        assertThat(decide(nonsense)).isInstanceOf(Decision.AskAgain.class);
    }

    @Test
    void twoLikelyValuesAreAskedAboutTheLikelierFirst() {
        assertThat(decide(heard("fifteen", 0.6), heard("fifty", 0.4)))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("15"), minutes("50"))));
    }

    @Test
    void noMoreThanThreeValuesAreAskedAbout() {
        assertThat(decide(heard("fifteen", 0.3), heard("fifty", 0.25), heard("sixty", 0.25), heard("sixteen", 0.2)))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("15"), minutes("50"), minutes("60"))));
    }

    @Test
    void aValueThatCannotBeIsNoRival() {
        assertThat(decide(grades(Grade.IMPOSSIBLE, "50"), heard("fifteen", 0.6), heard("fifty", 0.4)))
                .isEqualTo(new Decision.Accept(minutes("15"), 0.6, false));
    }

    @Test
    void aValueHeardLessThanHalfTheTimeNeedsAYesEvenWithoutRival() {
        assertThat(decide(grades(Grade.IMPOSSIBLE, "50"), heard("fifty", 0.6), heard("fifteen", 0.4)))
                .isEqualTo(new Decision.Accept(minutes("15"), 0.4, true));
    }

    @Test
    void aValueThatIsLessThanHalfOfWhatWasHeardNeedsAYes() {
        assertThat(decide(heard("fifty fifteen", 0.52), heard("fifty", 0.48)))
                .isEqualTo(new Decision.Accept(minutes("50"), 0.48, true));
        assertThat(decide(heard("fifty", 0.48), heard("fifty fifteen", 0.47)))
                .isEqualTo(new Decision.Accept(minutes("50"), 0.48, true));
        assertThat(decide(heard("fifty", 0.52), heard("fifty fifteen", 0.48)))
                .isEqualTo(new Decision.Accept(minutes("50"), 0.52, false));
    }

    @Test
    void anUnusualValueNeedsAYes() {
        assertThat(decide(grades(Grade.UNUSUAL, "15"), heard("fifteen", 1)))
                .isEqualTo(new Decision.Accept(minutes("15"), 1, true));
    }

    @Test
    void aValueOutsideWhatIsUsuallyStatedNeedsAYes() {
        assertThat(decide(heard("seven hundred", 1))).isEqualTo(new Decision.Accept(minutes("700"), 1, true));
    }

    @Test
    void anUnusualValueWeighsLessThanATypicalOne() {
        assertThat(decide(grades(Grade.UNUSUAL, "15"), heard("fifteen", 0.55), heard("fifty", 0.45)))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("50"), minutes("15"))));
    }

    @Test
    void aValueOutsideWhatCanBeIsRefusedWithTheRange() {
        assertThat(decide(heard("ninety thousand", 1)))
                .isEqualTo(new Decision.AskAgain(new Meaning.NotUnderstood(
                        "90000 min",
                        Reason.of(
                                Reason.Kind.OUT_OF_RANGE,
                                new Reading(Quantity.RUN_TIME, new BigDecimal("90000"), Unit.MINUTE),
                                new Reading(Quantity.RUN_TIME, BigDecimal.ZERO, Unit.MINUTE),
                                new Reading(Quantity.RUN_TIME, new BigDecimal("1440"), Unit.MINUTE)))));
    }

    @Test
    void aValueThatThePriorExcludesIsRefused() {
        assertThat(decide(grades(Grade.IMPOSSIBLE, "50"), heard("fifty", 1)))
                .isEqualTo(new Decision.AskAgain(new Meaning.NotUnderstood(
                        "50 min",
                        Reason.of(
                                Reason.Kind.IMPOSSIBLE,
                                new Reading(Quantity.RUN_TIME, new BigDecimal("50"), Unit.MINUTE)))));
    }

    @Test
    void differentWordsForOneMeaningAddUp() {
        assertThat(decide(heard("run time fifty two", 0.5), heard("run time is fifty two", 0.45), heard("run", 0.05)))
                .isEqualTo(new Decision.Accept(minutes("52"), 0.95, false));
    }

    @Test
    void wordsThatMeanTwoValuesAreAskedAbout() {
        assertThat(GRAMMAR.decide(
                        List.of(Hypothesis.typed("eighteen five")),
                        Expectation.of(NITROGEN_PRESSURE, UnitSetting.US),
                        Prior.indifferent()))
                .isInstanceOfSatisfying(
                        Decision.AskBetween.class,
                        ask -> assertThat(ask.candidates()).hasSize(2));
    }

    @Test
    void aMeaningAmongMuchThatWasNotUnderstoodNeedsAYes() {
        assertThat(decide(heard("fifty fifteen", 0.55), heard("fifty", 0.45)))
                .isEqualTo(new Decision.Accept(minutes("50"), 0.45, true));
    }

    @Test
    void aFaintMeaningIsAskedForAgainWithTheReason() {
        assertThat(decide(heard("sixty fifteen", 0.9), heard("sixty", 0.1)))
                .isInstanceOfSatisfying(
                        Decision.AskAgain.class,
                        again -> assertThat(again.reason().where()).isEqualTo("fifteen"));
        assertThat(decide(heard("sixty", 0.1)))
                .isEqualTo(new Decision.AskAgain(Meaning.NotUnderstood.of(Reason.Kind.UNCLEAR)));
    }

    @Test
    void nothingUnderstoodIsAskedForAgain() {
        assertThat(decide(heard("sixty fifteen", 0.9)))
                .isInstanceOfSatisfying(
                        Decision.AskAgain.class,
                        again -> assertThat(again.reason().why())
                                .isEqualTo(Reason.of(Reason.Kind.TWO_NUMBERS, "sixty", "fifteen")));
    }

    @Test
    void whatIsNotMeantForUsIsIgnored() {
        assertThat(decide()).isEqualTo(new Decision.Ignore(Decision.Ignorance.NOTHING_SAID));
        assertThat(decide(heard(" ", 1))).isEqualTo(new Decision.Ignore(Decision.Ignorance.NOTHING_SAID));
        assertThat(decide(heard("[unk] [unk]", 1))).isEqualTo(new Decision.Ignore(Decision.Ignorance.UNKNOWN_WORDS));
        assertThat(decide(heard("[unk] fifty [unk]", 1)))
                .isEqualTo(new Decision.Ignore(Decision.Ignorance.MOSTLY_UNKNOWN_WORDS));
        assertThat(decide(heard("[unk] fifty two", 1))).isInstanceOf(Decision.AskAgain.class);
    }

    @Test
    void aKnownConfusionThatIsAPossibleValueIsAskedAbout() {
        Confusions sixtyOrSixTwo = new Confusions(List.of(new Confusion(List.of("sixty"), List.of("six", "two"), 0.5)));

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), sixtyOrSixTwo, STEP, Prior.indifferent())
                        .decide(List.of(heard("sixty", 0.9))))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("60"), minutes("62"))));
        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), sixtyOrSixTwo, STEP, grades(Grade.IMPOSSIBLE, "62"))
                        .decide(List.of(heard("sixty", 0.9))))
                .isEqualTo(new Decision.Accept(minutes("60"), 0.9, false));
    }

    @Test
    void aRareConfusionIsNoReasonToAsk() {
        Confusions rare = new Confusions(List.of(new Confusion(List.of("sixty"), List.of("six", "two"), 0.02)));

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), rare, STEP, Prior.indifferent())
                        .decide(List.of(heard("sixty", 0.97))))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.doubtful()).isFalse());
    }

    @Test
    void aValueThatIsOfferedAndKnownToBeConfusedIsAskedAboutEvenWhenItIsFaint() {
        Confusions confusions = new Confusions(List.of(new Confusion(List.of("sixty"), List.of("sixteen"), 0.05)));
        Hypothesis[] heard = {heard("sixty", 0.96), heard("sixteen", 0.04)};

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), confusions, STEP, Prior.indifferent())
                        .decide(List.of(heard)))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("60"), minutes("16"))));
        assertThat(decide(heard)).isEqualTo(new Decision.Accept(minutes("60"), 0.96, false));
        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), confusions, STEP, grades(Grade.UNUSUAL, "16"))
                        .decide(List.of(heard)))
                .isEqualTo(new Decision.Accept(minutes("60"), 0.96, false));
    }

    @Test
    void aValueThatNobodyHeardIsAskedAbout() {
        Expectation liquid = Expectation.of(Quantity.LIQUID_PRESSURE, UnitSetting.US);
        Confusions confusions = new Confusions(List.of(new Confusion(List.of("two", "eight"), List.of("two"), 1)));

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), confusions, liquid, Prior.indifferent())
                        .decide(List.of(heard("two eight four three", 0.57), heard("two eight on three", 0.2))))
                .isEqualTo(new Decision.Accept(
                        new Meaning.Values(List.of(Reading.of(Quantity.LIQUID_PRESSURE, "243"))), 0.57, true));
    }

    @ParameterizedTest
    @CsvSource({
        "four c, 4, CELSIUS, US, true",
        "four degrees c, 4, CELSIUS, US, false",
        "four celsius, 4, CELSIUS, US, false",
        "four c, 4, CELSIUS, METRIC, false",
    })
    void aBareLetterForTheOtherScaleMayBeThree(
            String words, String value, Unit unit, String setting, boolean doubtful) {
        UnitSetting units = setting.equals("US") ? UnitSetting.US : UnitSetting.METRIC;
        Expectation line = Expectation.of(Quantity.SUCTION_LINE_TEMPERATURE, units);
        Meaning meant = new Meaning.Values(
                List.of(new Reading(Quantity.SUCTION_LINE_TEMPERATURE, new BigDecimal(value), unit)));

        assertThat(GRAMMAR.decide(List.of(heard(words, 1)), line, Prior.indifferent()))
                .isEqualTo(new Decision.Accept(meant, 1, doubtful));
        assertThat(GRAMMAR.decide(List.of(Hypothesis.typed(words)), line, Prior.indifferent()))
                .isEqualTo(new Decision.Accept(meant, 1, false));
    }

    @Test
    void otherWordsForTheSameValueAreNoConfusion() {
        Confusions confusions =
                new Confusions(List.of(new Confusion(List.of("hundred"), List.of("a", "hundred"), 0.3)));

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), confusions, STEP, Prior.indifferent())
                        .decide(List.of(heard("hundred", 0.9), heard("a hundred", 0.1))))
                .isEqualTo(new Decision.Accept(minutes("100"), 1, false));
    }

    @Test
    void aWordHeardWrongBeforeTheNumberLeavesNoDoubtAboutTheNumber() {
        Confusions at = new Confusions(List.of(new Confusion(List.of("f"), List.of("at"), 1)));
        Hypothesis[] heard = {heard("run time f thirty", 0.87), heard("run time at thirty", 0.12)};

        assertThat(new Weighing(GRAMMAR, GRAMMAR.lexicon(), at, STEP, Prior.indifferent()).decide(List.of(heard)))
                .isInstanceOfSatisfying(Decision.Accept.class, accept -> {
                    assertThat(accept.meaning()).isEqualTo(minutes("30"));
                    assertThat(accept.doubtful()).isFalse();
                });
        assertThat(decide(heard)).isInstanceOf(Decision.AskAgain.class);
    }

    @ParameterizedTest
    @CsvSource({
        "say again, why, 0.6, false",
        "yes, why, 0.6, true",
        "yes, why, 0.85, false",
        "finish, say again, 0.6, true",
        "say again, why, 0.51, true",
    })
    void anOrderThatChangesSomethingMustBeHeardMoreClearly(String order, String other, double share, boolean doubtful) {
        assertThat(decide(heard(order, share), heard(other, 1 - share)))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.doubtful()).isEqualTo(doubtful));
    }

    @Test
    void aBareNumberOfAnotherStepIsNotTaken() {
        assertThat(GRAMMAR.decide(
                        List.of(heard("one eighteen", 1)), Expectation.open(UnitSetting.US), Prior.indifferent()))
                .isInstanceOf(Decision.AskAgain.class);
        assertThat(GRAMMAR.decide(
                        List.of(heard("suction one eleven", 1)), Expectation.open(UnitSetting.US), Prior.indifferent()))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.meaning())
                                .isEqualTo(new Meaning.Values(List.of(Reading.of(SUCTION_PRESSURE, "111")))));
    }

    @ParameterizedTest(name = "{0}, \"{1}\": asked about {2}")
    @CsvSource({
        // 169 psig is usual as long as nothing is known of the refrigerant
        "SUCTION_PRESSURE, six nine, true",
        // one digit more makes 11x
        "SUCTION_PRESSURE, one one, true",
        "OUTDOOR_TEMPERATURE, one zero, true",
        "SUCTION_LINE_TEMPERATURE, five five, false",
        "OUTDOOR_TEMPERATURE, nine zero, false",
        "RETURN_WET_BULB, six three, false",
        "SUCTION_LINE_TEMPERATURE, a fifty five, true",
        "SUCTION_LINE_TEMPERATURE, fifty five, false"
    })
    void twoDigitsAreAskedAboutWhereOneMoreMakesAUsualValue(Quantity quantity, String words, boolean asked) {
        Expectation step = Expectation.of(quantity, UnitSetting.US);

        Decision decision = new Weighing(GRAMMAR, GRAMMAR.lexicon(), NONE, step, Prior.indifferent())
                .decide(List.of(heard(words, 0.99)));

        assertThat(decision.accepted()).map(Decision.Accept::doubtful).contains(asked);
    }

    @Test
    void whatIsKnownOfTheUnitTellsWhetherADigitIsMissing() {
        Expectation step = Expectation.of(SUCTION_PRESSURE, UnitSetting.US);
        Prior oldRefrigerant = reading -> reading.base() > Unit.PSIG.toBase(100) ? Grade.UNUSUAL : Grade.TYPICAL;

        Decision decision = new Weighing(GRAMMAR, GRAMMAR.lexicon(), NONE, step, oldRefrigerant)
                .decide(List.of(heard("six nine", 0.99)));

        assertThat(decision)
                .isEqualTo(new Decision.Accept(
                        new Meaning.Values(List.of(Reading.of(SUCTION_PRESSURE, "69"))), 0.99, false));
    }
}
