package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Job;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/**
 * What becomes of a doubt that gets no answer. A value that the checklist wants is asked about until two others were
 * taken; one that nobody asked for is asked about once and never stands in the way of the work.
 */
final class Doubts {

    /** So many other values say that the technician is past it. */
    private static final int VALUES_UNTIL_LAPSED = 2;

    /** So many utterances that could not be used say the same of a value that nobody asked for. */
    private static final int FAILURES_UNTIL_LAPSED = 2;

    private final Flow flow;

    Doubts(Flow flow) {
        this.flow = flow;
    }

    /** The questions that stay open after these values were said, of which so many were taken. */
    List<Pending> stillOpen(Draft draft, List<Reading> said, int taken) {
        List<Pending> open = new ArrayList<>();
        for (Pending question : draft.conversation().questions()) {
            Optional<Quantity> about = question.inDoubt();
            boolean leaving = about.isEmpty();
            boolean saidAnew =
                    said.stream().map(Reading::quantity).map(Optional::of).anyMatch(about::equals);
            if (leaving || saidAnew) {
                continue;
            }
            if (question instanceof Pending.Doubt doubt) {
                Pending.Doubt passed = doubt.passedOverBy(taken);
                if (lapsed(draft, passed)) {
                    draft.say(lapse(passed));
                } else {
                    open.add(passed);
                }
            } else {
                open.add(question);
            }
        }
        return open;
    }

    private boolean lapsed(Draft draft, Pending.Doubt doubt) {
        return doubt.passedOver() >= VALUES_UNTIL_LAPSED
                || (doubt.passedOver() > 0 && !wanted(draft, doubt.reading().quantity()));
    }

    /** Whether the checklist has a place for the quantity now. */
    private boolean wanted(Draft draft, Quantity quantity) {
        return flow.applicable(draft.state())
                .map(Job.Placed::step)
                .flatMap(step -> Flow.measured(step).stream())
                .anyMatch(quantity::equals);
    }

    /** Something else than an answer was said to a doubt about a value that nobody asked for: the work goes on. */
    void passBy(Draft draft, Meaning meaning) {
        if (movesOn(meaning)) {
            dropUnwanted(draft);
        }
    }

    /** An utterance could not be used; a doubt that nobody needs answered does not go on for that. */
    void failed(Draft draft) {
        if (draft.conversation().failures() >= FAILURES_UNTIL_LAPSED) {
            dropUnwanted(draft);
            dropJob(draft);
        }
    }

    /** Something else than an answer was said to the question whether to go to a job. */
    static void dropJob(Draft draft) {
        if (draft.conversation().pending().flatMap(Pending::leadsTo).isPresent()) {
            draft.become(draft.conversation().answered());
        }
    }

    private void dropUnwanted(Draft draft) {
        if (draft.conversation().pending().orElse(null) instanceof Pending.Doubt doubt
                && !wanted(draft, doubt.reading().quantity())) {
            draft.become(draft.conversation().answered());
            draft.say(lapse(doubt));
        }
    }

    private static boolean movesOn(Meaning meaning) {
        return meaning instanceof Meaning.Choice
                || meaning instanceof Meaning.Choices
                || meaning.orders(Command.DONE)
                || meaning.orders(Command.GO_BACK)
                || meaning.orders(Command.CARRY_ON);
    }

    private static Message lapse(Pending.Doubt doubt) {
        return Message.of("confirm.lapsed").with("value", new Fact.Stated(doubt.reading()));
    }
}
