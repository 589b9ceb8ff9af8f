package readback.calc.condition;

/** What to do about a failed condition. */
public enum Remedy {
    /** Charge by weight from the nameplate and the line set: valid at any temperature. RA3.2. */
    WEIGH_IN,
    /** Restrict the condenser air, where the maker charges by subcooling and allows it. RA1.2. */
    WINTER_SET_UP,
    /** Move the restrictor until the pressure difference lies in its band, and let it stand for 15 minutes. RA1.2. */
    ADJUST_RESTRICTOR,
    /** On so warm a day the ordinary check needs no restrictor. */
    TAKE_RESTRICTOR_OFF,
    COME_BACK_WHEN_WARMER,
    COME_BACK_WHEN_COOLER,
    /** Raise indoor heat and humidity until the target becomes usable. */
    LOAD_THE_HOUSE,
    /** Use the maker's own chart for this unit. */
    USE_MAKERS_CHART,
    KEEP_RUNNING,
    /** Filter, coil, blower, registers: put the air right before touching the charge. */
    RESTORE_AIRFLOW,
    MEASURE_AGAIN,
    CHECK_CAPACITY,
    LOOK_FOR_ICE,
    /** With the fan alone, until the coil is clear. */
    THAW,
    /** Without ice and with air enough: a leak or a restriction, and then the scale. */
    FIND_LEAK_OR_RESTRICTION
}
