package readback.calc.plant;

/** Faults by the charge that a unit has. */
final class Wrong {

    private Wrong() {}

    /** @param share of the nameplate charge */
    static FaultSet charge(double share) {
        return share < 1
                ? FaultSet.of(PlantFault.UNDERCHARGE, 1 - share)
                : FaultSet.of(PlantFault.OVERCHARGE, share - 1);
    }
}
