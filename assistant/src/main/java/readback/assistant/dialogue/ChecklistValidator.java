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
        if (task instanceof Task.Question) {
            possible.addAll(YES_OR_NO);
        } else if (task instanceof Task.Choose choose) {
            if (choices.sets().contains(choose.choice())) {
                slot(choose.choice()).addAll(choices.options(choose.choice()));
            } else {
                faults.add("step " + step.id() + " asks for one of \"" + choose.choice()
                        + "\", which is no set of choices");
            }
        } else {
            possible.addAll(DONE);
        }
        step.conclusion()
                .ifPresent(conclusion -> Stream.of(conclusion.yes(), conclusion.no())
                        .flatMap(java.util.Optional::stream)
                        .forEach(slot(conclusion.slot())::add));
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
        if (step.task() instanceof Task.Judge judge && !Reports.judges(judge.report())) {
            faults.add(where + " asks to judge \"" + judge.report() + "\", which nobody can");
        }
        texts(step)
                .map(suffix -> "step." + step.id() + suffix)
                .filter(hasText.negate())
                .forEach(key -> faults.add(where + " has no text " + key));
    }

    private static Stream<String> texts(Step step) {
        if (step.task() instanceof Task.MeasureAgain) {
            return Stream.empty();
        }
        Stream<String> own = step.task() instanceof Task.Await ? Stream.of(".over") : Stream.empty();
        return Stream.concat(Stream.of(".ask", ".again", ".why", ".how"), own);
    }

    private void check(String where, StepCondition condition) {
        condition.leaves().forEach(leaf -> {
            if (leaf instanceof StepCondition.Answered answered) {
                known(where, answered.slot());
            } else if (leaf instanceof StepCondition.Measured measured) {
                known(where, measured.slot());
            } else if (leaf instanceof StepCondition.OptionIs wanted) {
                known(where, wanted.slot());
                wanted.options().stream()
                        .filter(option -> !slot(wanted.slot()).contains(option))
                        .forEach(option -> faults.add(where + " waits for \"" + option + "\" in \"" + wanted.slot()
                                + "\", which can only be " + slot(wanted.slot())));
            } else if (leaf instanceof StepCondition.VerdictIs verdict) {
                verdict.verdicts().stream()
                        .filter(name ->
                                ConstantName.find(Verdict.Kind.class, name).isEmpty())
                        .forEach(name ->
                                faults.add(where + " waits for the verdict \"" + name + "\", which there is not"));
            } else if (leaf instanceof StepCondition.Found found && !Assessment.tells(found.finding())) {
                faults.add(where + " waits for the finding \"" + found.finding() + "\", which nobody tells");
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
