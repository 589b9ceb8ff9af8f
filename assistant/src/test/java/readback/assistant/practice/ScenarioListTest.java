package readback.assistant.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import readback.assistant.dialogue.Slots;
import readback.assistant.simulated.Site;
import readback.calc.diagnosis.Fault;
import readback.calc.name.ConstantName;
import readback.calc.plant.PlantFault;
import readback.calc.quantity.Quantity;
import readback.grammar.Grammar;
import readback.prompts.text.Language;

class ScenarioListTest {

    private static final Language LANGUAGE = Language.english();

    @Test
    void every_fault_can_be_said_as_the_own_verdict_of_an_exam() {
        assertThat(Grammar.standard().choices().options(Slots.OWN_VERDICT.id()))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(Fault.values()).map(ConstantName::of).toList());
    }

    @Test
    void every_scenario_runs_has_a_complaint_and_a_goal_and_a_fault_that_its_unit_can_have() {
        ScenarioList list = ScenarioList.standard();
        assertThat(list.names()).hasSizeGreaterThanOrEqualTo(12).doesNotHaveDuplicates();
        for (String name : list.names()) {
            Scenario scenario = list.find(name).orElseThrow();
            assertThat(LANGUAGE.label(scenario.complaint())).as(name).isNotBlank();
            assertThat(LANGUAGE.label("practice.goal." + name)).as(name).isNotBlank();
            assertThat(scenario.drawn()
                            .truth()
                            .faults()
                            .possibleWith(scenario.drawn()
                                    .unit()
                                    .plate()
                                    .meteringDevice()
                                    .chargeMethod()))
                    .as(name)
                    .isTrue();
            Site site = new Site(scenario.drawn());
            assertThat(site.runs()).as(name).isTrue();
            assertThat(site.reads(Quantity.SUCTION_PRESSURE)).as(name).isPresent();
        }
    }

    @ParameterizedTest
    @EnumSource(Difficulty.class)
    void a_drawn_call_suits_its_difficulty_and_is_found_by_its_name(Difficulty difficulty) {
        for (long start = 1; start <= 5; start++) {
            Scenario drawn = Scenario.drawn(difficulty, start);

            assertThat(drawn.difficulty()).isEqualTo(difficulty);
            assertThat(drawn.drawn().truth().sound() && difficulty != Difficulty.HARD)
                    .isFalse();
            assertThat(Scenario.named(drawn.name()).orElseThrow().drawn().toString())
                    .isEqualTo(drawn.drawn().toString());
            assertThat(LANGUAGE.label(drawn.complaint())).isNotBlank();
        }
    }

    @ParameterizedTest
    @EnumSource(PlantFault.class)
    void every_fault_has_a_name(PlantFault fault) {
        assertThat(LANGUAGE.label("term.plant." + readback.calc.name.ConstantName.of(fault)))
                .isNotBlank();
    }
}
