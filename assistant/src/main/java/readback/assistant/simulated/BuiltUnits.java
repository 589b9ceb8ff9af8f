package readback.assistant.simulated;

import java.util.EnumMap;
import java.util.Map;
import readback.calc.plant.AirConditioner;
import readback.calc.plant.TrainingUnit;

/** The training units, each built when it is first wanted. Owned by one thread. */
public final class BuiltUnits {

    private final Map<TrainingUnit, AirConditioner> built = new EnumMap<>(TrainingUnit.class);

    public AirConditioner get(TrainingUnit unit) {
        return built.computeIfAbsent(unit, TrainingUnit::built);
    }
}
