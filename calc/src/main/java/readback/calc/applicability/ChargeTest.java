package readback.calc.applicability;

/** What can be done about the charge on the day. */
public enum ChargeTest {
    /** What the maker of the unit prescribes; it comes before everything else. */
    MAKERS_PROCEDURE,
    /** Recover, evacuate, charge by weight. Valid at any outdoor temperature: California Energy Commission RA3.2.3. */
    WEIGH_IN,
    /** Superheat or subcooling of the running system, outdoors 55 °F or warmer: RA3.2.2. */
    COOLING_CHECK,
    /** Subcooling with a restrictor on the condenser, outdoors above 37 and below 71 °F: RA1.2. */
    WINTER_SET_UP,
    /** Whether a heat pump heats as it should; it tells little about the charge. */
    HEATING_CHECK,
    /** None today: come back when it is 55 °F or warmer. */
    NONE_TODAY
}
