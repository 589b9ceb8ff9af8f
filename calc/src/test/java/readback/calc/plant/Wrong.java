package readback.calc.plant;

/** Faults by the charge that a unit has. */
final class Wrong {

    private Wrong() {}

    /** @param share of the nameplate charge */
    static Faults charge(double share) {
        return share < 1 ? Faults.of(PlantFault.UNDERCHARGE, 1 - share) : Faults.of(PlantFault.OVERCHARGE, share - 1);
    }
}
