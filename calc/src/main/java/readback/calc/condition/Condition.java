package readback.calc.condition;

/** What must hold before a charge reading means anything. */
public enum Condition {
    /** Outdoor air of 55 °F or more. California Energy Commission RA3.2.1, 2008 and 2013. */
    OUTDOOR_WARM_ENOUGH(true),
    /** Outdoor air below 71 °F while a restrictor sits on the condenser. RA1.2.1. */
    OUTDOOR_COOL_ENOUGH(true),
    /** With a restrictor, liquid less suction pressure inside the band of {@link WinterSetUp}. */
    PRESSURE_DIFFERENCE_HELD(true),
    /** Outdoor air inside the charging table, up to 115 °F. RA3.2, table of target superheat (recalled). */
    OUTDOOR_INSIDE_TABLE(true),
    /** Outdoor air between the two points that were read from the maker's chart: nothing says how it goes on beyond. */
    OUTDOOR_BETWEEN_CHART_POINTS(true),
    /** Return wet bulb inside the charging table, 50 to 76 °F. RA3.2, table of target superheat (recalled). */
    WET_BULB_INSIDE_TABLE(true),
    /** A target of 5 °F or more: below it the table forbids the test. RA3.2.2.6.1, step 3. */
    TARGET_USABLE(true),
    /** 15 minutes of steady running. RA3.2.2.5 and RA3.2.2.6. */
    RUN_LONG_ENOUGH(true),
    /** Air enough over the indoor coil, by measured airflow or by temperature split. RA3.2.2.7 and table RA3.3-1. */
    AIRFLOW_SUFFICIENT(true),
    /**
     * Airflow shown by either of these at all. The standard protocol does not judge a charge without: RA3.2.2.7. It
     * blocks nothing, since an installer may know his unit, but it is told before refrigerant is moved.
     */
    AIRFLOW_SHOWN(false),
    /**
     * Return air of 70 °F or more, where it was read: below, the table of target splits ends (RA3.2-3), and the
     * protocol has the house warmed first (RA3.2.2, from memory).
     */
    RETURN_WARM_ENOUGH(true),
    /** A temperature split not far below its target: repeat; if it stays, capacity is suspect. RA3.2.2.7. */
    CAPACITY_PLAUSIBLE(false),
    /** An evaporator above freezing; below it look for ice before trusting any reading. Common practice, no source. */
    COIL_ABOVE_FREEZING(true),
    /** No ice on the indoor coil, as far as anybody looked. Common practice, no source. */
    COIL_FREE_OF_ICE(true);

    private final boolean blocking;

    Condition(boolean blocking) {
        this.blocking = blocking;
    }

    /** Whether no verdict may be given while it fails. */
    public boolean blocking() {
        return blocking;
    }
}
