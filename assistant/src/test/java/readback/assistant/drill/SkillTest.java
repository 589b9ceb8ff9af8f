package readback.assistant.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Language;
import readback.prompts.text.Wording;

class SkillTest {

    private static final Wording WORDING = Language.english().wording();

    static Stream<Skill> skills() {
        return Skill.all().stream();
    }

    @Test
    void there_are_enough_and_no_name_is_used_twice() {
        assertThat(Skill.all()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(Skill.all().stream().map(Skill::id)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("skills")
    void every_question_can_be_said_and_shown_in_either_units_and_differs_from_the_one_before(Skill skill) {
        Set<String> asked = new HashSet<>();
        for (UnitSetting units : new UnitSetting[] {UnitSetting.US, UnitSetting.METRIC}) {
            for (int review = 0; review < 12; review++) {
                Question question = skill.question(review, units);
                asked.add(WORDING.shown(question.asked(), units));

                assertThat(WORDING.spoken(question.asked(), false, units)).isNotBlank();
                assertThat(WORDING.shown(question.because(), units)).isNotBlank();
                assertThat(WORDING.spoken(question.because(), false, units)).isNotBlank();
                assertThat(skill.question(review, units)).isEqualTo(question);
            }
        }
        assertThat(asked).hasSizeGreaterThan(3);
        assertThat(Language.english().find("drill.skill." + skill.id())).isPresent();
    }

    /** Whoever always says the same must not be right always. */
    @ParameterizedTest
    @MethodSource("skills")
    void no_answer_is_always_right(Skill skill) {
        Set<Object> right = new HashSet<>();
        for (int review = 0; review < 40; review++) {
            right.add(skill.question(review, UnitSetting.US).wanted().fold(new Wanted.Cases<Object>() {
                @Override
                public Object number(Wanted.Amount number) {
                    return number.value().value();
                }

                @Override
                public Object option(Wanted.Option option) {
                    assertThat(option.offered()).contains(option.right());
                    return option.right();
                }

                @Override
                public Object agreement(Wanted.Agreement agreement) {
                    return agreement.yes();
                }
            }));
        }
        // in the cold there is but one check
        assertThat(right.size()).isGreaterThan(skill.id().equals("method-when-cold") ? 0 : 1);
    }
}
