package readback.prompts.checklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.charge.Verdict;
import readback.calc.quantity.Quantity;

class ChecklistsTest {

    private static final String JOBS = """
            {"jobs": [
              {"id": "job", "parts": [
                {"checklist": "list", "when": {"slot": "device", "is": ["piston"]}}
              ]}
            ]}
            """;

    private static Checklists read(String list) {
        return Checklists.read(
                file -> Map.of("jobs.json", JOBS, "list.json", list).get(file));
    }

    @Test
    void the_bundled_checklists_are_valid() {
        assertThat(Checklists.standard().job(JobId.CHARGE_CHECK)).isPresent();
    }

    @Test
    void a_piston_is_checked_by_superheat_and_a_valve_by_subcooling() {
        Job job = Checklists.standard().job(JobId.CHARGE_CHECK).orElseThrow();

        assertThat(measured(job, "piston"))
                .contains(Quantity.RETURN_WET_BULB, Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE)
                .doesNotContain(Quantity.PLATE_SUBCOOLING);
        assertThat(measured(job, "thermostatic-expansion-valve"))
                .contains(Quantity.PLATE_SUBCOOLING, Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE);
    }

    private static List<Quantity> measured(Job job, String device) {
        return job.applicable(choosing(device))
                .flatMap(placed -> placed.step().task().measured().stream())
                .toList();
    }

    private static ConditionContext choosing(String device) {
        return new ConditionContext() {
            @Override
            public boolean answered(Slot slot) {
                return slot.id().equals("metering-device");
            }

            @Override
            public boolean measured(Slot slot) {
                return false;
            }

            @Override
            public Optional<String> option(Slot slot) {
                return slot.id().equals("metering-device") ? Optional.of(device) : Optional.empty();
            }

            @Override
            public Optional<Verdict.Kind> verdict() {
                return Optional.empty();
            }

            @Override
            public boolean found(String finding) {
                return false;
            }
        };
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                arguments("{'steps': [\n{'id': 'a', 'measure': 'SUCKTION'}]}", 2, "\"SUCKTION\" is not a quantity"),
                arguments("{'steps': [\n\n{'measure': 'ALTITUDE'}]}", 3, "\"id\" is missing"),
                arguments(
                        "{'steps': [{'id': 'a', 'question': 'yes-or-no'},\n{'id': 'a', 'question': 'yes-or-no'}]}",
                        2,
                        "step \"a\" exists already"),
                arguments("{'steps': [{'id': 'a'}]}", 1, "exactly one of"),
                arguments(
                        "{'steps': [{'id': 'a', 'measure': 'ALTITUDE',\n'readingsAnew': true}]}",
                        2,
                        "\"readingsAnew\" is not known here"),
                arguments(
                        "{'steps': [{'id': 'a', 'question': 'yes-or-no',\n'whn': {}}]}",
                        2,
                        "\"whn\" is not known here"),
                arguments(
                        "{'steps': [{'id': 'a', 'question': 'yes-or-no', 'when':\n{'slott': 'x'}}]}",
                        2,
                        "\"slott\" is not a condition"),
                arguments("{'steps': [{'id': 'a', 'await': '15 minutes'}]}", 1, "not a duration like PT15M"),
                arguments("{'steps': [{'id': 'a', 'prepare': 'JUGGLING'}]}", 1, "is not an activity"),
                arguments("{'steps': [{'id': 'a', 'question': 'yes-or-no', 'optional': 'no'}]}", 1, "true or false"),
                arguments("{'steps': [{'id': 'a', 'question': 'maybe'}]}", 1, "must-be-yes"),
                arguments(
                        "{'steps': [{'id': 'a',\n'judge': 'character'}]}",
                        2,
                        "cannot be judged; what can is [charge, airflow"),
                arguments(
                        "{'steps': [{'id': 'a', 'signOff': true, 'when': {'verdict':\n['guilty']}}]}",
                        2,
                        "is no verdict; the verdicts are [in-tolerance"),
                arguments("{'steps': []}", 1, "at least one step"),
                arguments("{'steps': {}}", 1, "expected a list"),
                arguments("{'steps': [", 1, "not valid JSON"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void a_fault_is_reported_with_file_line_and_what_is_wrong(String list, int line, String fault) {
        assertThatThrownBy(() -> read(list.replace('\'', '"')))
                .isInstanceOf(ChecklistFault.class)
                .hasMessageStartingWith("list.json:" + line + ":")
                .hasMessageContaining(fault);
    }

    @Test
    void a_step_shares_what_is_asked_and_how_it_is_found_out_but_not_why() {
        Step shared = read("""
                        {"steps": [{"id": "a", "texts": "air", "measure": "OUTDOOR_TEMPERATURE"}]}""").all().get(0).steps().get(0);

        assertThat(List.of(".ask", ".again", ".how", ".why", ".repeat").stream()
                        .map(ending -> shared.text(ending).key()))
                .containsExactly("step.air.ask", "step.air.again", "step.air.how", "step.a.why", "step.a.repeat");
    }

    @Test
    void a_job_that_names_a_missing_checklist_is_refused_where_it_names_it() {
        assertThatThrownBy(() -> Checklists.read(file -> file.equals("jobs.json") ? JOBS : null))
                .isInstanceOf(ChecklistFault.class)
                .hasMessageStartingWith("jobs.json:3: checklist \"list\" has no file");
    }

    @Test
    void conditions_combine() {
        ConditionContext piston = choosing("piston");
        StepCondition is = new StepCondition.OptionIs(new Slot("metering-device"), Set.of("piston"));

        assertThat(is.holds(piston)).isTrue();
        assertThat(new StepCondition.Not(is).holds(piston)).isFalse();
        assertThat(new StepCondition.AllOf(List.of(is, new StepCondition.Answered(new Slot("refrigerant"))))
                        .holds(piston))
                .isFalse();
        assertThat(new StepCondition.AnyOf(List.of(is, new StepCondition.Answered(new Slot("refrigerant"))))
                        .holds(piston))
                .isTrue();
        assertThat(new StepCondition.VerdictIs(Set.of(Verdict.Kind.ADD)).holds(piston))
                .isFalse();
    }
}
