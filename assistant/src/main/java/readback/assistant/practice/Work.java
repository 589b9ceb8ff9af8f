package readback.assistant.practice;

import java.util.Optional;
import java.util.Set;
import readback.calc.name.ConstantName;
import readback.calc.plant.PlantFault;

/** What can be done at the unit besides moving refrigerant, as it is said, and which faults it mends. */
enum Work {
    FILTER(PlantFault.LOW_INDOOR_AIR),
    CONDENSER(PlantFault.DIRTY_OUTDOOR_COIL),
    BULB(PlantFault.BULB_LOOSE);

    private final PlantFault fault;

    Work(PlantFault fault) {
        this.fault = fault;
    }

    static Optional<Work> named(String option) {
        return ConstantName.find(Work.class, option);
    }

    Set<PlantFault> mends() {
        return Set.of(fault);
    }
}
