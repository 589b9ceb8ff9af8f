package readback.assistant.ear;

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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;

/** What the ear costs: getting ready for a step, and hearing ten seconds of a call. Run from the folder assistant. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class EarBenchmark {
    private final VoskEar ear;
    private final List<String> phrases;
    private final Samples tenSeconds;

    /** The ear with the model loaded and the recording read. */
    public EarBenchmark() {
        ear = ready();
        phrases = Grammar.standard()
                .vocabulary(Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US))
                .phrases();
        tenSeconds = Samples.of(SpokenLines.sound("piston").slice(0, 10 * Ear.RATE), Ear.RATE);
    }

    @TearDown
    public void close() {
        ear.close();
    }

    @Benchmark
    public void getReadyForAStep() {
        ear.listen(phrases).close();
    }

    @Benchmark
    public double hearTenSeconds() {
        AudioFileFeed feed = new AudioFileFeed(ear, tenSeconds);
        double ends = 0;
        while (!feed.ended()) {
            ends += feed.next(phrases).map(Utterance::endSeconds).orElse(0.0);
        }
        return ends;
    }

    @Benchmark
    public void loadTheModel() {
        ready().close();
    }

    private static VoskEar ready() {
        try {
            return BundledEar.first();
        } catch (EarUnavailableException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
