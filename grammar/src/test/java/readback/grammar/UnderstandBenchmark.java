package readback.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

/**
 * Utterances understood a second on one core: the phrases of a step, and making the phrases themselves.
 *
 * <pre>mvn -q -B -pl .,calc,grammar test-compile dependency:build-classpath -Dmdep.outputFile=target/classpath
 * java -cp grammar/target/test-classes:grammar/target/classes:$(cat grammar/target/classpath) org.openjdk.jmh.Main UnderstandBenchmark
 * </pre>
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class UnderstandBenchmark {

    private static final int PHRASES = 1_000;

    private final Grammar grammar = Grammar.standard();
    private final Expectation step = new Expectation(
            "SUCTION_PRESSURE",
            Optional.of(Quantity.SUCTION_PRESSURE),
            Optional.empty(),
            Optional.of(Quantity.SUCTION_PRESSURE),
            UnitSetting.US);
    private final List<String> phrases =
            new ArrayList<>(grammar.vocabulary(step).phrases().subList(0, PHRASES));

    @Benchmark
    @OperationsPerInvocation(PHRASES)
    public void understand(Blackhole hole) {
        for (String phrase : phrases) {
            hole.consume(grammar.understand(phrase, step));
        }
    }

    @Benchmark
    public Vocabulary vocabulary() {
        return grammar.vocabulary(step);
    }
}
