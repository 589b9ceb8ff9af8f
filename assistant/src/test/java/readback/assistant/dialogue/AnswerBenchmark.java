package readback.assistant.dialogue;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import readback.grammar.Expectation;
import readback.grammar.Hypothesis;

/**
 * How long the dialogue takes from an event to its effects, beside the two things next to it in a turn: understanding
 * the words alone, and the phrases for the next step.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AnswerBenchmark {

    private final Rehearsal rehearsal = new Rehearsal()
            .says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67", "suction 118");
    private final Event verdict = heard("suction line sixty two");
    private final Event reading = heard("suction one nineteen");
    private final Event doubt = new Event.Heard(
            Instant.EPOCH,
            Event.Source.VOICE,
            List.of(
                    new Hypothesis("suction line sixty two", 0.6, List.of()),
                    new Hypothesis("suction line fifty two", 0.3, List.of()),
                    new Hypothesis("suction line sixty", 0.1, List.of())));

    private static Event heard(String words) {
        return new Event.Heard(Instant.EPOCH, Event.Source.KEYS, List.of(Hypothesis.typed(words)));
    }

    @Benchmark
    public Turn reading() {
        return Rehearsal.DIALOGUE.on(rehearsal.state(), reading);
    }

    @Benchmark
    public Turn verdict() {
        return Rehearsal.DIALOGUE.on(rehearsal.state(), verdict);
    }

    @Benchmark
    public Turn doubt() {
        return Rehearsal.DIALOGUE.on(rehearsal.state(), doubt);
    }

    @Benchmark
    public Expectation expectation() {
        return Rehearsal.DIALOGUE.expectation(rehearsal.state());
    }

    @Benchmark
    public int phrasesOfTheNextStep() {
        return Rehearsal.GRAMMAR
                .vocabulary(Rehearsal.DIALOGUE.expectation(rehearsal.state()))
                .phrases()
                .size();
    }
}
