package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import readback.calc.applicability.CircuitParts;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;

class ChecklistValidatorTest {

    private static List<String> faults(String steps, String when) {
        Map<String, String> files = Map.of(
                "jobs.json",
                        "{\"jobs\": [{\"id\": \"mute-job\", \"parts\": [{\"checklist\": \"one\", \"when\": " + when
                                + "}]}]}",
                "one.json", "{\"steps\": [" + steps + "]}");
        return ChecklistValidator.of(
                Checklists.read(files::get), Rehearsal.GRAMMAR.choices(), key -> !key.contains("mute"));
    }

    @Test
    void the_checklists_of_this_build_name_nothing_that_nobody_knows() {
        assertThat(ChecklistValidator.of(Checklists.standard(), Rehearsal.GRAMMAR.choices(), Rehearsal.WORDING::has))
                .isEmpty();
    }

    /** The table of calc decides how long; the checklist's steps have to agree with it. */
    @Test
    void charge_settles_for_as_long_as_the_parts_of_the_circuit_ask_for() {
        Job check = Checklists.standard().job(JobId.CHARGE_CHECK).orElseThrow();

        assertThat(check.step("settle").orElseThrow().step().task().awaited())
                .contains(CircuitParts.USUAL.change().settling());
        assertThat(check.step("settle-longer").orElseThrow().step().task().awaited())
                .contains(new CircuitParts(false, true).change().settling());
    }

    @Test
    void everything_that_nobody_knows_is_named_with_its_place() {
        String steps = """
                {"id": "device", "choose": "metering-device"},
                {"id": "asked", "question": "yes-or-no", "when": {"slot": "metering-device", "is": ["nozzle"]}},
                {"id": "mute", "acknowledge": true, "when": {"not": {"answered": "nobody-fills"}}},
                {"id": "colour", "choose": "colour"},
                {"id": "found", "acknowledge": true, "when": {"all": [{"found": "blend"}, {"found": "look-under-the-rug"}]}},
                {"id": "hold", "measure": "NITROGEN_PRESSURE", "again": {"found": "look-at-the-moon"}},
                {"id": "waits", "acknowledge": true, "when": {"slot": "pressure-start", "is": ["high"]}},
                {"id": "shares", "texts": "mute-air", "acknowledge": true},
                {"id": "changes", "acknowledge": true, "readingsAnew": true}
                """;

        assertThat(faults(steps, "{\"found\": \"look-behind-the-sofa\"}"))
                .anySatisfy(fault -> assertThat(fault).contains("step asked", "nozzle", "piston"))
                .anySatisfy(fault -> assertThat(fault).contains("step mute", "nobody-fills"))
                .anySatisfy(fault -> assertThat(fault).contains("step mute", "no text step.mute.ask"))
                .anySatisfy(fault -> assertThat(fault).contains("step shares", "no text step.mute-air.how"))
                .noneSatisfy(fault -> assertThat(fault).contains("step shares", "why"))
                .anySatisfy(fault -> assertThat(fault).contains("job mute-job", "no checklist that repeats", "changes"))
                .anySatisfy(fault -> assertThat(fault).contains("step colour", "no set of choices"))
                .anySatisfy(fault -> assertThat(fault).contains("step found", "look-under-the-rug"))
                .anySatisfy(fault -> assertThat(fault).contains("step hold", "look-at-the-moon"))
                .anySatisfy(fault -> assertThat(fault).contains("step waits", "pressure-start"))
                .anySatisfy(fault -> assertThat(fault).contains("job mute-job", "look-behind-the-sofa"))
                .anySatisfy(fault -> assertThat(fault).contains("the program", "pressure-start"))
                .anySatisfy(fault -> assertThat(fault).contains("job mute-job", "no text term.job.mute-job"))
                .anySatisfy(fault -> assertThat(fault).contains("nobody can ask for the job", "mute-job"))
                .anySatisfy(fault -> assertThat(fault).contains("\"charge-check\" can be asked for"))
                .noneSatisfy(fault -> assertThat(fault).contains("blend"));
    }
}
