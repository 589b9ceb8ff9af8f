package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The commands that always work. */
final class Orders {

    static final Meaning.Choice UNKNOWN_DEVICE = new Meaning.Choice(Slots.METERING_DEVICE.id(), "unknown");

    private final Flow flow;
    private final Intake intake;
    private final Waiting waiting;
    private final Closing closing;
    private final Answers answers;
    private final ProbeTalk probes;
    private final JobStack jobs;
    private final Explanations explanations;

    Orders(
            Flow flow,
            Intake intake,
            Waiting waiting,
            Closing closing,
            Answers answers,
            ProbeTalk probes,
            JobStack jobs) {
        this.flow = flow;
        this.intake = intake;
        this.waiting = waiting;
        this.closing = closing;
        this.answers = answers;
        this.probes = probes;
        this.jobs = jobs;
        this.explanations = new Explanations(flow);
    }

    /** Whether a weakly heard order must be said again: it changes or ends something. */
    static boolean weighty(Command command) {
        return switch (command) {
            case YES, NO, DONE, SCRATCH_THAT, FINISH, SKIP, UNKNOWN, TAKE -> true;
            default -> false;
        };
    }

    void carryOut(Draft draft, Meaning.Ordered order) {
        Optional<Step> asked = asked(draft);
        switch (order.command()) {
            case YES -> agreed(draft, asked, Intake.YES);
            case DONE -> agreed(draft, asked, Intake.DONE);
            case NO -> refused(draft, asked);
            case SAY_AGAIN -> draft.say(again(draft, order.about()));
            case WHY -> explanations.why(draft, order.about(), asked);
            case HOW -> explanations.how(draft, order.about(), asked);
            case HELP -> Explanations.help(draft, asked);
            case GO_BACK -> goBack(draft, order.about());
            case SCRATCH_THAT -> scratch(draft, order.about());
            case HOLD_ON -> {
                draft.become(draft.conversation().in(Conversation.Mode.HELD));
                draft.say(Message.of("held"));
            }
            case CARRY_ON -> draft.become(draft.conversation().revisiting(Optional.empty()));
            case WHERE_ARE_WE -> draft.say(answers.whereWeAre(draft.state()));
            case READ_READINGS -> draft.say(Answers.readings(draft.state()));
            case READ_NUMBERS -> draft.say(answers.numbers(draft.state()));
            case STOP_TALKING -> draft.doing(new Effect.Hush());
            case FINISH -> closing.finish(draft);
            case GUIDE -> voice(draft, false);
            case BRIEF -> voice(draft, true);
            case SKIP, UNKNOWN ->
                order.about().ifPresentOrElse(about -> leaveOpen(draft, about, asked), () -> skip(draft, asked));
            case LOUDER ->
                deliver(draft, Delivery::louder, Message.of("voice.louder"), Message.of("voice.louder.most"));
            case QUIETER ->
                deliver(draft, Delivery::quieter, Message.of("voice.quieter"), Message.of("voice.quieter.most"));
            case FASTER ->
                deliver(draft, Delivery::faster, Message.of("voice.faster"), Message.of("voice.faster.most"));
            case SLOWER ->
                deliver(draft, Delivery::slower, Message.of("voice.slower"), Message.of("voice.slower.most"));
            case START_OVER -> draft.say(Message.of("start-over"));
            case MEASURE_NOW -> measureNow(draft, asked);
            case TAKE -> probes.take(draft, order.about(), asked);
        }
    }

    /** Whether it answers the question after leaks instead of crying for help. */
    boolean asksForLeaks(Draft draft, Emergency cried) {
        return cried == Emergency.LEAK
                && draft.conversation().pending().isEmpty()
                && !draft.state().held()
                && asked(draft)
                        .filter(step -> step.slot().equals(Slots.CAPS_AND_LEAKS))
                        .isPresent();
    }

    private Optional<Step> asked(Draft draft) {
        return flow.next(draft.state());
    }

    private void agreed(Draft draft, Optional<Step> asked, String word) {
        boolean leaving =
                draft.conversation().pending().filter(Pending::leaving).isPresent();
        Optional<JobId> job = draft.conversation().pending().flatMap(Pending::leadsTo);
        boolean yes = word.equals(Intake.YES);
        if ((leaving || job.isPresent()) && !yes) {
            // "Understood" is no yes: whether to leave is asked again.
            return;
        } else if (leaving) {
            draft.become(draft.conversation().answered());
            closing.close(draft);
        } else if (job.isPresent()) {
            draft.become(draft.conversation().answered());
            jobs.change(draft, job.get());
        } else if (!draft.state().warnings().unheeded().isEmpty()) {
            draft.become(draft.state().with(draft.state().warnings().heeded()));
        } else if (asked.isPresent() && takesAWord(asked.get(), word)) {
            intake.word(draft, asked.get(), word);
        } else if (asked.isEmpty() || !asksForAWord(asked.get())) {
            draft.say(Message.of("again.nothing-asked"));
        }
    }

    private static boolean takesAWord(Step step, String word) {
        return switch (step.task().reply()) {
            case DONE -> true;
            case YES_OR_NO -> word.equals(Intake.YES);
            case VALUE, OPTION, FINISH, TIME, NOTHING -> false;
        };
    }

    /**
     * Steps that are asked again when the word was not theirs: a question takes yes or no, a record closes by "finish".
     */
    private static boolean asksForAWord(Step step) {
        return switch (step.task().reply()) {
            case YES_OR_NO, FINISH -> true;
            case VALUE, OPTION, DONE, TIME, NOTHING -> false;
        };
    }

    void refused(Draft draft, Optional<Step> asked) {
        if (draft.conversation().pending().isPresent()) {
            draft.become(draft.conversation().answered());
        } else if (!draft.state().warnings().unheeded().isEmpty()) {
            // It answers no question that was not asked yet; the caution is held out again.
            return;
        } else if (asked.isPresent() && asked.get().task().reply() == Task.Reply.YES_OR_NO) {
            intake.word(draft, asked.get(), Intake.NO);
        } else if (asked.filter(Orders::takesNoNo).isPresent() && intake.readBackLast(draft)) {
            deny(draft, draft.sheet().last().orElseThrow());
        } else {
            draft.say(Message.of(asked.filter(Step::optional).isPresent() ? "again.no.optional" : "again.no"));
        }
    }

    /** Whether "no" is no answer to it, not even one that was not asked for: "not ready", "there is none". */
    private static boolean takesNoNo(Step step) {
        return switch (step.task().reply()) {
            case VALUE, OPTION -> !step.optional();
            case TIME -> true;
            case YES_OR_NO, DONE, FINISH, NOTHING -> false;
        };
    }

    /** The answer goes; a value that it corrected was wrong too. */
    private static void deny(Draft draft, History.Edit denied) {
        draft.become(draft.sheet().without(denied.slot()));
        draft.say(gone(denied));
    }

    /** What is said of an answer that was taken away, with nothing in its place. */
    private static Message gone(History.Edit edit) {
        return edit.after()
                .flatMap(Sheet::readingOf)
                .map(reading -> Message.of("scratch.done").with("name", Fact.name(reading.quantity())))
                .orElseGet(() -> Message.of("scratch.answer"));
    }

    private static List<Message> again(Draft draft, Optional<Quantity> about) {
        if (about.isPresent()) {
            return draft.sheet()
                    .reading(draft.sheet().slotOf(about.get()))
                    .map(reading -> List.of(
                            Message.of("readings").with("values", new Fact.Listing(List.of(new Fact.Stated(reading))))))
                    .orElseGet(() -> unread(about.get()));
        }
        // The question that ended the last turn is asked again anyhow.
        List<Message> said = draft.conversation().said();
        return said.isEmpty() ? List.of() : said.subList(0, said.size() - 1);
    }

    /** "What's the wet bulb" before it was read: there is none yet, and what it is. */
    private static List<Message> unread(Quantity quantity) {
        Message none = Message.of("scratch.nothing-of").with("name", Fact.name(quantity));
        return Term.of(quantity).map(term -> List.of(none, term.explained())).orElse(List.of(none));
    }

    /** Back to the step that was filled last, or to one that is named; its value stays until another is said. */
    private void goBack(Draft draft, Optional<Quantity> about) {
        Optional<Step> to = about.isPresent()
                ? flow.step(draft.state(), draft.sheet().slotOf(about.get()))
                : draft.sheet().last().map(History.Edit::slot).flatMap(slot -> flow.step(draft.state(), slot));
        if (to.isEmpty()) {
            draft.say(Message.of("back.nowhere"));
            return;
        }
        draft.become(draft.conversation().revisiting(to.map(Step::id)));
        draft.sheet()
                .answer(to.get().slot())
                .flatMap(Sheet::readingOf)
                .ifPresent(reading -> draft.say(Message.of("back.value").with("value", new Fact.Stated(reading))));
    }

    private static void scratch(Draft draft, Optional<Quantity> about) {
        if (about.isPresent()) {
            Slot slot = draft.sheet().slotOf(about.get());
            boolean known = draft.sheet().reading(slot).isPresent();
            draft.become(draft.sheet().without(slot));
            draft.say(Message.of(known ? "scratch.done" : "scratch.nothing-of").with("name", Fact.name(about.get())));
            return;
        }
        Optional<History.Edit> last = draft.sheet().last();
        if (last.isEmpty()) {
            draft.say(Message.of("scratch.nothing"));
            return;
        }
        draft.become(draft.sheet().undone());
        Optional<Reading> back = draft.sheet().answer(last.get().slot()).flatMap(Sheet::readingOf);
        if (back.isPresent()) {
            draft.say(Message.of("scratch.back").with("value", new Fact.Stated(back.get())));
        } else {
            draft.say(gone(last.get()));
        }
    }

    void skip(Draft draft, Optional<Step> asked) {
        Optional<Duration> cuttable =
                asked.filter(Step::optional).flatMap(step -> step.task().awaited());
        if (draft.conversation().pending().isPresent()) {
            draft.become(draft.conversation().answered());
        } else if (cuttable.isPresent()) {
            waiting.cutShort(draft, asked.orElseThrow(), cuttable.get());
        } else if (asked.isPresent() && asked.get().optional()) {
            draft.become(draft.sheet()
                    .with(asked.get().slot(), new Answer.Skipped(draft.state().at())));
            draft.say(Message.of(Altitudes.asked(asked.get()) ? "skip.altitude" : "skip.done"));
        } else if (asked.isPresent() && asked.get().slot().equals(Slots.METERING_DEVICE)) {
            intake.choice(draft, UNKNOWN_DEVICE);
        } else {
            draft.say(Message.of("skip.refused"));
            if (asked.isPresent()) {
                draft.say(Explanations.taught(draft, asked, Prompts::why).quietly());
            }
        }
    }

    /** "Plate subcooling unknown": the step of that value is left open, whatever is asked. */
    private void leaveOpen(Draft draft, Quantity about, Optional<Step> asked) {
        Optional<Step> step = asked.filter(each -> each.slot().equals(Slot.of(about)))
                .or(() -> flow.step(draft.state(), Slot.of(about)));
        if (step.filter(each -> !each.optional()).isPresent()) {
            draft.say(Message.of("skip.refused"));
            if (about == Quantity.RETURN_WET_BULB) {
                draft.say(Message.of("humidity.instead"));
            }
            return;
        }
        boolean known = draft.sheet().reading(about).isPresent();
        draft.become(draft.sheet()
                .with(Slot.of(about), new Answer.Skipped(draft.state().at())));
        draft.become(draft.conversation().revisiting(Optional.empty()));
        draft.say(Message.of(known ? "scratch.done" : "skip.named").with("name", Fact.name(about)));
    }

    /** A wait that may be cut short is; where no wait runs, the question says what to measure. */
    private void measureNow(Draft draft, Optional<Step> asked) {
        if (asked.flatMap(step -> step.task().awaited()).isPresent()) {
            skip(draft, asked);
        }
    }

    private static void voice(Draft draft, boolean brief) {
        draft.become(draft.conversation().speaking(brief));
        draft.say(Message.of(brief ? "voice.now-brief" : "voice.now-guide"));
    }

    /** Another step of volume or speed, told in the new manner; where there is none left, that. */
    private static void deliver(Draft draft, UnaryOperator<Delivery> step, Message told, Message atTheLimit) {
        SessionSettings settings = draft.state().settings();
        Delivery next = step.apply(settings.delivery());
        draft.say(next.equals(settings.delivery()) ? atTheLimit : told);
        draft.become(draft.state().with(settings.delivered(next)));
    }
}
