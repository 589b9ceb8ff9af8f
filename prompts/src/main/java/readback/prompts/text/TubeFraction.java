package readback.prompts.text;

import java.math.BigDecimal;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

/** A tube size as the trade states it: whole inches and a fraction in lowest terms, sixteenths at the finest. */
record TubeFraction(int whole, int numerator, int denominator) {

    private static final BigDecimal SIXTEEN = BigDecimal.valueOf(16);
    /** The fraction of a tube size in inches; empty for other quantities and for sizes between the sixteenths. */
    static Optional<TubeFraction> of(Reading reading) {
        boolean tube =
                reading.quantity() == Quantity.LIQUID_TUBE_SIZE || reading.quantity() == Quantity.SUCTION_TUBE_SIZE;
        BigDecimal sixteenths = reading.value().multiply(SIXTEEN);
        if (!tube
                || reading.unit() != Unit.INCH
                || reading.value().signum() <= 0
                || sixteenths.stripTrailingZeros().scale() > 0
                || reading.value().compareTo(SIXTEEN) > 0) {
            return Optional.empty();
        }
        int all = sixteenths.intValueExact();
        int numerator = all % 16;
        int denominator = 16;
        while (numerator != 0 && numerator % 2 == 0) {
            numerator /= 2;
            denominator /= 2;
        }
        return Optional.of(new TubeFraction(all / 16, numerator, numerator == 0 ? 1 : denominator));
    }

    String shown() {
        String fraction = numerator + "/" + denominator;
        return numerator == 0 ? String.valueOf(whole) : whole == 0 ? fraction : whole + "-" + fraction;
    }
}
