package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.name.ConstantName;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;

/** Questions, cries for help and what is told of the unit: each can be said in every way at every moment. */
class SaidAnywhereTest {

    /** Moments of a session by the lines that lead to them. */
    private static final Map<String, List<String>> MOMENTS = Map.of(
            "at the beginning", List.of(),
            "before the cautions were heeded", List.of("four ten a", "piston"),
            "at a question", List.of("four ten a", "piston", "understood"),
            "at a number", List.of("four ten a", "piston", "understood", "yes", "yes"),
            "at a value in doubt", List.of("four ten a", "piston", "understood", "yes", "yes", "outdoor forty"),
            "on hold", List.of("four ten a", "piston", "hold on"),
            "at the end", List.of("four ten a", "finish"));

    private static Rehearsal at(List<String> lines) {
        return new Rehearsal().says(lines.toArray(String[]::new));
    }

    private static Rehearsal at(String moment) {
        return at(Objects.requireNonNull(MOMENTS.get(moment), moment));
    }

    private static List<String> names(Enum<?>[] constants) {
        return Arrays.stream(constants).map(ConstantName::of).toList();
    }

    private static List<String> phrases(String set, String option) {
        return Rehearsal.GRAMMAR.choices().phrases(set, option);
    }

    @Test
    void everything_that_can_be_said_has_an_answer_and_the_other_way_round() {
        assertThat(Rehearsal.GRAMMAR.choices().options(Question.CHOICE))
                .containsExactlyInAnyOrderElementsOf(names(Question.values()));
        assertThat(Rehearsal.GRAMMAR.choices().options(Emergency.CHOICE))
                .containsExactlyInAnyOrderElementsOf(names(Emergency.values()));
        assertThat(Rehearsal.GRAMMAR.choices().options(Situations.CHOICE))
                .containsExactlyInAnyOrderElementsOf(names(Situations.Told.values()));
        assertThat(Rehearsal.GRAMMAR.choices().options(Term.CHOICE))
                .containsExactlyInAnyOrderElementsOf(names(Term.values()));
    }

    @ParameterizedTest
    @EnumSource
    void a_cry_for_help_is_answered_at_every_moment_and_nothing_is_asked_after_it(Emergency emergency) {
        String option = ConstantName.of(emergency);
        MOMENTS.forEach((moment, lines) -> {
            for (String cry : phrases(Emergency.CHOICE, option)) {
                Rehearsal rehearsal = at(lines).says(cry);

                assertThat(rehearsal.keys())
                        .as(cry + ", " + moment)
                        .containsExactly("emergency." + option, "emergency.over");
                assertThat(rehearsal.state().held()).as(cry + ", " + moment).isTrue();
                assertThat(rehearsal.turn().outcome().understood().meaning())
                        .contains(new Meaning.Choice(Emergency.CHOICE, option));
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void what_to_do_in_an_emergency_is_told_to_who_asks_and_the_work_goes_on(Emergency emergency) {
        String option = ConstantName.of(emergency);
        for (String cry : phrases(Emergency.CHOICE, option)) {
            Rehearsal rehearsal = at("at a number").says("what do i do if " + cry);

            assertThat(rehearsal.keys()).as(cry).startsWith("emergency." + option, "emergency.asked");
            assertThat(rehearsal.state().held()).as(cry).isFalse();
            assertThat(at("on hold").says("what do i do if " + cry).keys())
                    .as(cry + ", on hold")
                    .containsExactly("emergency." + option, "held");
        }
    }

    @Test
    void a_cry_for_help_is_answered_however_weakly_it_was_heard() {
        Rehearsal rehearsal = at("on hold")
                .hears(new Hypothesis("i smell gas", 0.6, List.of()), new Hypothesis("say again", 0.35, List.of()));

        assertThat(rehearsal.keys()).contains("emergency.gas");
    }

    @Test
    void what_was_asked_before_a_cry_is_asked_again_after_it() {
        Rehearsal rehearsal = at("at a value in doubt");
        List<String> doubt = rehearsal.keys();
        rehearsal.says("fire", "carry on");

        assertThat(rehearsal.keys()).endsWith(doubt.get(doubt.size() - 1));
    }

    static Stream<String> questions() {
        return names(Question.values()).stream();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void a_question_is_answered_at_every_step_and_changes_nothing(String option) {
        for (String moment :
                List.of("at the beginning", "before the cautions were heeded", "at a question", "at a number")) {
            for (String words : phrases(Question.CHOICE, option)) {
                Rehearsal rehearsal = at(moment);
                Sheet before = rehearsal.state().sheet();
                rehearsal.says(words);

                assertThat(rehearsal.turn().outcome().understood().meaning())
                        .as(words + ", " + moment)
                        .contains(new Meaning.Choice(Question.CHOICE, option));
                assertThat(rehearsal.state().sheet()).isEqualTo(before);
                assertThat(rehearsal.messages()).isNotEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_word_of_the_trade_is_explained_at_every_step_and_nothing_is_taken(Term term) {
        String option = ConstantName.of(term);
        for (String moment :
                List.of("at the beginning", "before the cautions were heeded", "at a question", "at a number")) {
            for (String words : phrases(Term.CHOICE, option)) {
                Rehearsal rehearsal = at(moment);
                Sheet before = rehearsal.state().sheet();
                rehearsal.says(words);

                assertThat(rehearsal.keys()).as(words + ", " + moment).contains("explained." + option);
                assertThat(rehearsal.state().sheet()).isEqualTo(before);
            }
        }
    }

    @Test
    void what_is_told_of_the_unit_is_answered() {
        for (Situations.Told told : Situations.Told.values()) {
            for (String words : phrases(Situations.CHOICE, ConstantName.of(told))) {
                Rehearsal rehearsal = at("at a number").says(words);

                assertThat(rehearsal.turn().outcome().understood().meaning())
                        .as(words)
                        .contains(new Meaning.Choice(Situations.CHOICE, ConstantName.of(told)));
                assertThat(rehearsal.messages()).isNotEmpty();
            }
        }
    }
}
