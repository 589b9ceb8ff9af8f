package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.calc.caution.CautionRule;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The commands that always work. */
final class Orders {

    /** The choice set whose options are jobs. */
    static final String JOBS = "checklist";

    /** The choice set of the units meant when none is said. */
    private static final String UNITS = "units";

    private static final Message WITHHELD = Message.of("exam.withheld");

    private static final Meaning.Choice UNKNOWN_DEVICE = new Meaning.Choice(Slots.METERING_DEVICE.id(), "unknown");

    private final Flow flow;
    private final Intake intake;
    private final Waiting waiting;
    private final Closing closing;
    private final Situations situations;
    private final Answers answers;
    private final ProbeTalk probes;

    Orders(Flow flow, Intake intake, Waiting waiting, Closing closing, Answers answers, ProbeTalk probes) {
        this.probes = probes;
        this.flow = flow;
        this.intake = intake;
        this.waiting = waiting;
        this.closing = closing;
        this.situations = new Situations(intake, waiting);
        this.answers = answers;
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
            case WHY -> why(draft, order.about(), asked);
            case HOW -> draft.say(taught(draft, step(draft, order.about(), asked), Prompts::how));
            case HELP -> help(draft, asked);
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
            change(draft, job.get());
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

    private void refused(Draft draft, Optional<Step> asked) {
        if (draft.conversation().pending().isPresent()) {
            draft.become(draft.conversation().answered());
        } else if (!draft.state().warnings().unheeded().isEmpty()) {
            // It answers no question that was not asked yet; the caution is held out again.
            return;
        } else if (asked.isPresent() && asked.get().task().reply() == Task.Reply.YES_OR_NO) {
            intake.word(draft, asked.get(), Intake.NO);
        } else {
            draft.say(Message.of("again.no"));
        }
    }

    private static List<Message> again(Draft draft, Optional<Quantity> about) {
        if (about.isPresent()) {
            return List.of(draft.sheet()
                    .reading(about.get())
                    .map(reading ->
                            Message.of("readings").with("values", new Fact.Listing(List.of(new Fact.Stated(reading)))))
                    .orElseGet(() -> Message.of("scratch.nothing-of").with("name", Fact.name(about.get()))));
        }
        // The question that ended the last turn is asked again anyhow.
        List<Message> said = draft.conversation().said();
        return said.isEmpty() ? List.of() : said.subList(0, said.size() - 1);
    }

    private void why(Draft draft, Optional<Quantity> named, Optional<Step> asked) {
        Optional<Quantity> about = named.or(() -> draft.conversation().pending().flatMap(Pending::inDoubt));
        List<CautionRule> unheeded =
                draft.state().warnings().unheeded().stream().sorted().toList();

        if (about.isEmpty() && !unheeded.isEmpty()) {
            unheeded.forEach(caution -> draft.say(Message.of("caution." + ConstantName.of(caution) + ".why")));
        } else if (about.isEmpty() && draft.state().told(Judged.CHARGE) && meansTheVerdict(draft, asked)) {
            draft.say(Answers.reasons(draft.state()));
        } else {
            draft.say(taught(draft, step(draft, about, asked), Prompts::why));
            asked.filter(step -> about.isEmpty())
                    .flatMap(step -> step.task().prepared())
                    .ifPresent(activity -> {
                        draft.say(CautionNotice.readOut(
                                activity,
                                draft.assessment().refrigerant(),
                                draft.state().settings().understood()));
                        whyItBurns(draft);
                    });
        }
    }

    /** What is told about a step; of what is to be measured or seen nothing in an exam. */
    private static Message taught(Draft draft, Optional<Step> about, Function<Step, Message> told) {
        return about.filter(step -> draft.state().examined() && asksForSkill(step))
                        .isPresent()
                ? WITHHELD
                : about.map(told).orElseGet(() -> Message.of("help.general"));
    }

    /**
     * Whether it asks for a value or a choice; what is confirmed before work and what is waited for keeps from harm.
     */
    private static boolean asksForSkill(Step step) {
        return switch (step.task().reply()) {
            case VALUE, OPTION -> true;
            case YES_OR_NO, DONE, FINISH, TIME, NOTHING -> false;
        };
    }

    /** Before work that can set a refrigerant on fire, "why" tells how that is kept from happening. */
    private static void whyItBurns(Draft draft) {
        Stream.of(CautionRule.FLAMMABLE_A3, CautionRule.FLAMMABLE_A2L)
                .filter(draft.state().warnings().told()::contains)
                .forEach(caution -> draft.say(Message.of("caution." + ConstantName.of(caution) + ".why")));
    }

    /** Just after the verdict, and when nothing but the end is left; else "why" means what is asked. */
    private static boolean meansTheVerdict(Draft draft, Optional<Step> asked) {
        boolean justSaid = draft.assessment()
                .announcement(Judged.CHARGE)
                .filter(told -> draft.conversation().said().stream().anyMatch(told::tells))
                .isPresent();
        return justSaid
                || asked.filter(step -> step.task().reply() != Task.Reply.FINISH)
                        .isEmpty();
    }

    private Optional<Step> step(Draft draft, Optional<Quantity> about, Optional<Step> asked) {
        return about.isEmpty() ? asked : stepOf(draft, Slot.of(about.get()));
    }

    private Optional<Step> stepOf(Draft draft, Slot slot) {
        return flow.applicable(draft.state())
                .map(Job.Placed::step)
                .filter(step -> step.slot().equals(slot))
                .findFirst();
    }

    /** What may be said to the step in hand; asked for once more, what can always be said. */
    private static void help(Draft draft, Optional<Step> asked) {
        Message general = Message.of("help.general");
        boolean again = draft.conversation().said().contains(general.quietly());
        if (asked.isEmpty() || again) {
            draft.say(general);
            return;
        }
        boolean doubt = draft.conversation().pending().flatMap(Pending::inDoubt).isPresent();
        boolean warned = draft.conversation().pending().isEmpty()
                && !draft.state().warnings().unheeded().isEmpty();
        draft.say(doubt ? Message.of("help.doubt") : warned ? Message.of("help.caution") : Prompts.help(asked.get()));
        draft.say(doubt ? Message.of("help.more").quietly() : Message.of("help.more"));
        draft.say(general.quietly());
    }

    /** Back to the step that was filled last, or to one that is named; its value stays until another is said. */
    private void goBack(Draft draft, Optional<Quantity> about) {
        Optional<Step> to = about.isPresent()
                ? stepOf(draft, Slot.of(about.get()))
                : draft.sheet().last().map(History.Edit::slot).flatMap(slot -> stepOf(draft, slot));
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
            boolean known = draft.sheet().reading(about.get()).isPresent();
            draft.become(draft.sheet().without(Slot.of(about.get())));
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
            Optional<Reading> gone = last.get().after().flatMap(Sheet::readingOf);
            draft.say(gone.map(reading -> Message.of("scratch.done").with("name", Fact.name(reading.quantity())))
                    .orElseGet(() -> Message.of("scratch.answer")));
        }
    }

    private void skip(Draft draft, Optional<Step> asked) {
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
                draft.say(taught(draft, asked, Prompts::why).quietly());
            }
        }
    }

    /** "Plate subcooling unknown": the step of that value is left open, whatever is asked. */
    private void leaveOpen(Draft draft, Quantity about, Optional<Step> asked) {
        Optional<Step> step =
                asked.filter(each -> each.slot().equals(Slot.of(about))).or(() -> stepOf(draft, Slot.of(about)));
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

    void choose(Draft draft, Meaning.Choice choice) {
        Optional<Question> question = Question.in(choice);
        Optional<Situations.Told> told = Situations.Told.in(choice);
        Optional<Term> term = Term.in(choice);
        Optional<Step> inWords = asked(draft)
                .filter(step ->
                        step.task().inWords().filter(choice.choice()::equals).isPresent());
        if (inWords.isPresent()) {
            inWords(draft, inWords.get(), choice.option());
        } else if (question.filter(Question::workedOut).isPresent()
                && draft.state().examined()) {
            draft.say(WITHHELD);
        } else if (question.isPresent()) {
            draft.say(answers.to(question.get(), draft.state()));
        } else if (term.isPresent()) {
            draft.say(term.get().explained());
        } else if (told.isPresent()) {
            situations.taken(draft, told.get(), asked(draft)).ifPresent(job -> change(draft, job));
        } else if (Emergency.in(choice).isPresent()) {
            // a leak at the question for one is an answer
            draft.say(Message.of("leak.answered"));
            refused(draft, asked(draft));
        } else if (choice.choice().equals(JOBS)) {
            change(draft, new JobId(choice.option()));
        } else if (choice.choice().equals(UNITS)) {
            draft.become(draft.state()
                    .with(draft.state()
                            .settings()
                            .in(choice.option().equals("metric") ? UnitSetting.METRIC : UnitSetting.US)));
            draft.say(Message.of("units.now." + choice.option()));
        } else if (Altitudes.said(choice).isPresent()) {
            intake.values(draft, List.of(Altitudes.said(choice).get()), false, false);
        } else if (choice.choice().equals(Slots.REFRIGERANT.id())
                && Catalogue.standard().find(choice.option()).known().isEmpty()) {
            draft.say(Message.of("refrigerant.unsupported").with("name", new Fact.Quoted(choice.option())));
        } else if (choice.equals(UNKNOWN_DEVICE)
                && draft.sheet()
                        .option(Slots.METERING_DEVICE)
                        .filter(choice.option()::equals)
                        .isPresent()) {
            // Looking for it came to nothing: said once more, it does not begin anew.
            skip(draft, asked(draft));
        } else {
            intake.choice(draft, choice);
        }
    }

    /** "The filter is clean": yes to the question for it. Where something else has to be answered first, nothing. */
    private void inWords(Draft draft, Step step, String word) {
        boolean first = draft.conversation().pending().isEmpty()
                && draft.state().warnings().unheeded().isEmpty();
        if (first) {
            intake.word(draft, step, word);
        }
    }

    /** Answers what was only spoken of: what to do if it happens, whether to go to a job. */
    void mentioned(Draft draft, Meaning.Choice choice) {
        Optional<Emergency> emergency = Emergency.in(choice);
        Optional<Situations.Told> told = Situations.Told.in(choice);
        if (emergency.isPresent()) {
            draft.say(emergency.get().told());
            draft.say(Message.of("emergency.asked"));
        } else if (told.isPresent()) {
            draft.say(told.get().answer());
        } else {
            spokenOf(draft, new JobId(choice.option()));
        }
    }

    private void spokenOf(Draft draft, JobId job) {
        if (job.equals(draft.state().job())) {
            change(draft, job);
        } else {
            draft.become(draft.conversation()
                    .questioningFirst(
                            new Pending.GoTo(job, Message.of("job.go-to").with("job", new Fact.Term("job." + job)))));
        }
    }

    /** Another job comes to the top; what was answered stays. */
    private void change(Draft draft, JobId job) {
        if (!flow.isJob(job)) {
            draft.say(Message.of("again.plain"));
        } else if (job.equals(draft.state().job())) {
            draft.say(Message.of("job.same").with("job", new Fact.Term("job." + job)));
        } else {
            draft.become(draft.state().doing(job));
            draft.become(draft.conversation().revisiting(Optional.empty()));
            draft.say(Message.of("job.changed").with("job", new Fact.Term("job." + job)));
        }
    }

    /** The current job has no step left: back to the one that it interrupted, or the end. */
    boolean doneWithJob(Draft draft) {
        if (draft.state().jobs().size() == 1) {
            closing.close(draft);
            return false;
        }
        draft.become(draft.state().doneWithJob());
        draft.say(Message.of("job.back")
                .with("job", new Fact.Term("job." + draft.state().job())));
        return true;
    }

    /** Answers "what is saturation at"; fills nothing. */
    void saturation(Draft draft, Reading pressure) {
        Assessment assessment = draft.assessment();
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        if (refrigerant.isEmpty()) {
            draft.say(Message.of("saturation.which-refrigerant"));
            return;
        }
        UnitSetting units = draft.state().settings().units();
        try {
            AbsolutePressure absolute = pressure.gaugePressure().absoluteIn(assessment.air());
            draft.say(Message.of("saturation.answer")
                    .with("pressure", Fact.amount(pressure))
                    .with("dew", Fact.temperature(refrigerant.get().dewTemperature(absolute), units))
                    .with("bubble", Fact.temperature(refrigerant.get().bubbleTemperature(absolute), units)));
        } catch (OutOfRangeException e) {
            draft.say(Message.of("saturation.none").with("pressure", Fact.amount(pressure)));
        }
    }
}
