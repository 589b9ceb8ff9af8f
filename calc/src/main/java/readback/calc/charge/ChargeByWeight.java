package readback.calc.charge;

import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.SafetyClass;
import readback.calc.quantity.Mass;

/** Systems that are charged by the scale alone, because no gauge shows an error of the charge that matters to them. */
final class ChargeByWeight {

    /** 2 lb: half an ounce is already a percent and a half of it. Common practice, no source. */
    static final Mass LEAST_BY_GAUGES = Mass.ounces(32);

    private ChargeByWeight() {}

    /**
     * Whether no topping up is allowed: the refrigerant burns readily (A3, with charges of some hundred grams), or the
     * charge on the plate is under 2 lb.
     *
     * @param nameplate absent where it is not known, and then it decides nothing
     */
    static boolean only(Refrigerant refrigerant, Optional<Mass> nameplate) {
        return refrigerant.safetyClass() == SafetyClass.A3
                || nameplate
                        .filter(charge -> charge.compareTo(LEAST_BY_GAUGES) < 0)
                        .isPresent();
    }
}
