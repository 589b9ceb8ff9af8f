package readback.calc.measurement;

import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** Systems and readings that many tests start from. */
public final class Known {

    public static final Refrigerant R410A = refrigerant("R-410A");
    public static final Refrigerant R22 = refrigerant("R-22");

    /** R-410A, piston, sea level, installer. */
    public static final SystemUnderTest PISTON = SystemUnderTest.of(R410A, MeteringDevice.PISTON);

    /** R-410A, thermostatic expansion valve, sea level, installer. */
    public static final SystemUnderTest VALVE = SystemUnderTest.of(R410A, MeteringDevice.THERMOSTATIC_EXPANSION_VALVE);

    /** Dew point of R-410A at 118 psig and sea level, °F. */
    public static final double EVAPORATING_AT_118 = R410A.dewTemperature(
                    GaugePressure.psig(118).absoluteIn(Atmosphere.SEA_LEVEL))
            .fahrenheit();

    /** Bubble point of R-410A at 365 psig and sea level, °F. */
    public static final double CONDENSING_AT_365 = R410A.bubbleTemperature(
                    GaugePressure.psig(365).absoluteIn(Atmosphere.SEA_LEVEL))
            .fahrenheit();

    private Known() {}

    public static Refrigerant refrigerant(String designation) {
        if (Catalogue.standard().find(designation) instanceof Lookup.Found found) {
            return found.refrigerant();
        }
        throw new IllegalArgumentException("not in the catalogue: " + designation);
    }

    public static Reading reading(Quantity quantity, double usualUnits) {
        return Reading.of(quantity, Double.toString(usualUnits));
    }

    /** Suction 118 psig, wet bulb 67 °F, outdoor 95 °F, the line as given. */
    public static Readings pistonWithLineAt(double lineFahrenheit) {
        return Readings.of(
                reading(Quantity.SUCTION_PRESSURE, 118),
                reading(Quantity.SUCTION_LINE_TEMPERATURE, lineFahrenheit),
                reading(Quantity.RETURN_WET_BULB, 67),
                reading(Quantity.OUTDOOR_TEMPERATURE, 95));
    }

    /** Liquid 365 psig, plate 10 °F, the line as given, and an evaporator with 8 °F of superheat. */
    public static Readings valveWithLineAt(double lineFahrenheit) {
        return Readings.of(
                reading(Quantity.LIQUID_PRESSURE, 365),
                reading(Quantity.LIQUID_LINE_TEMPERATURE, lineFahrenheit),
                reading(Quantity.PLATE_SUBCOOLING, 10),
                reading(Quantity.SUCTION_PRESSURE, 118),
                reading(Quantity.SUCTION_LINE_TEMPERATURE, 48));
    }

    /** As {@link #valveWithLineAt}, with the line so warm that the subcooling is as given, °F. */
    public static Readings valveWithSubcooling(double fahrenheitDegrees) {
        return valveWithLineAt(CONDENSING_AT_365 - fahrenheitDegrees);
    }
}
