package readback.calc.charge;

import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/**
 * How much is in a unit by what its readings show together.
 *
 * @param share of the nameplate charge
 * @param standardUncertainty of the share, zero or more
 */
public record ChargeLevel(double share, double standardUncertainty) {

    /** @throws OutOfRangeException for a negative uncertainty */
    public ChargeLevel {
        if (!(standardUncertainty >= 0)) {
            throw new OutOfRangeException("uncertainty of the charge", standardUncertainty, "", "0 or more");
        }
    }

    /** The same unit after refrigerant was moved: that is weighed, so it adds no doubt. */
    public ChargeLevel after(Mass moved, Mass nameplate) {
        return new ChargeLevel(share + moved.kilograms() / nameplate.kilograms(), standardUncertainty);
    }
}
