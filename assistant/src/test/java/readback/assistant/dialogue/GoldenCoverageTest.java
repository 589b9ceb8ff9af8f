package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import readback.calc.applicability.ChargeTest;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Verdict;
import readback.calc.measurement.MeteringDevice;
import readback.calc.name.ConstantName;
import readback.calc.procedure.HeatingCheck;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.grammar.Command;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Step;

/** Whether the reviewed conversations, taken together, show everything that the dialogue can do. */
@Tag("slow")
class GoldenCoverageTest {

    private static final Set<String> CAUTIONS = new TreeSet<>();
    private static final Set<String> VERDICTS = new TreeSet<>();
    private static final Set<String> OUTCOMES = new TreeSet<>();
    private static final Set<String> DEVICES = new TreeSet<>();
    private static final Set<String> STEPS = new TreeSet<>();
    private static final Set<String> ORDERS = new TreeSet<>();

    @BeforeAll
    static void play() throws IOException {
        try (Stream<Path> files = GoldenConversationTest.conversations()) {
            for (Path file : files.toList()) {
                play(GoldenConversationTest.rehearse(
                        Files.readString(file, StandardCharsets.UTF_8).lines().toList()));
            }
        }
    }

    private static void play(Rehearsal rehearsal) {
        List<Event> events = rehearsal.events();
        Turn turn = Rehearsal.DIALOGUE.begin((Event.Started) events.get(0));
        STEPS.addAll(turn.state().asked().stream().toList());
        for (Event event : events.subList(1, events.size())) {
            Set<String> before = checklist(turn.state());
            turn = Rehearsal.DIALOGUE.on(turn.state(), event);
            String understood = turn.outcome().understood().line();
            before.forEach(checklist -> ORDERS.add(agreement(understood.split(" ", 2)[0]) + " in " + checklist));
            turn.outcome().cautions().stream().map(ConstantName::of).forEach(CAUTIONS::add);
            turn.state()
                    .standing()
                    .forEach(outcome -> (outcome.judged() == Judged.CHARGE ? VERDICTS : OUTCOMES)
                            .add(outcome.name().replaceAll(" \\d+g$", " charge")));
            turn.state().sheet().option(Slots.METERING_DEVICE).ifPresent(DEVICES::add);
            turn.state().conversation().asked().ifPresent(STEPS::add);
        }
    }

    /** The checklist that the question comes from, if one was asked. */
    private static Set<String> checklist(State state) {
        Step step = state.conversation()
                .asked()
                .flatMap(id -> job(state).step(id))
                .map(Job.Placed::step)
                .orElse(null);
        return job(state).parts().stream()
                .map(Job.Part::checklist)
                .filter(checklist -> step != null && checklist.steps().contains(step))
                .map(checklist -> checklist.id())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Job job(State state) {
        return Checklists.standard().job(state.job()).orElseThrow();
    }

    /** "Yes" and "done" are one answer: which of them it was taken for depends on what was asked. */
    private static String agreement(String order) {
        return order.equals("done") ? "yes" : order;
    }

    private static List<String> names(Enum<?>[] constants) {
        return Arrays.stream(constants).map(ConstantName::of).toList();
    }

    @Test
    void every_caution_is_given() {
        assertThat(CAUTIONS).containsAll(names(CautionRule.values()));
    }

    @Test
    void every_verdict_and_every_metering_device_occurs() {
        assertThat(VERDICTS)
                .containsAll(Arrays.stream(Verdict.Kind.values())
                        .filter(kind -> kind != Verdict.Kind.INCOMPLETE)
                        .map(ConstantName::of)
                        .toList());
        assertThat(DEVICES).containsAll(names(MeteringDevice.values()));
    }

    /** An isolated pump, the whole wait and a look at half-time are asked for, so other outcomes cannot come about. */
    private static final Set<VacuumDecay.Outcome> KEPT_FROM_HAPPENING =
            EnumSet.of(VacuumDecay.Outcome.NOT_DEEP_ENOUGH, VacuumDecay.Outcome.WAIT, VacuumDecay.Outcome.FAILED);

    @Test
    void every_outcome_of_every_other_job_occurs() {
        Set<String> wanted = new TreeSet<>(List.of(
                "airflow outside-table",
                "heater-airflow measured",
                "capacity measured",
                "capacity no-cooling",
                "resting-pressure no-saturation",
                "weigh-in charge",
                "weigh-in unknown-tube",
                "weigh-in too-much-for-rooms",
                "functional-check usual",
                "functional-check unusual",
                "functional-check not-made",
                "weigh-in impossible",
                "weighed-in nothing"));
        names(SplitCheck.Outcome.values()).forEach(name -> wanted.add("airflow " + name));
        names(StandingPressure.Outcome.values()).forEach(name -> wanted.add("pressure-test " + name));
        names(RestingPressure.Outcome.values()).forEach(name -> wanted.add("resting-pressure " + name));
        names(ChargeTest.values()).forEach(name -> wanted.add("applicable-test " + name));
        names(HeatingCheck.Outcome.values()).forEach(name -> wanted.add("heating " + name));
        names(WeighIn.Outcome.values()).forEach(name -> wanted.add("weighed-in " + name));
        EnumSet.complementOf(EnumSet.copyOf(KEPT_FROM_HAPPENING))
                .forEach(outcome -> wanted.add("evacuation " + ConstantName.of(outcome)));
        assertThat(OUTCOMES).containsAll(wanted);
    }

    @Test
    void every_step_of_every_checklist_is_asked() {
        Set<String> steps = Checklists.standard().jobs().stream()
                .flatMap(job -> job.parts().stream())
                .flatMap(part -> part.checklist().steps().stream())
                .filter(step -> step.task().reply() != readback.prompts.checklist.Task.Reply.NOTHING)
                .map(Step::id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(STEPS).containsAll(steps);
    }

    @Test
    void every_command_is_given_in_every_checklist_of_the_charge_check() {
        Job check = Checklists.standard().job(SessionSettings.STANDARD.job()).orElseThrow();
        Set<String> wanted = new TreeSet<>();
        for (Job.Part part : check.parts()) {
            // a checklist that only tells is never waited at
            if (part.checklist().steps().stream()
                    .allMatch(step -> step.task().reply() == readback.prompts.checklist.Task.Reply.NOTHING)) {
                continue;
            }
            for (Command command : Command.values()) {
                wanted.add(agreement(ConstantName.of(command)) + " in "
                        + part.checklist().id());
            }
        }
        assertThat(ORDERS).containsAll(wanted);
    }
}
