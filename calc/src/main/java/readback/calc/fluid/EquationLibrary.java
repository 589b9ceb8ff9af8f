package readback.calc.fluid;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The published equations by designation of the fluid. Immutable. */
record EquationLibrary(
        Map<String, PureFluid> pure,
        Map<String, PureFluid> pseudoPure,
        List<PairParameters> pairs,
        Map<String, Paper> papers) {

    /** The parameters of a pair in the order asked; empty if none are published. */
    Optional<PairParameters> pair(String first, String second) {
        for (PairParameters pair : pairs) {
            if (pair.first().equals(first) && pair.second().equals(second)) {
                return Optional.of(pair);
            }
            if (pair.first().equals(second) && pair.second().equals(first)) {
                return Optional.of(pair.exchanged());
            }
        }
        return Optional.empty();
    }

    /** @throws IllegalArgumentException if there is no such equation */
    PureFluid pureFluid(String designation) {
        return known(pure.get(designation), designation);
    }

    /** @throws IllegalArgumentException if there is no such equation */
    PureFluid pseudoPureFluid(String designation) {
        return known(pseudoPure.get(designation), designation);
    }

    /** @throws IllegalArgumentException if there is no such paper */
    Paper paper(String key) {
        Paper found = papers.get(key);
        if (found == null) {
            throw new IllegalArgumentException("no paper " + key);
        }
        return found;
    }

    private static PureFluid known(@Nullable PureFluid fluid, String designation) {
        if (fluid == null) {
            throw new IllegalArgumentException("no equation of state for " + designation);
        }
        return fluid;
    }
}
