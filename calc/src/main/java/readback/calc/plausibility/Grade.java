package readback.calc.plausibility;

import java.util.Optional;
import java.util.function.Function;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;

/** How believable a stated value is. */
public sealed interface Grade {

    /** What the case of this kind makes of the grade. */
    <T> T fold(Cases<T> cases);

    /** Why the value is doubted, if it is. */
    default Optional<Doubt> doubted() {
        return Optional.empty();
    }

    /** Why the value is refused, if it is. */
    default Optional<Refusal> refused() {
        return Optional.empty();
    }

    /** What is to be made of each kind of grade. */
    interface Cases<T> {

        T typical(Typical typical);

        T unusual(Unusual unusual);

        T impossible(Impossible impossible);
    }

    /** Take it. */
    record Typical() implements Grade {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.typical(this);
        }
    }

    /** Possible, but ask for an explicit yes. */
    record Unusual(Doubt doubt) implements Grade {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.unusual(this);
        }

        @Override
        public Optional<Doubt> doubted() {
            return Optional.of(doubt);
        }
    }

    /** Refuse it. */
    record Impossible(Refusal refusal) implements Grade {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.impossible(this);
        }

        @Override
        public Optional<Refusal> refused() {
            return Optional.of(refusal);
        }
    }

    /** Limits in the unit in which they are usually stated. */
    record Span(double low, double high, Unit unit) {}

    /** Why a possible value is doubted. */
    sealed interface Doubt {

        /** What is made of the doubt, by the function for its kind. */
        <T> T fold(Function<OutsideUsual, T> outside, Function<Contradicts, T> contradicts);

        /** Outside what is met in working systems. */
        record OutsideUsual(Quantity quantity, boolean above, Span usual) implements Doubt {
            @Override
            public <T> T fold(Function<OutsideUsual, T> outside, Function<Contradicts, T> contradicts) {
                return outside.apply(this);
            }
        }

        /** Disagrees with an earlier reading; either may be wrong. */
        record Contradicts(Contradiction contradiction) implements Doubt {
            @Override
            public <T> T fold(Function<OutsideUsual, T> outside, Function<Contradicts, T> contradicts) {
                return contradicts.apply(this);
            }
        }
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
        return doubted()
                .flatMap(doubt -> doubt.fold(
                        outside -> Optional.empty(), contradicts -> Optional.of(contradicts.contradiction())));
    }
}
