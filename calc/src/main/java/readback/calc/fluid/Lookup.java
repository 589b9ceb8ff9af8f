package readback.calc.fluid;

import java.util.List;
import java.util.Optional;

/** What a search of the catalogue found. */
public sealed interface Lookup {

    /** What the case of this kind makes of the outcome. */
    <T> T fold(Cases<T> cases);

    /** The refrigerant, if there is data for it. */
    default Optional<Refrigerant> known() {
        return Optional.empty();
    }

    /** What is to be made of each kind of outcome. */
    interface Cases<T> {

        T found(Found found);

        T unsupported(Unsupported unsupported);

        T unknown(Unknown unknown);
    }

    /** A refrigerant that this program knows by equation. */
    record Found(Refrigerant refrigerant) implements Lookup {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.found(this);
        }

        @Override
        public Optional<Refrigerant> known() {
            return Optional.of(refrigerant);
        }
    }

    /**
     * A refrigerant that exists, but that no charge can be judged for here.
     *
     * @param why in a few words, without a full stop
     */
    record Unsupported(String designation, String why) implements Lookup {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.unsupported(this);
        }
    }

    /**
     * No such refrigerant.
     *
     * @param asked as given
     * @param nearest designations that look most like it, best first; at most three
     */
    record Unknown(String asked, List<String> nearest) implements Lookup {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.unknown(this);
        }
    }
}
