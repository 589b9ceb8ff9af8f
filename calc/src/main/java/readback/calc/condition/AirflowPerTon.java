package readback.calc.condition;

import java.util.OptionalDouble;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;

/** The airflow over the indoor coil for the capacity of the system, where both were stated. */
public final class AirflowPerTon {

    /** 300 cfm a ton. California Energy Commission table RA3.3-1, 2008; alterations 2025. */
    public static final double LEAST = 300;

    /** What unit conversion may leave between equal values, relative. */
    private static final double ROUNDING = 1e-9;

    private AirflowPerTon() {}

    /** Cubic feet a minute for each ton of refrigeration. */
    public static OptionalDouble of(Readings readings) {
        OptionalDouble flow = readings.base(Quantity.AIRFLOW);
        OptionalDouble capacity = readings.base(Quantity.CAPACITY);
        return flow.isPresent() && capacity.isPresent() && capacity.getAsDouble() > 0
                ? OptionalDouble.of(Unit.CUBIC_FOOT_PER_MINUTE.fromBase(flow.getAsDouble())
                        / Unit.TON_OF_REFRIGERATION.fromBase(capacity.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Whether so much is enough for a charge test. */
    public static boolean enough(double cubicFeetPerMinutePerTon) {
        return cubicFeetPerMinutePerTon >= LEAST * (1 - ROUNDING);
    }
}
