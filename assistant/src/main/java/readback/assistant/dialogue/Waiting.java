package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Steps that wait for time to pass: their timers, their reminders, and what may not be measured meanwhile. */
final class Waiting {

    private static final String REMINDER = ".reminder";

    /** So often the time that is left is said. */
    private static final Duration REMIND_EVERY = Duration.ofMinutes(5);

    private final Flow flow;

    Waiting(Flow flow) {
        this.flow = flow;
    }

    /** The step is reached: the time begins to run, once. */
    void begin(Draft draft, Step step, Duration duration) {
        if (!draft.state().waits().containsKey(step.id())) {
            draft.become(draft.state().waiting(step.id(), draft.state().at()));
            draft.doing(new Effect.StartTimer(step.id(), duration));
            remindLater(draft, step, duration);
        }
    }

    private static void remindLater(Draft draft, Step step, Duration left) {
        if (left.compareTo(REMIND_EVERY) > 0) {
            draft.doing(new Effect.StartTimer(step.id() + REMINDER, REMIND_EVERY));
        }
    }

    /** A timer ran out; whether anything is to be said. */
    boolean elapsed(Draft draft, String timer) {
        boolean reminder = timer.endsWith(REMINDER);
        String id = reminder ? timer.substring(0, timer.length() - REMINDER.length()) : timer;
        Optional<Step> step = flow.job(draft.state()).step(id).map(placed -> placed.step());
        Optional<Duration> duration = step.flatMap(each -> each.task().awaited());
        Instant since = draft.state().waits().get(id);
        if (duration.isEmpty() || since == null) {
            return false;
        }
        Duration left = left(draft, since, duration.get());
        if (left.isZero() || left.isNegative()) {
            over(draft, step.get());
        } else {
            if (reminder) {
                draft.say(Message.of("wait.left").with("minutes", minutes(left)));
            }
            remindLater(draft, step.get(), left);
        }
        return true;
    }

    private static void over(Draft draft, Step step) {
        passed(draft, step, Duration.ZERO);
        draft.say(step.text(".over"));
    }

    /** The coil was seen to be clear: thawing is over, whatever was left of the time. */
    void endThaw(Draft draft) {
        flow.job(draft.state())
                .step(Slots.THAWING.id())
                .map(Job.Placed::step)
                .filter(step -> draft.sheet().answer(step.slot()).isEmpty())
                .ifPresent(step -> {
                    passed(draft, step, Duration.ZERO);
                    stopTimers(draft, step.id());
                });
    }

    private static void passed(Draft draft, Step step, Duration missing) {
        Instant now = draft.state().at();
        Instant since = draft.state().waits().getOrDefault(step.id(), now);
        draft.become(draft.state().notWaiting(step.id()));
        draft.become(draft.sheet().passed(step.slot(), new Answer.Passed(now, since, missing)));
    }

    /** The technician measures before the time is over; what was missing is told and kept. */
    void cutShort(Draft draft, Step step, Duration duration) {
        Instant since = draft.state().waits().get(step.id());
        Duration missing = since == null ? duration : left(draft, since, duration);
        passed(draft, step, missing);
        stopTimers(draft, step.id());
        draft.say(Message.of("wait.cut-short").with("minutes", minutes(missing)));
    }

    private static void stopTimers(Draft draft, String id) {
        draft.doing(new Effect.StopTimer(id));
        draft.doing(new Effect.StopTimer(id + REMINDER));
    }

    /**
     * Waits of the current job whose reason was taken back, as when an amount was scratched: their timers are stopped.
     */
    void giveUp(Draft draft) {
        beginAgain(draft);
        for (String id : draft.state().waits().keySet()) {
            Optional<Job.Placed> placed = flow.job(draft.state()).step(id);
            if (placed.isPresent() && !needed(draft, id)) {
                stop(draft, id);
            }
        }
    }

    private static void stop(Draft draft, String id) {
        draft.become(draft.state().notWaiting(id));
        stopTimers(draft, id);
    }

    /** Refrigerant was moved again: whatever settles for that reason begins anew. */
    void startAgain(Draft draft) {
        for (String id : draft.state().waits().keySet()) {
            boolean settles = flow.job(draft.state())
                    .step(id)
                    .filter(placed -> placed.checklist().repeats())
                    .isPresent();
            if (settles) {
                stop(draft, id);
            }
        }
    }

    /** Where a hold has to be begun anew, what was measured after it counts no longer. */
    private void beginAgain(Draft draft) {
        List<Step> steps = flow.applicable(draft.state()).map(Job.Placed::step).toList();
        Set<Slot> after = steps.stream()
                .dropWhile(step -> !Flow.asksAgain(step, draft.state()))
                .dropWhile(step -> step.task().awaited().isEmpty())
                .filter(step ->
                        step.task().awaited().isPresent() || Flow.measured(step).isPresent())
                .map(Step::slot)
                .filter(slot -> draft.sheet().answer(slot).isPresent())
                .collect(Collectors.toSet());
        if (!after.isEmpty()) {
            draft.become(draft.sheet().withoutAll(after));
            steps.stream()
                    .flatMap(step -> step.task().judged().stream())
                    .forEach(report -> draft.become(draft.state().withdrawing(report)));
        }
    }

    /** Whether the wait is still open, and nothing that it counts from is to be done again. */
    private boolean needed(Draft draft, String id) {
        List<Step> open = flow.open(draft.state()).map(Job.Placed::step).toList();
        return open.stream()
                .takeWhile(step -> !Flow.asksAgain(step, draft.state()))
                .anyMatch(step -> step.id().equals(id));
    }

    /** After a restart: what is over meanwhile is over, the rest goes on running. */
    void resumed(Draft draft) {
        draft.state()
                .waits()
                .forEach((id, since) -> flow.job(draft.state())
                        .step(id)
                        .map(placed -> placed.step())
                        .ifPresent(step ->
                                step.task().awaited().ifPresent(duration -> resumed(draft, step, since, duration))));
    }

    private static void resumed(Draft draft, Step step, Instant since, Duration duration) {
        Duration left = left(draft, since, duration);
        if (left.isZero() || left.isNegative()) {
            over(draft, step);
        } else {
            draft.doing(new Effect.StartTimer(step.id(), left));
            remindLater(draft, step, left);
        }
    }

    /** The minutes that a running wait still needs, rounded up; empty when nothing is awaited. */
    Optional<Fact> left(Draft draft, Step step) {
        Instant since = draft.state().waits().get(step.id());
        return since == null
                ? Optional.empty()
                : step.task().awaited().map(duration -> minutes(left(draft, since, duration)));
    }

    private static Duration left(Draft draft, Instant since, Duration duration) {
        Duration left = duration.minus(Duration.between(since, draft.state().at()));
        // where a clock was set back between two runs of the program
        return left.compareTo(duration) > 0 ? duration : left;
    }

    static Fact minutes(Duration left) {
        return new Fact.Counted((int) Math.max(1, left.plusSeconds(59).toMinutes()), Unit.MINUTE);
    }

    /** The objection to a value that is measured before the wait is over; corrections of earlier ones are welcome. */
    Optional<Message> tooEarly(Draft draft, Step asked, Reading reading) {
        boolean measuredAgain = flow.repeatedSlots(draft.state()).contains(Slot.of(reading.quantity()))
                && reading.quantity().dimension() != Dimension.MASS;
        Set<String> waits = draft.state().waits().keySet();
        boolean dueLater = flow.measuredAfter(draft.state(), asked, reading.quantity());
        boolean watched = asked.task().watched() && flow.measuredBefore(draft.state(), asked, reading.quantity());
        return (measuredAgain || dueLater) && !watched && waits.contains(asked.id())
                ? left(draft, asked).map(minutes -> tooEarly(draft, reading, minutes))
                : Optional.empty();
    }

    /** A hold whose value runs away need not be waited for. */
    private static Message tooEarly(Draft draft, Reading reading, Fact minutes) {
        Sheet sheet = draft.sheet();
        Optional<Reading> before =
                sheet.reading(sheet.slotOf(reading.quantity())).filter(each -> runsAway(each, reading));
        boolean falls = reading.quantity() == Quantity.NITROGEN_PRESSURE;
        return before.map(each -> Message.of(falls ? "wait.falls" : "wait.rises")
                        .with("before", Fact.amount(each))
                        .with("now", Fact.amount(reading))
                        .with("minutes", minutes))
                .orElseGet(() -> Message.of("wait.too-early")
                        .with("name", Fact.name(reading.quantity()))
                        .with("minutes", minutes));
    }

    /** No weather does that, nor what is left of moisture. Common practice, no source. */
    private static boolean runsAway(Reading before, Reading now) {
        return switch (before.quantity()) {
            case NITROGEN_PRESSURE -> now.base() < 0.9 * before.base();
            case VACUUM_LEVEL -> now.base() > 3 * before.base();
            default -> false;
        };
    }
}
