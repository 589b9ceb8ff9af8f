package readback.calc.procedure;

import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/**
 * How deep refrigerant must be recovered before a circuit is opened for a major repair or disposed of: U.S. 40 CFR
 * 82.156(a), table 1, for recovery machines made since 15 November 1993. Pressure classes: 40 CFR 82.152 (from memory).
 */
public final class RecoveryLevel {

    /** 104 °F, at which the classes are told apart. */
    private static final Temperature CLASSING = Temperature.fahrenheit(104);

    private static final Mass LARGE_APPLIANCE = Mass.pounds(200);
    private static final GaugePressure ATMOSPHERIC = vacuum(0);
    private static final GaugePressure TEN_INCHES = vacuum(10);
    private static final GaugePressure FIFTEEN_INCHES = vacuum(15);

    private RecoveryLevel() {}

    /** Refrigerants by the pressure of their liquid at 104 °F. */
    public enum PressureClass {
        /** Up to 170 psia. */
        MEDIUM,
        /** From 170 to 355 psia. */
        HIGH,
        /** Above 355 psia, or a critical point below 104 °F. */
        VERY_HIGH
    }

    /** The class of a refrigerant. Low-pressure refrigerants (below 45 psia) are not met in split systems. */
    public static PressureClass pressureClass(Refrigerant refrigerant) {
        if (refrigerant.criticalTemperature().compareTo(CLASSING) <= 0) {
            return PressureClass.VERY_HIGH;
        }
        AbsolutePressure liquid = refrigerant.bubblePressure(CLASSING);
        if (liquid.psia() > 355) {
            return PressureClass.VERY_HIGH;
        }
        return liquid.psia() > 170 ? PressureClass.HIGH : PressureClass.MEDIUM;
    }

    /** The gauge pressure to reach, at or below local air pressure. */
    public static GaugePressure required(PressureClass pressureClass, Mass fullCharge) {
        boolean large = fullCharge.compareTo(LARGE_APPLIANCE) >= 0;
        return switch (pressureClass) {
            case VERY_HIGH -> ATMOSPHERIC;
            case HIGH -> large ? TEN_INCHES : ATMOSPHERIC;
            case MEDIUM -> large ? FIFTEEN_INCHES : TEN_INCHES;
        };
    }

    private static GaugePressure vacuum(double inchesOfMercury) {
        return GaugePressure.pascals(Unit.INCH_MERCURY_VACUUM.toBase(inchesOfMercury));
    }
}
