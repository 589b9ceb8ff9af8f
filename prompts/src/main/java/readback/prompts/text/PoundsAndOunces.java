package readback.prompts.text;

import java.math.BigDecimal;
import java.util.Optional;
import readback.calc.quantity.Unit;

/**
 * A mass in pounds and ounces, as charging scales show it and rating plates state it; a part that is nothing is left
 * out.
 *
 * @param ounces less than sixteen
 */
record PoundsAndOunces(boolean negative, BigDecimal pounds, BigDecimal ounces) {

    private static final BigDecimal SIXTEEN = BigDecimal.valueOf(16);

    /** The two parts of a value in {@link Unit#POUND_AND_OUNCES}; empty for other units. */
    static Optional<PoundsAndOunces> of(BigDecimal value, Unit unit) {
        if (unit != Unit.POUND_AND_OUNCES) {
            return Optional.empty();
        }
        BigDecimal[] parts = value.abs().divideAndRemainder(BigDecimal.ONE);
        BigDecimal ounces = parts[1].multiply(SIXTEEN).stripTrailingZeros();
        return Optional.of(new PoundsAndOunces(
                value.signum() < 0, parts[0].setScale(0), ounces.setScale(Math.max(0, ounces.scale()))));
    }

    /** "7 lb 4 oz". */
    String shown() {
        String sign = negative ? "-" : "";
        String small = ounces.toPlainString() + " oz";
        if (pounds.signum() == 0) {
            return sign + small;
        }
        String large = pounds.toPlainString() + " lb";
        return sign + (ounces.signum() == 0 ? large : large + " " + small);
    }
}
