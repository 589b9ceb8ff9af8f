package readback.grammar;

import readback.calc.quantity.Unit;
import readback.grammar.lexicon.QuantityWords;

/** What a phrase can mean where it stands. */
sealed interface Item {

    /**
     * The name of a quantity.
     *
     * @param weight 0 to 1, how clearly the name means the quantity
     * @param unitOnly whether it does so only with a unit
     */
    record Name(QuantityWords words, double weight, boolean unitOnly) implements Item {}

    record UnitName(Unit unit) implements Item {}

    /** "degrees": the unit of the settings. */
    record DefaultUnit() implements Item {}

    record Order(Command command) implements Item {}

    /** The beginning of a command that names a quantity. */
    record OrderAbout(Command command) implements Item {}

    record Option(String set, String option) implements Item {}

    record Introduction(String set) implements Item {}

    record Small(Word word) implements Item {}

    /** The kinds of small words. */
    enum Word {
        CORRECTION,
        CHANGE,
        LINK,
        BEHIND,
        FILLER,
        NOTE,
        SATURATION
    }
}
