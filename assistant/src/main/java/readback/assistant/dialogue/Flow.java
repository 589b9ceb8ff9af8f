package readback.assistant.dialogue;

import java.util.Optional;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;
import readback.grammar.Command;
import readback.grammar.Expectation;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;

/**
 * Which step comes next: the first that applies and is not filled, in the manner of the W3C form interpretation
 * algorithm (VoiceXML 2.0, appendix C, from memory). A revisited step comes before it.
 */
final class Flow {

    private final Checklists checklists;

    Flow(Checklists checklists) {
        this.checklists = checklists;
    }

    Job job(State state) {
        return checklists
                .job(state.job())
                .orElseThrow(() -> new IllegalStateException("there is no job " + state.job()));
    }

    /** The step to ask now; empty when the job is done. */
    Optional<Step> next(State state, Assessment assessment) {
        Optional<Step> revisited = state.conversation()
                .revisited()
                .flatMap(id -> job(state).step(id))
                .map(Job.Placed::step);
        return revisited.or(() -> open(state, assessment).map(Job.Placed::step).findFirst());
    }

    /** The applicable steps that are not filled, in order. */
    Stream<Job.Placed> open(State state, Assessment assessment) {
        return job(state).applicable(assessment).filter(placed -> !filled(placed.step(), state, assessment));
    }

    private boolean filled(Step step, State state, Assessment assessment) {
        if (step.task() instanceof Task.Judge) {
            return assessment.verdict().isPresent() && assessment.recorded().equals(state.announced());
        }
        if (step.task() instanceof Task.Question) {
            return state.sheet()
                    .answer(step.slot())
                    .filter(answer -> !isNo(answer))
                    .isPresent();
        }
        return state.sheet().answer(step.slot()).isPresent();
    }

    private static boolean isNo(Answer answer) {
        return answer instanceof Answer.Option option && option.option().equals(Intake.NO);
    }

    /** What words mean now. */
    Expectation expectation(State state, Assessment assessment) {
        Optional<Quantity> last = state.sheet().lastQuantity();
        Optional<Pending> pending = state.conversation().pending();
        if (pending.isPresent()) {
            return new Expectation(
                            "confirm",
                            inDoubt(pending.get()),
                            Optional.empty(),
                            last,
                            state.settings().units())
                    .answeredBy(Command.YES, Command.NO);
        }
        Optional<Step> step = next(state, assessment);
        Expectation asked = new Expectation(
                step.map(Step::id).orElse("done"),
                step.flatMap(Flow::measured),
                step.flatMap(Flow::chosen),
                last,
                state.settings().units());
        return state.warnings().unheeded().isEmpty()
                ? step.map(each -> asked.answeredBy(answers(each))).orElse(asked)
                : asked.answeredBy(Command.DONE, Command.YES);
    }

    private static Command[] answers(Step step) {
        Task task = step.task();
        if (task instanceof Task.Question) {
            return new Command[] {Command.YES, Command.NO};
        }
        if (task instanceof Task.Prepare) {
            return new Command[] {Command.DONE, Command.YES};
        }
        return task instanceof Task.Acknowledge ? new Command[] {Command.FINISH, Command.DONE} : new Command[0];
    }

    private static Optional<Quantity> inDoubt(Pending pending) {
        if (pending instanceof Pending.Confirm confirm) {
            return Optional.of(confirm.reading().quantity());
        }
        if (pending instanceof Pending.Between between) {
            return Optional.of(between.candidates().get(0).quantity());
        }
        return Optional.empty();
    }

    private static Optional<Quantity> measured(Step step) {
        return step.task() instanceof Task.Measure measure ? Optional.of(measure.quantity()) : Optional.empty();
    }

    private static Optional<String> chosen(Step step) {
        return step.task() instanceof Task.Choose choose ? Optional.of(choose.choice()) : Optional.empty();
    }
}
