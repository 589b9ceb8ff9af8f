package readback.grammar;

import java.util.List;
import java.util.Map;
import java.util.Set;
import readback.calc.quantity.Quantity;

/**
 * What can be said about probes in a situation. Where none is connected nothing of it is listened for.
 *
 * @param offered the quantities of which a probe offers a value: "take the suction"
 * @param unnamed the numbers of the probes of which nobody said yet what they measure, each with what it may be
 */
public record ProbesShown(Set<Quantity> offered, Map<Integer, List<Quantity>> unnamed) {

    /** Nothing is connected. */
    public static final ProbesShown NONE = new ProbesShown(Set.of(), Map.of());

    public ProbesShown {
        offered = Set.copyOf(offered);
        unnamed = Map.copyOf(unnamed);
    }
}
