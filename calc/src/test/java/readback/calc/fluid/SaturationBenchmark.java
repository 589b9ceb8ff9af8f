package readback.calc.fluid;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import readback.calc.quantity.AbsolutePressure;

/**
 * Dew temperature from pressure, side by side: the fitted curves, the equation of state, and a published ancillary
 * equation inverted numerically. Pressures are spread evenly in their logarithm, in random order, over the whole range.
 *
 * <p>Blends solved by the mixture model have no ancillary of their own; for them the ancillary of their first component
 * is inverted, which costs the same.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SaturationBenchmark {

    private static final int COUNT = 1024;

    @Param({"R-22", "R-410A", "R-407C", "R-454B", "R-448A"})
    public String designation = "";

    private Refrigerant refrigerant;
    private SaturationModel model;
    private Ancillary ancillary;
    private double lowest;
    private double highest;
    private final AbsolutePressure[] pressures = new AbsolutePressure[COUNT];
    private int next;

    public SaturationBenchmark() {
        refrigerant = Catalogue.standard().all().get(0);
        model = refrigerant.model();
        ancillary = new Ancillary(Ancillary.Form.EXP, 1, 1, new double[0], new double[0]);
    }

    @Setup
    public void choose() {
        if (Catalogue.standard().find(designation) instanceof Lookup.Found found) {
            refrigerant = found.refrigerant();
        }
        model = refrigerant.model();
        EquationLibrary library = EquationFacts.load();
        PureFluid fluid;
        if (library.pseudoPure().containsKey(designation)) {
            fluid = library.pseudoPureFluid(designation);
            ancillary = fluid.ancillary("dew-pressure");
        } else {
            fluid = library.pureFluid(refrigerant.composition().get(0).designation());
            ancillary = fluid.ancillary("vapour-pressure");
        }
        lowest = fluid.lowestTemperature();
        highest = fluid.criticalTemperature();
        double low = Math.log(refrigerant.lowestPressure(Side.DEW).pascals());
        double high =
                Math.log(Math.min(refrigerant.highestPressure(Side.DEW).pascals(), 0.99 * fluid.criticalPressure()));
        Random random = new Random(20261125);
        for (int i = 0; i < COUNT; i++) {
            pressures[i] = AbsolutePressure.pascals(Math.exp(low + (high - low) * random.nextDouble()));
        }
    }

    private AbsolutePressure pressure() {
        next = (next + 1) & (COUNT - 1);
        return pressures[next];
    }

    @Benchmark
    public double fittedCurve() {
        return refrigerant.dewTemperature(pressure()).kelvin();
    }

    @Benchmark
    public double equationOfState() {
        return model.temperature(Side.DEW, pressure().pascals());
    }

    @Benchmark
    public double ancillaryInverted() {
        return ancillary.inverse(pressure().pascals(), lowest, highest);
    }
}
