package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.name.ConstantName;
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

    /** What it means, and how a part is known. */
    Message explained() {
        return Message.of("explained." + ConstantName.of(this));
    }
}
