package readback.calc.applicability;

/** What is installed, as far as it decides which check of the charge applies. */
public enum SystemKind {
    /** Indoor coil in a duct, cooling only. */
    SPLIT_AIR_CONDITIONER,
    /** Indoor coil in a duct, cooling and heating. */
    SPLIT_HEAT_PUMP,
    /** One or several indoor units without ducts: the metering device sits outdoors, no liquid line can be measured. */
    DUCTLESS,
    /** Both coils in one cabinet, charged by its maker. */
    PACKAGED
}
