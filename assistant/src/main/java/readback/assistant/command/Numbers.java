package readback.assistant.command;

import java.math.BigDecimal;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;

/** Numbers on the command line. */
final class Numbers {

    private Numbers() {}

    /** More than any reading has; keeps "1e999999999" from becoming a billion digits. */
    private static final int MOST_DIGITS = 20;

    /** A decimal number. */
    static BigDecimal decimal(String option, String text) {
        try {
            BigDecimal number = new BigDecimal(text.strip());
            if (number.precision() > MOST_DIGITS || Math.abs(number.scale()) > MOST_DIGITS) {
                throw new CommandFailure(option + " is a number of at most " + MOST_DIGITS + " digits.");
            }
            return number;
        } catch (NumberFormatException e) {
            throw new CommandFailure(option + " is a number, not '" + text + "'.");
        }
    }

    /** A height in feet inside the standard atmosphere's range. */
    static BigDecimal altitudeFeet(String text) {
        BigDecimal feet = decimal("--altitude-ft", text);
        double metres = Unit.FOOT.toBase(feet.doubleValue());
        if (metres < Atmosphere.LOWEST_METRES || metres > Atmosphere.HIGHEST_METRES) {
            throw new CommandFailure("An altitude of " + text + " ft is out of range: use "
                    + Math.round(Unit.FOOT.fromBase(Atmosphere.LOWEST_METRES)) + " to "
                    + Math.round(Unit.FOOT.fromBase(Atmosphere.HIGHEST_METRES)) + " ft.");
        }
        return feet;
    }
}
