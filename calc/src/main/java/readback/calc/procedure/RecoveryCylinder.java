package readback.calc.procedure;

import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

/**
 * A recovery cylinder on the scale. Net limit = 0.8 × water capacity × specific gravity of the liquid: 49 CFR 173.304a
 * and AHRI Guideline K (from memory).
 *
 * @param waterCapacity stamped WC, above zero
 * @param tare stamped TW, above zero
 * @param specificGravity of the liquid refrigerant at 77 °F, above zero
 */
public record RecoveryCylinder(Mass waterCapacity, Mass tare, double specificGravity) {

    private static final double FILL_LIMIT = 0.8;

    /** 77 °F, for which specific gravities of refrigerants are stated; liquid beyond its critical point has none. */
    private static final Temperature STATED_AT = Temperature.fahrenheit(77);

    /** Water at 77 °F, kg/m³: IAPWS-95, from memory. */
    private static final double WATER_DENSITY = 997.05;

    /** A cylinder for a refrigerant; empty where it is no liquid at 77 °F. */
    public static Optional<RecoveryCylinder> of(Refrigerant refrigerant, Mass waterCapacity, Mass tare) {
        return refrigerant.criticalTemperature().compareTo(STATED_AT) <= 0
                ? Optional.empty()
                : Optional.of(new RecoveryCylinder(
                        waterCapacity,
                        tare,
                        refrigerant.saturatedLiquid(STATED_AT).density() / WATER_DENSITY));
    }

    /** @throws OutOfRangeException for a value not above zero */
    public RecoveryCylinder {
        requirePositive("water capacity", waterCapacity.kilograms(), "kg");
        requirePositive("tare weight", tare.kilograms(), "kg");
        requirePositive("specific gravity", specificGravity, "times water");
    }

    /** The most refrigerant that the cylinder may hold. */
    public Mass netLimit() {
        return waterCapacity.times(FILL_LIMIT * specificGravity);
    }

    /** What the scale shows when the limit is reached. */
    public Mass grossLimit() {
        return tare.plus(netLimit());
    }

    /** What may still go in; nothing when at or over the limit. */
    public Mass room(Mass onTheScale) {
        return grossLimit().minus(onTheScale).orNone();
    }

    /** Filled share of the net limit: 1 is the limit, more is over it. */
    public double share(Mass onTheScale) {
        return onTheScale.minus(tare).kilograms() / netLimit().kilograms();
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0)) {
            throw new OutOfRangeException(what, value, unit, "above 0 " + unit);
        }
    }
}
