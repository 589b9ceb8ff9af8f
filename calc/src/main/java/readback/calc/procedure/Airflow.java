package readback.calc.procedure;

import readback.calc.air.MoistAir;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;

/**
 * Air over the indoor coil, from the heat put into or taken out of it. Standard air of 0.075 lb/ft³ and 0.24 Btu/(lb
 * °F) gives the trade's factors: 1.08 for sensible heat, 4.5 for total heat, at sea level; both follow the air
 * pressure.
 *
 * @param cubicMetresPerSecond zero or more
 */
public record Airflow(double cubicMetresPerSecond) {

    /** 0.075 lb/ft³: standard air of fan and duct practice (ASHRAE Fundamentals, from memory). */
    private static final double STANDARD_DENSITY = 0.075 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    /** 0.24 Btu/(lb °F). */
    private static final double HEAT_CAPACITY = 0.24 * 4186.8;

    /** @throws OutOfRangeException if negative or not finite */
    public Airflow {
        if (!(cubicMetresPerSecond >= 0) || cubicMetresPerSecond == Double.POSITIVE_INFINITY) {
            throw new OutOfRangeException("airflow", cubicMetresPerSecond, "m³/s", "0 or more");
        }
    }

    /**
     * The airflow that warms by the given rise when it takes up the heat: electric strip heat, or sensible cooling with
     * a drop stated as a positive rise.
     *
     * @param watts of heat into the air; for strip heaters volts times amperes
     * @throws OutOfRangeException for heat or rise not above zero
     */
    public static Airflow ofSensibleHeat(double watts, TemperatureDifference rise, AbsolutePressure atmosphere) {
        requirePositive("heat", watts, "W");
        requirePositive("temperature rise", rise.kelvins(), "K");
        return new Airflow(watts / (density(atmosphere) * HEAT_CAPACITY * rise.kelvins()));
    }

    /**
     * The airflow that gives up the total heat between return and supply air.
     *
     * @param watts total cooling
     * @throws OutOfRangeException for heat or enthalpy difference not above zero
     */
    public static Airflow ofTotalHeat(double watts, MoistAir returnAir, MoistAir supplyAir) {
        double joulesPerKilogram = returnAir.enthalpy() - supplyAir.enthalpy();
        requirePositive("heat", watts, "W");
        requirePositive("enthalpy difference", joulesPerKilogram, "J/kg");
        return new Airflow(watts / (density(returnAir.pressure()) * joulesPerKilogram));
    }

    public double cubicFeetPerMinute() {
        return Unit.CUBIC_FOOT_PER_MINUTE.fromBase(cubicMetresPerSecond);
    }

    /**
     * Cubic feet a minute for each ton of refrigeration: 300 is the floor for a charge test, 350 for new systems, 400
     * the usual design.
     *
     * @throws OutOfRangeException for a capacity not above zero
     */
    public double cubicFeetPerMinutePerTon(double capacityWatts) {
        requirePositive("capacity", capacityWatts, "W");
        return cubicFeetPerMinute() / Unit.TON_OF_REFRIGERATION.fromBase(capacityWatts);
    }

    private static double density(AbsolutePressure atmosphere) {
        return STANDARD_DENSITY * atmosphere.pascals() / Atmosphere.SEA_LEVEL.pascals();
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            throw new OutOfRangeException(what, value, unit, "above 0 " + unit);
        }
    }
}
