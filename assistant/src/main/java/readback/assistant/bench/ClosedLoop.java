package readback.assistant.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
 * dialogue. Each is made once more by typing, so that what hearing costs can be told. Owned by one thread.
 */
public final class ClosedLoop {

    /** A start of its own for each call's ways of speaking. */
    private static final long APART = 7_919;

    private final Dialogue dialogue;
    private final SpokenWords speech;
    private final long start;
    private final BuiltUnits units = new BuiltUnits();

    /** @param start from which the generator of each call begins */
    public ClosedLoop(Dialogue dialogue, SpokenWords speech, long start) {
        this.dialogue = dialogue;
        this.speech = speech;
        this.start = start;
    }

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

        boolean toLookAt() {
            return !finished() || !asTyped() || misheard();
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s; %s: %s, first verdict %s, typed %s; %d turns, at once %d of %d, wrong %d, slips right %d of %d,"
                            + " remarks taken %d of %d, verdicts from a misheard reading %d",
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
                    tally.wrongAtVerdicts);
        }
    }

    /**
     * Makes the calls {@code first} to {@code last} and returns what came of them as lines of text: callers whom the
     * acoustic model never met first, those it was trained on apart.
     *
     * @param first from 1; a call is the same whichever were made before it
     * @param kept where calls to look at are kept, if anywhere: those that did not end, that came to another first
     *     verdict than typed, or that gave a verdict while a reading stood otherwise than it was said
     * @param made is told what came of each call
     * @throws UnknownStepException for a step that the technician does not know
     * @throws RecordUnavailableException when a call cannot be kept
     */
    public List<String> measure(int first, int last, Optional<KeptCalls> kept, Consumer<String> made)
            throws RecordUnavailableException {
        List<Both> calls = new ArrayList<>();
        for (int number = first; number <= last; number++) {
            Case drawn = Case.draw(start, number, units);
            Caller caller = speech.begin(start * APART + number);
            Call aloud = new Call(dialogue, drawn, Level.CHECKLIST, speech, (said, turn) -> {});
            Outcome spoken = aloud.made();
            Outcome typed = new Call(dialogue, drawn, Level.CHECKLIST, new Typed(true), (said, turn) -> {}).made();
            Both both = new Both(caller, spoken, typed, aloud.tally());
            calls.add(both);
            if (kept.isPresent() && both.toLookAt()) {
                List<String> lines = new ArrayList<>(List.of(both.toString(), ""));
                lines.addAll(aloud.said());
                kept.get().keep("call-" + start + "-" + number, aloud.events(), lines);
            }
            made.accept(both.toString());
        }
        List<String> lines = new ArrayList<>();
        of(calls, "callers whom the acoustic model never met", Caller::stranger, lines);
        of(calls, "callers on whom it was trained: no measure of others", caller -> !caller.stranger(), lines);
        calls.stream().filter(Both::toLookAt).map(Both::toString).forEach(lines::add);
        return lines;
    }

    private static void of(List<Both> all, String who, Predicate<Caller> which, List<String> lines) {
        List<Both> calls =
                all.stream().filter(call -> which.test(call.caller())).toList();
        if (!calls.isEmpty()) {
            lines.add(calls.size() + " calls of " + who);
            table(calls, lines);
            calls.stream().map(Both::caller).distinct().forEach(caller -> {
                List<Both> his = calls.stream()
                        .filter(call -> call.caller().equals(caller))
                        .toList();
                lines.add(new Share(sum(his, tally -> tally.atOnce), sum(his, tally -> tally.values))
                        .line("  at once, " + caller.voice().name() + ", calls: " + his.size()));
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
        lines.add(
                share(calls, call -> !call.spoken().unwarned().isEmpty()).line("calls in which a caution was missed"));
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
