package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Confusions.Confusion;
import readback.grammar.Prior.Grade;

/** How answers and orders are weighed, and what typing changes. */
class AnswersTest {

    private static final Expectation STEP = Expectation.of(Quantity.RUN_TIME, UnitSetting.US);

    private final Grammar grammar = Grammar.standard();

    private static Hypothesis heard(String words, double confidence) {
        return new Hypothesis(
                words,
                confidence,
                List.of(words.split(" ", -1)).stream()
                        .map(word -> new Hypothesis.Word(word, confidence, 0, 0))
                        .toList());
    }

    private Decision decide(Expectation step, List<Confusion> confusions, Hypothesis... hypotheses) {
        return new Weighing(grammar, grammar.lexicon(), new Confusions(confusions), step, Prior.indifferent())
                .decide(List.of(hypotheses));
    }

    private Decision decide(Expectation step, Hypothesis... hypotheses) {
        return decide(step, List.of(), hypotheses);
    }

    private static Meaning ordered(Command command) {
        return new Meaning.Ordered(command);
    }

    private static Meaning minutes(String value) {
        return new Meaning.Values(List.of(Reading.of(Quantity.RUN_TIME, value)));
    }

    @Test
    void yesAndDoneAreOneAnswerWhereDoneIsAskedFor() {
        assertThat(decide(STEP.answeredBy(Command.DONE), heard("yes", 0.5), heard("done", 0.25)))
                .isEqualTo(new Decision.Accept(ordered(Command.DONE), 0.75, false));
        assertThat(decide(STEP.answeredBy(Command.DONE), heard("yes", 0.5), heard("done", 0.375)))
                .isEqualTo(new Decision.Accept(ordered(Command.DONE), 0.875, false));
    }

    @Test
    void doneIsNeverTakenForYesWhereYesIsAskedFor() {
        assertThat(decide(STEP.answeredBy(Command.YES, Command.NO), heard("done", 0.9), heard("yes", 0.1)))
                .isEqualTo(new Decision.Accept(ordered(Command.DONE), 0.9, false));
    }

    @Test
    void yesAndDoneDifferWhereNeitherIsAskedFor() {
        assertThat(decide(STEP, heard("yes", 0.5), heard("done", 0.375)))
                .isInstanceOfSatisfying(Decision.Accept.class, accept -> {
                    assertThat(accept.meaning()).isEqualTo(ordered(Command.YES));
                    assertThat(accept.doubtful()).isTrue();
                });
    }

    @Test
    void noIsNeverTakenForDone() {
        assertThat(decide(STEP.answeredBy(Command.DONE), heard("no", 0.9), heard("yes", 0.1)))
                .isEqualTo(new Decision.Accept(ordered(Command.NO), 0.9, false));
    }

    @Test
    void anOrderAboutAQuantityIsNoAnswer() {
        Expectation asked = STEP.answeredBy(Command.YES);
        Decision decision = decide(asked, heard("scratch the suction", 0.9));

        assertThat(decision)
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.meaning()).isNotEqualTo(ordered(Command.YES)));
    }

    @ParameterizedTest
    @EnumSource(names = {"YES", "NO", "FINISH"})
    void whatChangesOrEndsSomethingNeedsMoreCertainty(Command command) {
        String words = command.name().toLowerCase(Locale.ROOT);

        assertThat(decide(STEP, heard(words, 0.7), heard("help", 0.3)))
                .isEqualTo(new Decision.Accept(ordered(command), 0.7, true));
    }

    @Test
    void theOrderThatEndsTheSessionIsAskedAgainWhereItWasHeardFaintlyEvenAlone() {
        assertThat(decide(STEP, heard("exit", 0.58)))
                .isEqualTo(new Decision.Accept(ordered(Command.FINISH), 0.58, true));
        assertThat(decide(STEP, heard("exit", 0.7)))
                .isEqualTo(new Decision.Accept(ordered(Command.FINISH), 0.7, false));
        assertThat(decide(STEP, heard("skip", 0.58)))
                .isEqualTo(new Decision.Accept(ordered(Command.SKIP), 0.58, false));
    }

    @Test
    void whatOnlyMakesUsSpeakNeedsLess() {
        assertThat(decide(STEP, heard("help", 0.7), heard("no", 0.3)))
                .isEqualTo(new Decision.Accept(ordered(Command.HELP), 0.7, false));
    }

    @Test
    void knownConfusionsConcernWhatWasHeardAndNotWhatWasTyped() {
        List<Confusion> often = List.of(new Confusion(List.of("sixty"), List.of("fifty"), 1));

        assertThat(decide(STEP, often, Hypothesis.typed("sixty")))
                .isEqualTo(new Decision.Accept(minutes("60"), 1, false));
        assertThat(decide(STEP, often, new Hypothesis("sixty", 1, List.of(new Hypothesis.Word("sixty", 0.5, 0, 0)))))
                .isInstanceOf(Decision.AskBetween.class);
    }

    @Test
    void aNumberThatMayLackADigitNeedsAYesUnlessItWasTyped() {
        Decision taken = new Decision.Accept(minutes("45"), 1, false);

        assertThat(decide(STEP, Hypothesis.typed("four five"))).isEqualTo(taken);
        assertThat(decide(STEP, heard("forty five", 1))).isEqualTo(taken);
        assertThat(decide(STEP, new Hypothesis("four five", 0.99, List.of())))
                .isEqualTo(new Decision.Accept(minutes("45"), 0.99, true));
        assertThat(decide(STEP, heard("four five", 1))).isEqualTo(new Decision.Accept(minutes("45"), 1, true));
        assertThat(decide(STEP, new Hypothesis("four five", 1, List.of()), new Hypothesis("four", 0, List.of())))
                .isEqualTo(new Decision.Accept(minutes("45"), 1, true));
    }

    @Test
    void aBeforeANumberMayHaveBeenEight() {
        Expectation pressure = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);

        assertThat(decide(pressure, heard("a forty two", 0.9)))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.doubtful()).isTrue());
        assertThat(decide(pressure, heard("a hundred and ten", 0.9)))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.doubtful()).isFalse());
        assertThat(decide(pressure, heard("one one zero", 0.9)))
                .isInstanceOfSatisfying(
                        Decision.Accept.class,
                        accept -> assertThat(accept.doubtful()).isFalse());
    }

    @Test
    void aValueHeardOftenBesideTheBestOneIsAskedAboutAndARareOneIfItIsHeardMoreOften() {
        Prior rarely = reading -> reading.value().toPlainString().equals("19") ? Grade.UNUSUAL : Grade.TYPICAL;

        assertThat(new Weighing(grammar, grammar.lexicon(), new Confusions(List.of()), STEP, rarely)
                        .decide(List.of(heard("fifty", 0.6), heard("nineteen", 0.4))))
                .isInstanceOf(Decision.AskBetween.class);
        assertThat(decide(STEP, heard("fifty", 0.75), heard("nineteen", 0.25))).isInstanceOf(Decision.AskBetween.class);
        assertThat(new Weighing(grammar, grammar.lexicon(), new Confusions(List.of()), STEP, rarely)
                        .decide(List.of(heard("fifty", 0.85), heard("nineteen", 0.15))))
                .isEqualTo(new Decision.Accept(minutes("50"), 0.85, false));
    }

    @Test
    void speechThatIsHalfUnknownIsIgnoredAndLessIsAskedAbout() {
        assertThat(decide(STEP, heard("[unk] suction", 0.9))).isInstanceOf(Decision.Ignore.class);
        assertThat(decide(STEP, heard("[unk] suction line", 0.9))).isInstanceOf(Decision.AskAgain.class);
    }

    @Test
    void confidencesThatExceedOneCountByTheirShare() {
        // together 1.6: the first has five eighths of everything heard
        assertThat(decide(STEP, heard("fifteen", 1), heard("fifty", 0.6)))
                .isEqualTo(new Decision.AskBetween(List.of(minutes("15"), minutes("50"))));
        assertThat(decide(STEP, heard("fifteen", 1), heard("nonsense words", 1)))
                .isEqualTo(new Decision.Accept(minutes("15"), 0.5, false));
    }
}
