package readback.assistant.dialogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Expectation;
import readback.grammar.ProbesShown;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
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

    boolean isJob(JobId id) {
        return checklists.job(id).isPresent();
    }

    /** The step to ask now; empty when the job is done. */
    Optional<Step> next(State state) {
        Optional<Step> revisited = state.conversation()
                .revisited()
                .flatMap(id -> job(state).step(id))
                .map(Job.Placed::step);
        return revisited.or(() -> open(state).map(Job.Placed::step).findFirst());
    }

    /** The steps of the job under way that apply now, in order. */
    Stream<Job.Placed> applicable(State state) {
        return state.assessment().steps(job(state)).stream();
    }

    /** The applicable step that fills this slot. */
    Optional<Step> step(State state, Slot slot) {
        return applicable(state)
                .map(Job.Placed::step)
                .filter(step -> step.slot().equals(slot))
                .findFirst();
    }

    /** The applicable steps that are not filled, in order. */
    Stream<Job.Placed> open(State state) {
        return applicable(state).filter(placed -> !filled(placed.step(), state));
    }

    private static boolean filled(Step step, State state) {
        Task task = step.task();
        if (task.judged().isPresent()) {
            return state.told(task.judged().get());
        }
        if (task.mustBeYes()) {
            return state.sheet().option(step.slot()).filter(Intake.NO::equals).isEmpty()
                    && state.sheet().answer(step.slot()).isPresent();
        }
        return state.sheet().answer(step.slot()).isPresent() && !asksAgain(step, state);
    }

    /** Whether the step has a value that does not count. */
    static boolean asksAgain(Step step, State state) {
        return state.sheet().answer(step.slot()).isPresent() && step.again().holds(state.assessment());
    }

    /**
     * The slot that a value of the quantity fills: that of the asked step, of the first open one, of the last filled
     * one. What is due only after a wait is not open before.
     */
    Slot slotFor(State state, Quantity quantity) {
        List<Step> measuring = due(state)
                .filter(step -> measured(step).filter(quantity::equals).isPresent())
                .toList();
        Optional<Step> asked = next(state).filter(measuring::contains);
        return asked.or(() -> measuring.stream()
                        .filter(step -> state.sheet().answer(step.slot()).isEmpty())
                        .findFirst())
                .or(() -> measuring.stream().reduce((earlier, later) -> later))
                .map(Step::slot)
                .orElse(Slot.of(quantity));
    }

    /** The steps before the first wait that is not over. */
    private Stream<Step> due(State state) {
        return applicable(state)
                .map(Job.Placed::step)
                .takeWhile(step -> step.task().awaited().isEmpty() || filled(step, state));
    }

    /** Whether the running job measures the quantity once more after the wait that is asked. */
    boolean measuredAfter(State state, Step wait, Quantity quantity) {
        return measuredFrom(state, wait).anyMatch(quantity::equals);
    }

    /** Whether what the running job measured before the wait is this quantity. */
    boolean measuredBefore(State state, Step wait, Quantity quantity) {
        return applicable(state)
                .map(Job.Placed::step)
                .takeWhile(step -> !step.equals(wait))
                .flatMap(step -> measured(step).stream())
                .anyMatch(quantity::equals);
    }

    /** The slots that another round of measurements asks anew: everything in checklists that repeat but cautions. */
    Set<Slot> repeatedSlots(State state) {
        return job(state).parts().stream()
                .filter(part -> part.checklist().repeats())
                .flatMap(part -> part.checklist().steps().stream())
                .filter(step -> step.task().prepared().isEmpty())
                .map(Step::slot)
                .collect(Collectors.toSet());
    }

    /** What words mean now. */
    Expectation expectation(State state) {
        Expectation spoken = spokenTo(state);
        return state.probes().reports().isEmpty() ? spoken : spoken.beside(shown(state));
    }

    /** What can be said about probes now. */
    private ProbesShown shown(State state) {
        Map<Integer, List<Quantity>> unnamed = new HashMap<>();
        state.probes()
                .unnamed()
                .forEach(probe -> unnamed.put(
                        probe.number(),
                        measured(state)
                                .filter(quantity -> quantity.dimension() == probe.dimension())
                                .toList()));
        return new ProbesShown(
                offers(state).map(offer -> offer.reading().quantity()).collect(Collectors.toSet()), unnamed);
    }

    /** What probes offer of what is to be measured now: asked for, in doubt, or due and not filled. */
    Stream<Given> offers(State state) {
        Optional<Quantity> asked = next(state).flatMap(Flow::measured);
        Optional<Quantity> doubted = state.conversation().pending().flatMap(Pending::inDoubt);
        Stream<Quantity> due = due(state).filter(step -> !filled(step, state)).flatMap(step -> measured(step).stream());
        return Stream.of(asked.stream(), doubted.stream(), due)
                .flatMap(each -> each)
                .distinct()
                .flatMap(quantity -> state.probes().offer(quantity).stream());
    }

    /** Everything that the running job measures, each once, in order. */
    private Stream<Quantity> measured(State state) {
        return applicable(state)
                .map(Job.Placed::step)
                .flatMap(step -> measured(step).stream())
                .distinct();
    }

    private Expectation spokenTo(State state) {
        Optional<Pending> pending = state.conversation().pending();
        // what is asked about was said last, though it was not taken
        Optional<Quantity> last = pending.flatMap(Pending::inDoubt)
                .or(() -> state.sheet().lastReading().map(Reading::quantity));
        if (pending.isPresent()) {
            Expectation answer = new Expectation(
                    "confirm",
                    pending.get().inDoubt(),
                    pending.get().choice(),
                    last,
                    state.settings().units());
            return pending.get().choice().isPresent() ? answer : answer.answeredBy(Command.YES, Command.NO);
        }
        Optional<Step> step = next(state);
        Expectation asked = new Expectation(
                step.map(Step::id).orElse("done"),
                step.flatMap(each -> spokenOf(state, each)),
                step.flatMap(Flow::chosen),
                last,
                state.settings().units());
        return state.warnings().unheeded().isEmpty()
                ? step.map(each -> asked.answeredBy(answers(each))).orElse(asked)
                : asked.answeredBy(Command.DONE, Command.YES);
    }

    /**
     * What a bare number is of: during a hold, of what is measured after it, so that it can be told to be too early.
     */
    private Optional<Quantity> spokenOf(State state, Step step) {
        return step.task().awaited().isPresent()
                ? measuredFrom(state, step).findFirst()
                : measured(step).or(() -> step.task().toldBy().map(Task.Told::quantity));
    }

    /** What the running job measures from a step on, in order. */
    private Stream<Quantity> measuredFrom(State state, Step from) {
        return applicable(state)
                .map(Job.Placed::step)
                .dropWhile(step -> !step.equals(from))
                .flatMap(step -> measured(step).stream());
    }

    private static Command[] answers(Step step) {
        return switch (step.task().reply()) {
            case YES_OR_NO -> new Command[] {Command.YES, Command.NO};
            case DONE -> new Command[] {Command.DONE, Command.YES};
            case FINISH -> new Command[] {Command.FINISH};
            case VALUE, OPTION, TIME, NOTHING -> new Command[0];
        };
    }

    /** Whether a value was asked for in this session, whatever the job. */
    boolean measuredBefore(Conversation conversation) {
        return checklists.jobs().stream()
                .flatMap(job -> job.parts().stream())
                .flatMap(part -> part.checklist().steps().stream())
                .anyMatch(step -> measured(step).isPresent() && conversation.asksOf(step.id()) > 0);
    }

    static Optional<Quantity> measured(Step step) {
        return step.task().measured();
    }

    /**
     * The set of choices that the step asks for, that answers or is led to by its question, or that takes the place of
     * a number.
     */
    private static Optional<String> chosen(Step step) {
        return step.task()
                .choices()
                .or(() -> step.task().inWords())
                .or(() -> step.conclusion().map(conclusion -> conclusion.slot().id()))
                .or(() -> Altitudes.choice(step));
    }
}
