package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.dialogue.outcome.RoundedFacts;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The end of a session: what is still open before it, and what is said at it. */
final class Closing {

    /** More than so many open values are not told at once. */
    private static final int OPEN_TOLD = 3;

    private final Flow flow;

    Closing(Flow flow) {
        this.flow = flow;
    }

    /** Ends the session, but asks once where something still waits for an answer. */
    void finish(Draft draft) {
        Optional<Message> objection =
                draft.conversation().pending().filter(Pending::leaving).isPresent()
                        ? Optional.empty()
                        : unfinished(draft);
        if (objection.isPresent()) {
            draft.become(draft.conversation().questioningFirst(new Pending.Leave(objection.get())));
        } else {
            close(draft);
        }
    }

    /** What is against closing now. */
    private Optional<Message> unfinished(Draft draft) {
        if (Seasons.restrictorToTakeOff(draft.sheet())) {
            return Optional.of(Message.of("finish.restrictor-on"));
        }
        Optional<Step> asked = flow.next(draft.state());
        List<Fact> open = stillOpen(draft, asked);
        Optional<Message> waiting =
                asked.flatMap(step -> step.task().awaited()).map(duration -> Message.of("finish.waiting"));
        if (!reached(draft)) {
            return Optional.of(
                    open.isEmpty()
                            ? waiting.orElseGet(() -> Message.of("finish.early"))
                            : Message.of("finish.early.open").with("open", new Fact.Listing(open)));
        }
        if (!open.isEmpty()) {
            return Optional.of(Message.of("finish.open").with("open", new Fact.Listing(open)));
        }
        return waiting;
    }

    /** The values in doubt, the value being asked for, and the next that a verdict needs. */
    private List<Fact> stillOpen(Draft draft, Optional<Step> asked) {
        Stream<Quantity> doubts =
                draft.conversation().questions().stream().flatMap(question -> question.inDoubt().stream());
        Stream<Quantity> question = asked.flatMap(Flow::measured).stream();
        Stream<Quantity> needed = reached(draft)
                ? Stream.empty()
                : flow.open(draft.state())
                        .map(Job.Placed::step)
                        .filter(step -> !step.optional())
                        .flatMap(step -> Flow.measured(step).stream());
        return Stream.of(doubts, question, needed)
                .flatMap(each -> each)
                .distinct()
                .limit(OPEN_TOLD)
                .map(Fact::name)
                .toList();
    }

    /** Whether everything that the job comes to by measurement was announced and still holds. */
    private boolean reached(Draft draft) {
        return outcomes(draft).allMatch(draft.state()::told);
    }

    /** What the job judges, of its side checks those that apply; nothing where it measures nothing. */
    private Stream<Judged> outcomes(Draft draft) {
        Set<Step> applicable =
                flow.applicable(draft.state()).map(Job.Placed::step).collect(Collectors.toSet());
        return flow.job(draft.state()).parts().stream()
                .flatMap(part -> part.checklist().steps().stream())
                .flatMap(step -> step.task().judged().stream()
                        .filter(judged -> judged == Judged.CHARGE || applicable.contains(step)))
                .distinct();
    }

    /** Ends the session with what was reached. */
    void close(Draft draft) {
        Assessment assessment = draft.assessment();
        Mass moved = assessment.movedInAll();
        if (moved.kilograms() != 0) {
            draft.say(Message.of(moved.kilograms() > 0 ? "closed.added" : "closed.recovered")
                    .with(
                            "amount",
                            RoundedFacts.size(moved, draft.state().settings().units())));
        }
        // What was worked out but never said, because a condition was not confirmed, is no verdict.
        draft.say(draft.state()
                .verdictTold()
                .map(verdict -> Message.of("closed.verdict")
                        .with("verdict", new Fact.Term("verdict." + ConstantName.of(verdict))))
                .orElseGet(() -> Message.of(
                        draft.state().announced().isEmpty()
                                        && outcomes(draft).findAny().isPresent()
                                ? "closed.open"
                                : "closed.done")));
        draft.become(draft.conversation().in(Conversation.Mode.CLOSED));
        draft.doing(new Effect.Close());
    }
}
