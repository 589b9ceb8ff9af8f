package readback.assistant.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.measure.Share;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.simulated.BuiltUnits;
import readback.assistant.simulated.Case;
import readback.calc.name.ConstantName;

/**
 * Whole service calls by voice: a simulated unit, a synthetic technician who reads his instruments aloud, the ear, the
 * dialogue. Each is made once more by typing, so that what hearing costs can be told. As many calls are made at the
 * same time as there are callers with an ear of their own. Owned by one thread.
 */
public final class ClosedLoop {

    /** A start of its own for each call's ways of speaking. */
    private static final long APART = 7_919;

    private final Dialogue dialogue;
    private final List<SpokenWords> speeches;
    private final long start;

    /**
     * @param speeches one for each call that is made at the same time; nobody else uses them
     * @param start from which the generator of each call begins
     */
    public ClosedLoop(Dialogue dialogue, List<SpokenWords> speeches, long start) {
        this.dialogue = dialogue;
        this.speeches = List.copyOf(speeches);
        this.start = start;
    }

    /** Somebody who makes calls one after the other. Owned by whoever took it. */
    private record Line(SpokenWords speech, BuiltUnits units) {}

    /** A call that was made, with what is kept of it if it is to be looked at. */
    private record Made(int number, Both both, Call aloud) {}

    /** What came of one call, by voice and typed. */
    private record Both(Caller caller, Outcome spoken, Outcome typed, Call.Tally tally) {

        boolean finished() {
            return spoken.ending() == Outcome.Ending.FINISHED;
        }

        boolean asTyped() {
            return spoken.said() == typed.said();
        }

        boolean misheard() {
            return tally.wrongAtVerdicts > 0;
        }

        /** He was misheard so often that he gave up correcting, or the call ended at once. */
        boolean acted() {
            return tally.actedOnMisheard > 0;
        }

        boolean toLookAt() {
            return !finished() || !asTyped() || misheard() || acted() || unwarned(spoken);
        }

        static boolean unwarned(Outcome outcome) {
            return !outcome.unwarned().isEmpty();
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s; %s: %s, first verdict %s, typed %s; %d turns, at once %d of %d, wrong %d, slips right %d of %d,"
                            + " remarks taken %d of %d, verdicts from a misheard reading %d, acted on %d",
                    spoken.drawn(),
                    caller,
                    ConstantName.of(spoken.ending()),
                    ConstantName.of(spoken.said()),
                    ConstantName.of(typed.said()),
                    tally.turns,
                    tally.atOnce,
                    tally.values,
                    tally.wrong,
                    tally.slipsRight,
                    tally.slips,
                    tally.asidesTaken,
                    tally.asides,
                    tally.wrongAtVerdicts,
                    tally.actedOnMisheard);
        }
    }

    /**
     * Makes the calls {@code first} to {@code last} and returns what came of them as lines of text: callers whom the
     * acoustic model never met first, those it was trained on apart.
     *
     * @param first from 1; a call is the same whichever were made before it
     * @param kept where calls to look at are kept, if anywhere: those that did not end, that came to another first
     *     verdict than typed, or that gave a verdict, moved refrigerant or ended while a reading stood otherwise than
     *     it was said, and those in which a caution was missed
     * @param made is told what came of each call
     * @throws UnknownStepException for a step that the technician does not know
     * @throws RecordUnavailableException when a call cannot be kept
     */
    public List<String> measure(int first, int last, Optional<KeptCalls> kept, Consumer<String> made)
            throws RecordUnavailableException {
        List<Both> calls = new ArrayList<>();
        BlockingQueue<Line> idle = new ArrayBlockingQueue<>(speeches.size());
        speeches.forEach(speech -> idle.add(new Line(speech, new BuiltUnits())));
        ExecutorService callers = Executors.newFixedThreadPool(speeches.size());
        try {
            Queue<Future<Made>> waiting = new ArrayDeque<>();
            for (int number = first; number <= last; number++) {
                int its = number;
                waiting.add(callers.submit(() -> onLine(idle, its)));
            }
            while (!waiting.isEmpty()) {
                Made call = waiting.remove().get();
                calls.add(call.both());
                keep(call, kept);
                made.accept(call.both().toString());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while calls were made", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } finally {
            end(callers);
        }
        List<String> lines = new ArrayList<>();
        of(calls, "callers whom the acoustic model never met", Caller::stranger, lines);
        of(calls, "callers on whom it was trained: no measure of others", caller -> !caller.stranger(), lines);
        calls.stream().filter(Both::toLookAt).map(Both::toString).forEach(lines::add);
        return lines;
    }

    /** Waits for the calls that are being made: nobody may take voice and ear from them. */
    private static void end(ExecutorService callers) {
        callers.shutdownNow();
        boolean interrupted = Thread.interrupted();
        while (!callers.isTerminated()) {
            try {
                callers.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private Made onLine(BlockingQueue<Line> idle, int number) throws InterruptedException {
        Line line = idle.take();
        try {
            return make(number, line);
        } finally {
            idle.add(line);
        }
    }

    private Made make(int number, Line line) {
        Case drawn = Case.draw(start, number, line.units());
        Caller caller = line.speech().begin(start * APART + number);
        Call aloud = new Call(dialogue, drawn, Level.CHECKLIST, line.speech(), (said, turn) -> {});
        Outcome spoken = aloud.made();
        Outcome typed = new Call(dialogue, drawn, Level.CHECKLIST, new Typed(true), (said, turn) -> {}).made();
        return new Made(number, new Both(caller, spoken, typed, aloud.tally()), aloud);
    }

    private void keep(Made call, Optional<KeptCalls> kept) throws RecordUnavailableException {
        if (kept.isPresent() && call.both().toLookAt()) {
            List<String> lines = new ArrayList<>(List.of(call.both().toString(), ""));
            lines.addAll(call.aloud().said());
            kept.get().keep("call-" + start + "-" + call.number(), call.aloud().events(), lines);
        }
    }

    private static void of(List<Both> all, String who, Predicate<Caller> which, List<String> lines) {
        List<Both> calls =
                all.stream().filter(call -> which.test(call.caller())).toList();
        if (!calls.isEmpty()) {
            lines.add(calls.size() + " calls of " + who);
            table(calls, lines);
            calls.stream().map(call -> call.caller().name()).distinct().forEach(name -> {
                List<Both> his = calls.stream()
                        .filter(call -> call.caller().name().equals(name))
                        .toList();
                lines.add(new Share(sum(his, tally -> tally.atOnce), sum(his, tally -> tally.values))
                        .line("  at once, " + his.get(0).caller().voice().name() + ", calls: " + his.size()));
            });
            lines.add("");
        }
    }

    private static void table(List<Both> calls, List<String> lines) {
        int values = sum(calls, tally -> tally.values);
        lines.add(share(calls, Both::finished).line("calls that came to their end by voice"));
        lines.add(String.format(
                Locale.ROOT,
                "%-54s %5d by voice",
                "turns a call, median",
                calls.stream().mapToInt(call -> call.tally().turns).sorted().toArray()[calls.size() / 2]));
        lines.add(
                new Share(sum(calls, tally -> tally.atOnce), values).line("readings taken at once as they were said"));
        lines.add(new Share(sum(calls, tally -> tally.wrong), values)
                .line("readings taken wrong, read back so and corrected"));
        lines.add(new Share(sum(calls, tally -> tally.slipsRight), sum(calls, tally -> tally.slips))
                .line("readings corrected in the same breath, taken at once so"));
        lines.add(new Share(sum(calls, tally -> tally.asidesTaken), sum(calls, tally -> tally.asides))
                .line("remarks to somebody else that something came of"));
        lines.add(share(calls, Both::misheard).line("calls with a verdict from a reading that was misheard"));
        lines.add(share(calls, Both::acted).line("calls in which a misheard reading was acted on"));
        lines.add(share(calls, Both::asTyped).line("first verdict as when typed"));
        lines.add(new Share(
                        count(
                                calls,
                                call -> call.spoken().truth().isOther()
                                        && call.spoken().moved()),
                        count(calls, call -> call.spoken().truth().isOther()))
                .line("refrigerant moved for a fault that is not the charge"));
        lines.add(String.format(
                Locale.ROOT,
                "%-54s %7.1f by voice, %.1f typed",
                "ounces moved wrongly",
                calls.stream().mapToDouble(call -> call.spoken().wrongOunces()).sum(),
                calls.stream().mapToDouble(call -> call.typed().wrongOunces()).sum()));
        lines.add(share(calls, call -> Both.unwarned(call.spoken())).line("calls in which a caution was missed"));
        lines.add(share(calls, call -> Both.unwarned(call.typed())).line("the same when typed"));
    }

    private static Share share(List<Both> calls, Predicate<Both> which) {
        return new Share(count(calls, which), calls.size());
    }

    private static int sum(List<Both> calls, ToIntFunction<Call.Tally> of) {
        return calls.stream().map(Both::tally).mapToInt(of).sum();
    }

    private static int count(List<Both> calls, Predicate<Both> which) {
        return (int) calls.stream().filter(which).count();
    }
}
