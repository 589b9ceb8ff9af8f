package readback.calc.targets;

/** Where a target comes from, the most trustworthy first. */
public enum TargetSource {
    /** Stated by the maker for this unit. */
    RATING_PLATE,
    /** The maker's chart for this unit, a cell of it or between two of its points. */
    MAKERS_CHART,
    /** The maker's liquid line temperature above outdoor air, as the subcooling that gives it in this weather. */
    MAKERS_APPROACH,
    /** The charging table by return wet bulb and outdoor dry bulb. */
    CHARGING_TABLE,
    /** A range that fits most units. The technician must hear that it is not this unit's value. */
    COMMON_PRACTICE
}
