package readback.assistant.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

class DrillTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Progress NOTHING = Progress.of(List.of(), ZoneOffset.UTC);

    private final Skill saturation = skill("saturation-r-410a");
    private Drill drill = drill(saturation);
    private Drill.Reply reply = new Drill.Reply(List.of(), Optional.empty());

    private static Skill skill(String id) {
        return Skill.all().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Drill drill(Skill... skills) {
        Drill drill = Drill.of(GRAMMAR, UnitSetting.US, List.of(skills), NOTHING);
        drill.begin();
        return drill;
    }

    private void says(String words, double seconds) {
        reply = drill.hears(List.of(Hypothesis.typed(words)), seconds);
    }

    private double right(int review) {
        return ((Wanted.Amount) saturation.question(review, UnitSetting.US).wanted())
                .value()
                .value()
                .doubleValue();
    }

    private String told() {
        return String.join(" ", reply.says().stream().map(Message::key).toList());
    }

    /** Tolerance 1 °F; the limits of time and tolerance are ours. */
    @ParameterizedTest
    @CsvSource({
        "0, 3, EASY",
        "0.9, 5.9, EASY",
        "-0.9, 6.1, GOOD",
        "0, 19, GOOD",
        "0, 21, HARD",
        "1.5, 3, HARD",
        "-1.5, 3, HARD",
        "2.5, 3, AGAIN",
        "-9, 3, AGAIN"
    })
    void a_number_is_graded_by_how_far_and_how_late_it_is(double off, double seconds, Grade grade) {
        says(String.valueOf(Math.round((right(0) + off) * 10) / 10.0), seconds);

        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(grade);
    }

    @Test
    void what_is_in_another_unit_is_converted() {
        says(Math.round((right(0) - 32) / 0.18) / 10.0 + " celsius", 3);

        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.EASY);
    }

    @Test
    void what_was_not_understood_is_not_graded() {
        says("my dog has fleas", 3);

        assertThat(reply.graded()).isEmpty();
        assertThat(told()).isEqualTo("drill.unclear drill.hint.number");
        says(String.valueOf(right(0)), 3);
        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.EASY);
    }

    @Test
    void after_a_hint_or_a_repetition_it_was_hard() {
        says("why", 2);
        says("say again", 2);
        says(String.valueOf(right(0)), 2);

        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.HARD);
    }

    @Test
    void who_does_not_know_is_told_and_asked_once_more_with_other_numbers() {
        says("i don't know", 2);

        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.AGAIN);
        assertThat(told()).isEqualTo("drill.unknown drill.because.saturation.low drill.ask.saturation.low");
        assertThat(drill.closed()).isFalse();
        says(String.valueOf(right(1)), 2);
        assertThat(reply.graded().orElseThrow().review()).isEqualTo(1);
        assertThat(drill.closed()).isTrue();
        assertThat(told()).endsWith("drill.end");
    }

    @Test
    void options_and_yes_or_no_are_taken() {
        drill = drill(skill("method"), skill("flammable"));
        String method =
                ((Wanted.Option) skill("method").question(0, UnitSetting.US).wanted()).right();
        says("by " + method, 2);
        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.EASY);
        boolean burns = ((Wanted.Agreement)
                        skill("flammable").question(0, UnitSetting.US).wanted())
                .yes();
        says(burns ? "no" : "yes", 2);
        assertThat(reply.graded().orElseThrow().grade()).isEqualTo(Grade.AGAIN);
    }

    @Test
    void it_ends_when_told_so() {
        says("finish", 1);

        assertThat(drill.closed()).isTrue();
        assertThat(told()).isEqualTo("drill.end.none");
        assertThat(Language.english().wording().shown(reply.says().get(0), UnitSetting.US))
                .isEqualTo("Nothing was answered.");
    }

    @Test
    void nothing_to_ask_is_no_drill() {
        Drill empty = Drill.of(GRAMMAR, UnitSetting.US, List.of(), NOTHING);

        assertThat(empty.begin()).isEmpty();
        assertThat(empty.closed()).isTrue();
    }
}
