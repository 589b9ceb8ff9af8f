package readback.assistant.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.measure.Share;
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

    /** @param start from which the generator of each call begins */
    public ClosedLoop(Dialogue dialogue, SpokenWords speech, long start) {
        this.dialogue = dialogue;
        this.speech = speech;
        this.start = start;
    }

    /** What came of one call, by voice and typed. */
    private record Both(Outcome spoken, Outcome typed, Call.Tally tally) {

        boolean finished() {
            return spoken.ending() == Outcome.Ending.FINISHED;
        }
    }

    /**
     * Makes the calls 1 to {@code count} and returns what came of them as lines of text.
     *
     * @param made is told the number of calls made so far
     */
    public List<String> measure(int count, IntConsumer made) {
        BuiltUnits units = new BuiltUnits();
        List<Both> calls = new ArrayList<>(count);
        for (int number = 1; number <= count; number++) {
            Case drawn = Case.draw(start, number, units);
            speech.begin(start * APART + number);
            Call aloud = new Call(dialogue, drawn, Level.CHECKLIST, speech, (said, turn) -> {});
            Outcome spoken = aloud.made();
            Outcome typed = new Call(dialogue, drawn, Level.CHECKLIST, (said, turn) -> {}).made();
            calls.add(new Both(spoken, typed, aloud.tally()));
            made.accept(number);
        }
        return lines(calls);
    }

    private static List<String> lines(List<Both> calls) {
        int values = sum(calls, tally -> tally.values);
        List<String> lines = new ArrayList<>();
        lines.add(new Share(count(calls, Both::finished), calls.size()).line("calls that came to their end by voice"));
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
        lines.add(new Share(count(calls, call -> call.tally().wrongAtVerdicts > 0), calls.size())
                .line("calls with a verdict from a reading that was misheard"));
        lines.add(new Share(
                        count(
                                calls,
                                call -> call.spoken().said() == call.typed().said()),
                        calls.size())
                .line("first verdict as when typed"));
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
        lines.add(new Share(count(calls, call -> !call.spoken().unwarned().isEmpty()), calls.size())
                .line("calls in which a caution was missed"));
        for (Both call : calls) {
            if (!call.finished() || call.spoken().said() != call.typed().said()) {
                lines.add(call.spoken().drawn() + ": "
                        + ConstantName.of(call.spoken().ending()) + ", by voice "
                        + ConstantName.of(call.spoken().said()) + ", typed "
                        + ConstantName.of(call.typed().said()));
            }
        }
        return lines;
    }

    private static int sum(List<Both> calls, ToIntFunction<Call.Tally> of) {
        return calls.stream().map(Both::tally).mapToInt(of).sum();
    }

    private static int count(List<Both> calls, Predicate<Both> which) {
        return (int) calls.stream().filter(which).count();
    }
}
