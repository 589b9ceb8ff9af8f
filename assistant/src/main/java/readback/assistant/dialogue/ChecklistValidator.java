package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import readback.calc.charge.Verdict;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.grammar.Choices;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.StepCondition;
import readback.prompts.checklist.Task;

/**
 * What checklists name and nobody knows: a slot that no step fills, an option that its slot cannot have, a finding, a
 * verdict or something to judge that calc does not tell, a text that the catalogue lacks. Found when the program
 * starts, so that it does not come to light in the middle of a call.
 */
public final class ChecklistValidator {

    private static final Set<String> YES_OR_NO = Set.of(Intake.YES, Intake.NO);
    private static final Set<String> DONE = Set.of(Intake.DONE);

    private final Choices choices;
    private final Predicate<String> hasText;
    private final Map<String, Set<String>> options = new HashMap<>();
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
        steps.forEach(found::check);
        checklists.jobs().forEach(found::check);
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

    private void chosen(Step step, String set) {
        if (choices.sets().contains(set)) {
            slot(set).addAll(choices.options(set));
        } else {
            faults.add("step " + step.id() + " asks for one of \"" + set + "\", which is no set of choices");
        }
    }

    private Set<String> slot(String name) {
        return options.computeIfAbsent(name, any -> new TreeSet<>());
    }

    private void check(Job job) {
        job.parts().forEach(part -> check("job " + job.id(), part.when()));
    }

    private void check(Step step) {
        String where = "step " + step.id();
        check(where, step.when());
        step.task()
                .judged()
                .filter(report -> !Reports.judges(report))
                .ifPresent(report -> faults.add(where + " asks to judge \"" + report + "\", which nobody can"));
        step.task()
                .texts()
                .map(suffix -> "step." + step.id() + suffix)
                .filter(hasText.negate())
                .forEach(key -> faults.add(where + " has no text " + key));
    }

    private void check(String where, StepCondition condition) {
        condition.mention(new StepCondition.Mentions() {
            @Override
            public void slot(String slot) {
                known(where, slot);
            }

            @Override
            public void options(String slot, Set<String> waitedFor) {
                known(where, slot);
                Set<String> possible = ChecklistValidator.this.slot(slot);
                waitedFor.stream()
                        .filter(option -> !possible.contains(option))
                        .forEach(option -> faults.add(where + " waits for \"" + option + "\" in \"" + slot
                                + "\", which can only be " + possible));
            }

            @Override
            public void verdicts(Set<String> verdicts) {
                verdicts.stream()
                        .filter(name ->
                                ConstantName.find(Verdict.Kind.class, name).isEmpty())
                        .forEach(name ->
                                faults.add(where + " waits for the verdict \"" + name + "\", which there is not"));
            }

            @Override
            public void finding(String finding) {
                if (!Assessment.tells(finding)) {
                    faults.add(where + " waits for the finding \"" + finding + "\", which nobody tells");
                }
            }
        });
    }

    private void known(String where, String slot) {
        if (!options.containsKey(slot)
                && ConstantName.find(Quantity.class, slot).isEmpty()) {
            faults.add(where + " names the slot \"" + slot + "\", which no step fills");
        }
    }
}
