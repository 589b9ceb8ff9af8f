package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.caution.CautionNotice;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Goes on to the next step that needs the technician, doing on the way what steps ask of us. */
final class Progress {

    private final Flow flow;
    private final Waiting waiting;
    private final JobStack jobs;

    Progress(Flow flow, Waiting waiting, JobStack jobs) {
        this.flow = flow;
        this.waiting = waiting;
        this.jobs = jobs;
    }

    /** Asks the next step; says nothing more where a verdict cannot be reached yet, or the session is over. */
    void advance(Draft draft) {
        tellWhatToDoNow(draft);
        Optional<Step> next = flow.next(draft.state());
        while (next.isEmpty() || fillsItself(next.get())) {
            boolean goesOn = next.isEmpty() ? jobs.done(draft) : perform(draft, next.get());
            if (!goesOn) {
                return;
            }
            next = flow.next(draft.state());
        }
        Step step = next.get();
        boolean first = draft.conversation().asksOf(step.id()) == 0;
        if (first) {
            step.task()
                    .prepared()
                    .ifPresent(activity -> draft.give(CautionNotice.ofActivity(
                            activity,
                            draft.assessment().refrigerant(),
                            draft.state().warnings(),
                            draft.state().settings().understood())));
        }
        step.task().awaited().ifPresent(duration -> waiting.begin(draft, step, duration));
        if (!draft.state().brief()
                && !draft.state().examined()
                && Flow.measured(step).isPresent()
                && !flow.measuredBefore(draft.conversation())) {
            draft.say(Message.of("offer.why"));
        }
        Flow.measured(step)
                .flatMap(quantity -> ProbeTalk.offer(draft.state(), quantity))
                .ifPresent(draft::say);
        boolean asksAgain = Flow.asksAgain(step, draft.state());
        if (asksAgain) {
            Seasons.objection(draft.assessment(), step).ifPresent(draft::say);
        }
        draft.say(waiting.left(draft, step)
                .map(minutes -> Prompts.ask(step, draft.conversation()).with("minutes", minutes))
                .orElseGet(() -> asksAgain ? Prompts.repeat(step) : Prompts.ask(step, draft.conversation())));
        draft.become(draft.conversation().asking(step.id()));
    }

    /** The verdict may stay while what is to be done about it changes: a step follows the charge on the plate. */
    private static void tellWhatToDoNow(Draft draft) {
        if (draft.before().told(Judged.CHARGE) && draft.state().told(Judged.CHARGE)) {
            List<Message> known = headline(draft.before(), Judged.CHARGE);
            headline(draft.state(), Judged.CHARGE).stream()
                    .filter(message -> !known.contains(message))
                    .forEach(draft::say);
        }
    }

    private static List<Message> headline(State state, Judged what) {
        return state.assessment().announcement(what).map(Announcement::headline).orElse(List.of());
    }

    private static boolean fillsItself(Step step) {
        return step.task().reply() == Task.Reply.NOTHING;
    }

    /** Does what a step asks of us; false when it cannot be done yet. */
    private boolean perform(Draft draft, Step step) {
        Optional<Judged> judged = step.task().judged();
        if (judged.isPresent()) {
            return announce(draft, judged.get());
        }
        measureAgain(draft);
        return true;
    }

    /** Speaks an outcome; false when readings that it needs are still missing. */
    private static boolean announce(Draft draft, Judged what) {
        Assessment assessment = draft.assessment();
        Optional<Announcement> announcement = assessment.announcement(what);
        if (announcement.isEmpty()) {
            List<Fact> missing = assessment.judgement().stream()
                    .flatMap(each -> each.missing().stream())
                    .map(Fact::name)
                    .toList();
            draft.say(
                    missing.isEmpty()
                            ? Message.of("verdict.open")
                            : Message.of("verdict.incomplete").with("missing", new Fact.Listing(missing)));
            return false;
        }
        JobOutcome now = announcement.get().outcome();
        Optional<JobOutcome> before = draft.state().announced(what);
        boolean same = before.map(JobOutcome::name).filter(now.name()::equals).isPresent();
        before.ifPresent(any -> draft.say(Message.of(same ? "verdict.same" : "verdict.changed")));
        if (!same) {
            draft.say(announcement.get().messages());
        } else if (!before.filter(now::alike).isPresent()) {
            draft.say(announcement.get().news(headline(draft.before(), what)));
        }
        draft.become(draft.state().announcing(now));
        return true;
    }

    private void measureAgain(Draft draft) {
        Assessment assessment = draft.assessment();
        TemperatureDifference deviation = assessment
                .judgement()
                .map(Judgement::verdict)
                .flatMap(Verdict::comparison)
                .map(compared -> compared.deviation().value())
                .orElse(TemperatureDifference.kelvins(0));
        // the round keeps what the scale told; told again in the next round it would count twice
        Sheet cleared =
                draft.sheet().withoutAll(flow.repeatedSlots(draft.state())).withoutAll(ScaleSlots.BOTH);
        draft.become(draft.state()
                .measuringAgain(
                        new Round(deviation, assessment.level(), assessment.movedNow(), early(draft)),
                        cleared,
                        Judged.CHARGE));
        draft.say(Message.of("round.next"));
    }

    /** What was missing of the settling time. */
    private static Duration early(Draft draft) {
        return draft.sheet().answers().values().stream()
                .filter(Answer.Passed.class::isInstance)
                .map(answer -> ((Answer.Passed) answer).missing())
                .reduce(Duration.ZERO, Duration::plus);
    }
}
