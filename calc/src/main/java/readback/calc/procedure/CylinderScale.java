package readback.calc.procedure;

import java.math.BigDecimal;
import java.util.Optional;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** What a charging scale under the refrigerant cylinder tells. */
public final class CylinderScale {

    private CylinderScale() {}

    /** What went into the system, in the unit of the first weight; empty if the scale did not fall. */
    public static Optional<Reading> wentIn(Reading before, Reading after) {
        double difference = before.base() - after.base();
        Reading added = new Reading(Quantity.REFRIGERANT_ADDED, BigDecimal.ZERO, before.unit()).withBase(difference);
        return Optional.of(added).filter(reading -> reading.value().signum() > 0);
    }
}
