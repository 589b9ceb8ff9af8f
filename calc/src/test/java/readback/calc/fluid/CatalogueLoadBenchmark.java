package readback.calc.fluid;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Loading every refrigerant, once in each of ten fresh processes. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(10)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class CatalogueLoadBenchmark {

    @Benchmark
    public Catalogue load() {
        return Catalogue.load();
    }
}
