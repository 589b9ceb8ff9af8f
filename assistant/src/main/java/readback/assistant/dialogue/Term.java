package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.grammar.Meaning;
import readback.prompts.text.Message;

/** A word of the trade whose meaning an apprentice may ask for at any moment. An explanation fills nothing. */
public enum Term {
    PISTON,
    CAPILLARY_TUBE,
    THERMOSTATIC_VALVE,
    ELECTRONIC_VALVE,
    SUPERHEAT,
    SUBCOOLING,
    SATURATION,
    WET_BULB,
    DRY_BULB,
    TEMPERATURE_SPLIT,
    APPROACH,
    GLIDE,
    SUCTION_LINE,
    LIQUID_LINE,
    SUCTION_PORT,
    LIQUID_PORT,
    RATING_PLATE,
    FILTER_DRIER,
    ACCUMULATOR,
    RECEIVER,
    REVERSING_VALVE,
    RESTRICTION,
    NON_CONDENSABLES,
    MICRON,
    ALTITUDE,
    FLAMMABILITY;

    /** The choice set of what is asked about. */
    static final String CHOICE = "term";

    /** The word that is asked about; empty where the choice is of another set. */
    static Optional<Term> in(Meaning.Choice choice) {
        return choice.choice().equals(CHOICE) ? ConstantName.find(Term.class, choice.option()) : Optional.empty();
    }

    /** The word for what is measured, or for where; empty where none is explained. */
    static Optional<Term> of(Quantity quantity) {
        return switch (quantity) {
            case RETURN_WET_BULB, SUPPLY_WET_BULB -> Optional.of(WET_BULB);
            case RETURN_DRY_BULB, SUPPLY_DRY_BULB -> Optional.of(DRY_BULB);
            case SUCTION_PRESSURE -> Optional.of(SUCTION_PORT);
            case LIQUID_PRESSURE -> Optional.of(LIQUID_PORT);
            case SUCTION_LINE_TEMPERATURE -> Optional.of(SUCTION_LINE);
            case LIQUID_LINE_TEMPERATURE -> Optional.of(LIQUID_LINE);
            case VACUUM_LEVEL -> Optional.of(MICRON);
            default -> Optional.empty();
        };
    }

    /** What it means, and how a part is known. */
    Message explained() {
        return Message.of("explained." + ConstantName.of(this));
    }
}
