package readback.calc.procedure;

import readback.calc.air.MoistAir;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.TemperatureDifference;

/**
 * Heat that goes into or out of the air over the indoor coil. Standard air of 0.075 lb/ft³ and 0.24 Btu/(lb °F) gives
 * the trade's factors: 1.08 for sensible heat, 4.5 for total heat, at sea level; both follow the air pressure.
 */
public final class AirSide {

    /** 0.075 lb/ft³: standard air of fan and duct practice (ASHRAE Fundamentals, from memory). */
    private static final double STANDARD_DENSITY = 0.075 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    /** 0.24 Btu/(lb °F). */
    private static final double HEAT_CAPACITY = 0.24 * 4186.8;

    private AirSide() {}

    /**
     * The airflow in cubic metres a second that warms by the given rise when it takes up the heat of electric heaters.
     *
     * @param watts into the air
     * @throws OutOfRangeException for heat or rise not above zero
     */
    public static double airflow(double watts, TemperatureDifference rise, AbsolutePressure atmosphere) {
        requirePositive("heat", watts, "W");
        requirePositive("temperature rise", rise.kelvins(), "K");
        return watts / (density(atmosphere) * HEAT_CAPACITY * rise.kelvins());
    }

    /**
     * The heat in watts that is taken out of the air, moisture included; negative where it is put in.
     *
     * @param airflow cubic metres a second
     */
    public static double totalCooling(double airflow, MoistAir returnAir, MoistAir supplyAir) {
        return airflow * density(returnAir.pressure()) * (returnAir.enthalpy() - supplyAir.enthalpy());
    }

    /**
     * The heat in watts that is taken out of the air by cooling it, without what its moisture gives up.
     *
     * @param airflow cubic metres a second
     */
    public static double sensibleCooling(double airflow, MoistAir returnAir, MoistAir supplyAir) {
        return airflow
                * density(returnAir.pressure())
                * HEAT_CAPACITY
                * returnAir.dryBulb().minus(supplyAir.dryBulb()).kelvins();
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
