package readback.calc.plant;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The training units, built once for all tests. */
final class Built {

    private static final Map<TrainingUnit, AirConditioner> ALL = new EnumMap<>(TrainingUnit.class);

    static {
        for (TrainingUnit unit : TrainingUnit.values()) {
            ALL.put(unit, unit.built());
        }
    }

    static final AirConditioner PISTON = of(TrainingUnit.THREE_TON_R410A_PISTON);
    static final AirConditioner VALVE = of(TrainingUnit.THREE_TON_R410A_VALVE);

    private Built() {}

    static AirConditioner of(TrainingUnit unit) {
        AirConditioner built = ALL.get(unit);
        if (built == null) {
            throw new IllegalStateException(unit + " was not built");
        }
        return built;
    }

    static List<AirConditioner> all() {
        return List.copyOf(ALL.values());
    }

    /** Where a unit runs at rating. */
    static OperatingPoint.Running running(AirConditioner unit, FaultSet faults) {
        return running(unit, Weather.RATING, faults);
    }

    static OperatingPoint.Running running(AirConditioner unit, Weather weather, FaultSet faults) {
        return OperatingPoint.solve(unit, weather, faults)
                .running()
                .orElseThrow(() -> new AssertionError(unit + " does not run in " + weather + " with " + faults));
    }
}
