package readback.calc.procedure;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.TemperatureSplit;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Band;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.LineState;
import readback.calc.measurement.Readings;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.TemperatureDifference;

/**
 * What a system shows that was charged by weight and runs: information, since the scale has decided. Each figure is
 * there as far as its readings are.
 *
 * @param superheat of the suction line
 * @param subcooling of the liquid line
 * @param split return less supply air
 */
public record FunctionalCheck(
        Optional<TemperatureDifference> superheat,
        Optional<TemperatureDifference> subcooling,
        Optional<TemperatureDifference> split) {

    /** What can be seen of a running system. */
    public enum Aspect {
        SUPERHEAT,
        SUBCOOLING,
        SPLIT
    }

    /** 4 °F is the floor of RA3.2.2.6.2 for valves; a fixed orifice may show 30 °F on a mild day. Common practice. */
    private static final Band USUAL_SUPERHEAT = Band.fahrenheit(4, 30);

    /** Common practice, no source. */
    private static final Band USUAL_SUBCOOLING = Band.fahrenheit(4, 20);

    /** Common practice, no source. */
    private static final Band USUAL_SPLIT = Band.fahrenheit(14, 24);

    /** The figures that the readings give. */
    public static FunctionalCheck of(
            Refrigerant refrigerant, AbsolutePressure air, Readings readings, InstrumentAccuracy accuracy) {
        LineState lines = LineState.of(refrigerant, air, readings, accuracy);
        return new FunctionalCheck(
                lines.superheat().map(Estimate::value),
                lines.subcooling().map(Estimate::value),
                TemperatureSplit.actual(readings));
    }

    /** Whether nothing at all was measured. */
    public boolean empty() {
        return superheat.isEmpty() && subcooling.isEmpty() && split.isEmpty();
    }

    /** The figures outside what most systems show. */
    public Set<Aspect> unusual() {
        Set<Aspect> unusual = EnumSet.noneOf(Aspect.class);
        superheat.filter(value -> !USUAL_SUPERHEAT.contains(value)).ifPresent(any -> unusual.add(Aspect.SUPERHEAT));
        subcooling.filter(value -> !USUAL_SUBCOOLING.contains(value)).ifPresent(any -> unusual.add(Aspect.SUBCOOLING));
        split.filter(value -> !USUAL_SPLIT.contains(value)).ifPresent(any -> unusual.add(Aspect.SPLIT));
        return unusual;
    }
}
