package readback.calc.plant;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.OutOfRangeException;

/** What is wrong with an air-conditioner: any number of faults, each with its size. Immutable. */
public final class FaultSet {

    private static final FaultSet NONE = new FaultSet(new EnumMap<>(PlantFault.class));

    private final EnumMap<PlantFault, Double> sizes;

    private FaultSet(EnumMap<PlantFault, Double> sizes) {
        this.sizes = sizes;
    }

    public static FaultSet none() {
        return NONE;
    }

    public static FaultSet of(PlantFault fault, double size) {
        return NONE.with(fault, size);
    }

    /**
     * These faults with one more, or with another size of one. A size of zero takes the fault away.
     *
     * @throws OutOfRangeException unless the size is between zero and {@link PlantFault#largest()}
     */
    public FaultSet with(PlantFault fault, double size) {
        if (!(size >= 0 && size <= fault.largest())) {
            throw new OutOfRangeException("size of " + fault, size, "", "0 to " + fault.largest());
        }
        EnumMap<PlantFault, Double> more = new EnumMap<>(sizes);
        if (size > 0) {
            more.put(fault, size);
        } else {
            more.remove(fault);
        }
        return new FaultSet(more);
    }

    /** The size of a fault; zero if it is not there. */
    public double size(PlantFault fault) {
        return sizes.getOrDefault(fault, 0.0);
    }

    /** Every fault that is there. */
    public Map<PlantFault, Double> asMap() {
        return Collections.unmodifiableMap(sizes);
    }

    /** Whether a unit that is charged by this method can have all of them. */
    public boolean possibleWith(ChargeMethod method) {
        return sizes.keySet().stream().allMatch(fault -> fault.possibleWith(method));
    }

    Disturbance disturbance() {
        Disturbance disturbance = new Disturbance();
        sizes.forEach((fault, size) -> fault.addTo(disturbance, size));
        return disturbance;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FaultSet that && sizes.equals(that.sizes);
    }

    @Override
    public int hashCode() {
        return sizes.hashCode();
    }

    @Override
    public String toString() {
        return sizes.isEmpty() ? "no fault" : sizes.toString();
    }
}
