package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

class AcceptanceTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation SUCTION = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);

    private static final Decision AGAIN = new Decision.AskAgain(Meaning.NotUnderstood.of(Reason.Kind.NUMBER_UNCLEAR));

    private static Hypothesis heard(double confidence, String words) {
        return new Hypothesis(words, confidence, List.of());
    }

    private static Decision decided(Hypothesis... hypotheses) {
        return GRAMMAR.decide(List.of(hypotheses), SUCTION, Prior.indifferent());
    }

    @Test
    void a_value_that_fills_the_whole_utterance_is_taken() {
        assertThat(decided(heard(0.97, "one eighteen"))).isInstanceOf(Decision.Accept.class);
    }

    @Test
    void a_word_of_ours_among_unknown_ones_is_ignored() {
        assertThat(decided(heard(0.97, "[unk] yes [unk]"))).isInstanceOf(Decision.Ignore.class);
        assertThat(decided(heard(0.97, "[unk] [unk] [unk] one eighteen"))).isInstanceOf(Decision.Ignore.class);
    }

    @Test
    void words_of_ours_are_ignored_where_unknown_ones_are_likelier_on_the_whole() {
        assertThat(decided(heard(0.36, "carry on"), heard(0.33, "[unk] on"), heard(0.31, "[unk]")))
                .isInstanceOf(Decision.Ignore.class);
    }

    @Test
    void number_words_at_a_question_for_a_number_are_asked_for_again_however_weak() {
        assertThat(decided(heard(0.36, "one eighteen"), heard(0.33, "[unk] eighteen"), heard(0.31, "[unk]")))
                .isEqualTo(AGAIN);
        assertThat(decided(heard(0.2, "[unk] one eighteen"))).isEqualTo(AGAIN);
        assertThat(decided(heard(0.2, "suction [unk] nine"))).isEqualTo(AGAIN);
    }

    @Test
    void number_words_are_ignored_where_no_number_is_asked_for() {
        assertThat(GRAMMAR.decide(
                        List.of(heard(0.3, "one eighteen")), Expectation.open(UnitSetting.US), Prior.indifferent()))
                .isInstanceOf(Decision.Ignore.class);
    }

    @Test
    void doubt_between_words_of_ours_does_not_speak_against_it_but_doubt_whether_anything_was_said_does() {
        assertThat(Acceptance.of(List.of(heard(0.6, "yes"), heard(0.4, "no"))).belief())
                .isCloseTo(1, within(1e-12));
        assertThat(Acceptance.of(List.of(heard(0.6, "yes"), heard(0.4, "[unk]")))
                        .belief())
                .isCloseTo(0.6, within(1e-12));
        assertThat(Acceptance.of(List.of(heard(0.6, "yes"))).belief()).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void an_utterance_of_unknown_words_only_is_not_believed() {
        assertThat(Acceptance.of(List.of(heard(0.9, "[unk] [unk]"))).belief()).isZero();
    }

    @Test
    void what_follows_talk_closely_needs_more() {
        List<Hypothesis> likely = List.of(heard(0.7, "one eighteen"), heard(0.29, "[unk] eighteen"));

        assertThat(GRAMMAR.decide(likely, SUCTION, Prior.indifferent(), 1.9)).isEqualTo(AGAIN);
        assertThat(GRAMMAR.decide(
                        List.of(heard(0.7, "carry on"), heard(0.29, "[unk] on")), SUCTION, Prior.indifferent(), 1.9))
                .isEqualTo(new Decision.Ignore(Decision.Ignorance.AMID_TALK));
        assertThat(GRAMMAR.decide(likely, SUCTION, Prior.indifferent(), 2.1)).isInstanceOf(Decision.Accept.class);
        assertThat(GRAMMAR.decide(List.of(heard(0.95, "one eighteen")), SUCTION, Prior.indifferent(), 0.1))
                .isInstanceOf(Decision.Accept.class);
    }

    @Test
    void typed_words_are_always_looked_at() {
        assertThat(Acceptance.of(List.of(Hypothesis.typed("one eighteen"))).belief())
                .isEqualTo(1);
    }

    private static boolean doubted(String words, Expectation expectation, double sinceTalk) {
        return GRAMMAR.decide(List.of(heard(0.99, words)), expectation, Prior.indifferent(), sinceTalk)
                .accepted()
                .orElseThrow()
                .doubtful();
    }

    @Test
    void a_value_that_nobody_asked_for_and_named_is_asked_about_soon_after_talk() {
        assertThat(doubted("four hundred fifty microns", SUCTION, 4)).isTrue();
        assertThat(doubted("four hundred fifty microns", SUCTION, Grammar.NO_TALK))
                .isFalse();
        assertThat(doubted("four hundred fifty microns", SUCTION, 10)).isFalse();
        assertThat(doubted("twelve amps", SUCTION, 4)).isTrue();
        assertThat(doubted("twelve amps", SUCTION, Grammar.NO_TALK)).isFalse();
    }

    @Test
    void a_value_that_was_asked_for_or_is_named_is_taken_after_talk_too() {
        assertThat(doubted("one eighteen", SUCTION, 4)).isFalse();
        assertThat(doubted("vacuum level four hundred fifty microns", SUCTION, 4))
                .isFalse();
        assertThat(doubted("head pressure three fifty", SUCTION, 4)).isFalse();
        assertThat(doubted("correction four hundred fifty microns", SUCTION, 4)).isFalse();
    }
}
