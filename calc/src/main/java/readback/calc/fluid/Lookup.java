package readback.calc.fluid;

import java.util.List;

/** What a search of the catalogue found. */
public sealed interface Lookup {

    /** A refrigerant that this program knows by equation. */
    record Found(Refrigerant refrigerant) implements Lookup {}

    /**
     * A refrigerant that exists, but that no charge can be judged for here.
     *
     * @param why in a few words, without a full stop
     */
    record Unsupported(String designation, String why) implements Lookup {}

    /**
     * No such refrigerant.
     *
     * @param asked as given
     * @param nearest designations that look most like it, best first; at most three
     */
    record Unknown(String asked, List<String> nearest) implements Lookup {}
}
