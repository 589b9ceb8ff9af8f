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
        return both("-", pounds.toPlainString() + " lb", " ", ounces.toPlainString() + " oz");
    }

    /** "seven pounds, four ounces", digits singly. */
    String spoken() {
        return both("minus ", words(pounds, "pound"), ", ", words(ounces, "ounce"));
    }

    private String both(String minus, String large, String between, String small) {
        String sign = negative ? minus : "";
        if (pounds.signum() == 0) {
            return sign + small;
        }
        return sign + (ounces.signum() == 0 ? large : large + between + small);
    }

    private static String words(BigDecimal number, String unit) {
        return NumberVerbaliser.words(number) + " " + unit + (number.compareTo(BigDecimal.ONE) == 0 ? "" : "s");
    }
}
