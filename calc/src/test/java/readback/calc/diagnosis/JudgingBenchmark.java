package readback.calc.diagnosis;

import java.util.Map;
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
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.measurement.Known;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;

/** How long a judgement of a full set of readings takes, alone and with the diagnosis. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class JudgingBenchmark {

    private final ChargeJudge judge = new ChargeJudge();
    private final Advisor advisor = new Advisor();
    private final Readings readings = Known.pistonWithLineAt(57)
            .with(Known.reading(Quantity.LIQUID_PRESSURE, 365))
            .with(Known.reading(Quantity.LIQUID_LINE_TEMPERATURE, 100))
            .with(Known.reading(Quantity.DISCHARGE_LINE_TEMPERATURE, 175))
            .with(Known.reading(Quantity.RETURN_DRY_BULB, 78))
            .with(Known.reading(Quantity.SUPPLY_DRY_BULB, 59))
            .with(Known.reading(Quantity.RUN_TIME, 20))
            .with(Known.reading(Quantity.PLATE_SUBCOOLING, 10));

    @Benchmark
    public Judgement pistonCharge() {
        return judge.judge(Known.PISTON, readings);
    }

    @Benchmark
    public Judgement valveCharge() {
        return judge.judge(Known.VALVE, readings);
    }

    @Benchmark
    public Advice pistonAdvice() {
        return advisor.advise(Known.PISTON, readings, Map.of(Finding.FILTER_OR_INDOOR_COIL_DIRTY, false));
    }

    @Benchmark
    public Advice valveAdvice() {
        return advisor.advise(Known.VALVE, readings, Map.of(Finding.FILTER_OR_INDOOR_COIL_DIRTY, false));
    }
}
