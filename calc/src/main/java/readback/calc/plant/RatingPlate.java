package readback.calc.plant;

import java.math.BigDecimal;
import java.math.RoundingMode;
import readback.calc.circuit.LineSet;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/**
 * What can be read at a unit before it runs.
 *
 * @param tons capacity at {@link Weather#RATING}, 1 to 6
 * @param charge for this line set
 * @param subcooling at {@link Weather#RATING}, 2 to 11 K
 */
public record RatingPlate(
        Refrigerant refrigerant,
        MeteringDevice meteringDevice,
        double tons,
        Mass charge,
        TemperatureDifference subcooling,
        LineSet lineSet) {

    /** @throws OutOfRangeException outside the ranges above */
    public RatingPlate {
        require("capacity", tons, "tons", 1, 6);
        require("subcooling", subcooling.kelvins(), "K", 2, 11);
        require("charge", charge.kilograms() / tons, "kg a ton", 0.4, 2);
    }

    /** What is stated about the unit, as readings in the usual units. */
    public Readings readings() {
        Readings known =
                Readings.of(reading(Quantity.NAMEPLATE_CHARGE, charge.ounces()), reading(Quantity.CAPACITY, tons));
        return meteringDevice.chargeMethod() == ChargeMethod.SUBCOOLING
                ? known.with(reading(Quantity.PLATE_SUBCOOLING, subcooling.fahrenheit()))
                : known;
    }

    private static Reading reading(Quantity quantity, double usualUnits) {
        return new Reading(
                quantity, BigDecimal.valueOf(usualUnits).setScale(1, RoundingMode.HALF_EVEN), quantity.usualUnit());
    }

    private static void require(String what, double value, String unit, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new OutOfRangeException(what, value, unit, least + " to " + most + " " + unit);
        }
    }
}
