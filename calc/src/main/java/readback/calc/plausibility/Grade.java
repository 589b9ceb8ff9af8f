package readback.calc.plausibility;

import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;

/** How believable a stated value is. */
public sealed interface Grade {

    /** Take it. */
    record Typical() implements Grade {}

    /** Possible, but ask for an explicit yes. */
    record Unusual(Doubt doubt) implements Grade {}

    /** Refuse it. */
    record Impossible(Refusal refusal) implements Grade {}

    /** Limits in the unit in which they are usually stated. */
    record Span(double low, double high, Unit unit) {}

    /** Why a possible value is doubted. */
    sealed interface Doubt {

        /** Outside what is met in working systems. */
        record OutsideUsual(Quantity quantity, boolean above, Span usual) implements Doubt {}

        /** Disagrees with an earlier reading; either may be wrong. */
        record Contradicts(Contradiction contradiction) implements Doubt {}
    }

    /** Why a value is refused. */
    sealed interface Refusal {

        /** No split system can show it. */
        record OutsidePossible(Quantity quantity, boolean above, Span possible) implements Refusal {}

        /** Nothing at all can show it: colder than absolute zero, a vacuum deeper than the local air pressure. */
        record Unphysical(Quantity quantity) implements Refusal {}
    }

    /** The contradiction that made the value unusual, if one did. */
    default Optional<Contradiction> contradiction() {
        return this instanceof Unusual unusual && unusual.doubt() instanceof Doubt.Contradicts contradicts
                ? Optional.of(contradicts.contradiction())
                : Optional.empty();
    }
}
