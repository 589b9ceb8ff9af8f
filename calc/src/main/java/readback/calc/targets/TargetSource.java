package readback.calc.targets;

/** Where a target comes from, the most trustworthy first. */
public enum TargetSource {
    /** Stated by the maker for this unit. */
    RATING_PLATE,
    /** The charging table by return wet bulb and outdoor dry bulb. */
    CHARGING_TABLE,
    /** A range that fits most units. The technician must hear that it is not this unit's value. */
    COMMON_PRACTICE
}
