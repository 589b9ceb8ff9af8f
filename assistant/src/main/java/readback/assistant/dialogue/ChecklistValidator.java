package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import readback.grammar.Choices;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.StepCondition;
import readback.prompts.checklist.Task;

/**
 * What checklists name and nobody knows: a slot that no step fills, an option that its slot cannot have, a finding that
 * calc does not tell, a text that the catalogue lacks. Verdicts and what can be judged are types already. Found when
 * the program starts, so that it does not come to light in the middle of a call.
 */
public final class ChecklistValidator {

    private static final Set<String> YES_OR_NO = Set.of(Intake.YES, Intake.NO);
    private static final Set<String> DONE = Set.of(Intake.DONE);

    private final Choices choices;
    private final Predicate<String> hasText;
    private final Map<Slot, Set<String>> options = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    private ChecklistValidator(Choices choices, Predicate<String> hasText) {
        this.choices = choices;
        this.hasText = hasText;
    }

    /**
     * Every fault in a sentence; none in a sound build.
     *
     * @param hasText whether the catalogue has a text of a key
     */
    public static List<String> of(Checklists checklists, Choices choices, Predicate<String> hasText) {
        ChecklistValidator found = new ChecklistValidator(choices, hasText);
        List<Step> steps = checklists.all().stream()
                .flatMap(checklist -> checklist.steps().stream())
                .toList();
        steps.forEach(found::fills);
        Slots.TOLD.forEach(found::told);
        steps.forEach(found::check);
        checklists.jobs().forEach(found::check);
        found.jobs(checklists);
        Slots.ALL.forEach(slot -> found.known("the program", slot));
        return List.copyOf(found.faults);
    }

    private void fills(Step step) {
        Task task = step.task();
        Set<String> possible = slot(step.slot());
        switch (task.reply()) {
            case YES_OR_NO -> possible.addAll(YES_OR_NO);
            case OPTION -> chosen(step, task.choices().orElseThrow());
            case VALUE, DONE, FINISH, TIME, NOTHING -> possible.addAll(DONE);
        }
        step.conclusion()
                .ifPresent(conclusion -> Stream.of(conclusion.yes(), conclusion.no())
                        .flatMap(java.util.Optional::stream)
                        .forEach(slot(conclusion.slot())::add));
    }

    private void told(Slot slot) {
        if (choices.sets().contains(slot.id())) {
            slot(slot).addAll(choices.options(slot.id()));
        } else {
            faults.add("the program waits for \"" + slot + "\" to be told, which is no set of choices");
        }
    }

    private void chosen(Step step, String set) {
        if (choices.sets().contains(set)) {
            slot(new Slot(set)).addAll(choices.options(set));
        } else {
            faults.add("step " + step.id() + " asks for one of \"" + set + "\", which is no set of choices");
        }
    }

    private Set<String> slot(Slot name) {
        return options.computeIfAbsent(name, any -> new TreeSet<>());
    }

    private void check(Job job) {
        String where = "job " + job.id();
        job.parts().forEach(part -> check(where, part.when()));
        boolean repeats = job.parts().stream().anyMatch(part -> part.checklist().repeats());
        job.parts().stream()
                .flatMap(part -> part.checklist().steps().stream())
                .filter(step -> step.readingsAnew() && !repeats)
                .forEach(step -> faults.add(where + " has no checklist that repeats, and step " + step.id()
                        + " has its readings taken anew"));
        Stream.concat(
                        Stream.of("term.job." + job.id()),
                        job.parts().stream()
                                .map(part ->
                                        "term.checklist." + part.checklist().id()))
                .filter(hasText.negate())
                .forEach(key -> faults.add(where + " has no text " + key));
    }

    /** The jobs that can be asked for by voice, and those that the program knows by itself. */
    private void jobs(Checklists checklists) {
        Stream.concat(
                        choices.options(JobStack.JOBS).stream().map(JobId::new),
                        Stream.of(JobId.CHARGE_CHECK, JobId.WEIGH_IN, JobId.FROZEN_COIL))
                .distinct()
                .filter(id -> checklists.job(id).isEmpty())
                .forEach(id -> faults.add("the job \"" + id + "\" can be asked for, and there is none"));
        checklists.jobs().stream()
                .map(Job::id)
                .filter(id -> !choices.options(JobStack.JOBS).contains(id.id()))
                .forEach(id -> faults.add("nobody can ask for the job \"" + id + "\""));
    }

    private void check(Step step) {
        String where = "step " + step.id();
        check(where, step.when());
        check(where, step.again());
        step.task().toldBy().ifPresent(told -> check(where, told.no()));
        step.task()
                .inWords()
                .filter(set ->
                        !choices.sets().contains(set) || !choices.options(set).equals(YES_OR_NO))
                .ifPresent(set -> faults.add(where + " is answered in the words of \"" + set
                        + "\", which is no set of choices with the options yes and no"));
        Stream<String> name = step.slot().quantity().isPresent()
                ? Stream.empty()
                : Stream.of("term.slot." + step.slot().id());
        Stream.concat(name, step.task().texts().map(ending -> step.text(ending).key()))
                .filter(hasText.negate())
                .forEach(key -> faults.add(where + " has no text " + key));
    }

    private void check(String where, StepCondition condition) {
        condition.mention(new StepCondition.Mentions() {
            @Override
            public void slot(Slot slot) {
                known(where, slot);
            }

            @Override
            public void options(Slot slot, Set<String> waitedFor) {
                known(where, slot);
                Set<String> possible = options.getOrDefault(slot, Set.of());
                waitedFor.stream()
                        .filter(option -> !possible.contains(option))
                        .forEach(option -> faults.add(where + " waits for \"" + option + "\" in \"" + slot
                                + "\", which can only be " + possible));
            }

            @Override
            public void finding(String finding) {
                if (!StepFindings.tells(finding)) {
                    faults.add(where + " waits for the finding \"" + finding + "\", which nobody tells");
                }
            }
        });
    }

    private void known(String where, Slot slot) {
        if (!options.containsKey(slot) && slot.quantity().isEmpty()) {
            faults.add(where + " names the slot \"" + slot + "\", which no step fills");
        }
    }
}
