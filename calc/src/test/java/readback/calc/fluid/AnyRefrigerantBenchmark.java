package readback.calc.fluid;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/** Fitted curves of all refrigerants, another one each time, in random order. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class AnyRefrigerantBenchmark {

    private static final int COUNT = 1024;

    private final Refrigerant[] refrigerants = new Refrigerant[COUNT];
    private final AbsolutePressure[] pressures = new AbsolutePressure[COUNT];
    private final Temperature[] temperatures = new Temperature[COUNT];
    private int next;

    @Setup
    public void choose() {
        List<Refrigerant> all = Catalogue.standard().all();
        Random random = new Random(20261125);
        for (int i = 0; i < COUNT; i++) {
            Refrigerant refrigerant = all.get(random.nextInt(all.size()));
            double low = Math.log(Math.max(
                    refrigerant.lowestPressure(Side.BUBBLE).pascals(),
                    refrigerant.lowestPressure(Side.DEW).pascals()));
            double high = Math.log(Math.min(
                    refrigerant.highestPressure(Side.BUBBLE).pascals(),
                    refrigerant.highestPressure(Side.DEW).pascals()));
            refrigerants[i] = refrigerant;
            pressures[i] = AbsolutePressure.pascals(Math.exp(low + (high - low) * random.nextDouble()));
            temperatures[i] = refrigerant.dewTemperature(pressures[i]);
        }
    }

    private int next() {
        next = (next + 1) & (COUNT - 1);
        return next;
    }

    @Benchmark
    public double dewTemperature() {
        int i = next();
        return refrigerants[i].dewTemperature(pressures[i]).kelvin();
    }

    @Benchmark
    public double bubbleTemperature() {
        int i = next();
        return refrigerants[i].bubbleTemperature(pressures[i]).kelvin();
    }

    @Benchmark
    public double dewPressure() {
        int i = next();
        return refrigerants[i].dewPressure(temperatures[i]).pascals();
    }
}
