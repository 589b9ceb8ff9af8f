package readback.calc.plant;

import java.util.Random;
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

/** How long a steady state takes: a sound unit of each device, any unit with any faults, and building one. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PlantBenchmark {

    private static final double MODERATE = 0.7;

    private final Random random = new Random(20261128);
    private final AirConditioner piston = Built.PISTON;
    private final AirConditioner valve = Built.VALVE;

    @Benchmark
    public OperatingPoint piston() {
        return OperatingPoint.solve(piston, Weather.RATING, FaultSet.none());
    }

    @Benchmark
    public OperatingPoint valve() {
        return OperatingPoint.solve(valve, Weather.RATING, FaultSet.none());
    }

    @Benchmark
    public OperatingPoint anyFaults() {
        return RandomPlant.next(random, MODERATE).solved();
    }

    @Benchmark
    public AirConditioner building() {
        return TrainingUnit.THREE_TON_R410A_PISTON.built();
    }
}
