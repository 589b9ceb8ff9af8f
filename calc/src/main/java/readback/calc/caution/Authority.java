package readback.calc.caution;

/** Who has the last word: a caution never replaces them. */
public enum Authority {
    /** The maker's instructions and the rating plate of the unit at hand. */
    EQUIPMENT_MAKER,
    /** The maker of the gas cylinder, regulator or recovery machine. */
    TOOL_MAKER,
    /** Building, mechanical and fire codes in force at the place. */
    LOCAL_CODE,
    /** Work reserved to trained and licensed people. */
    LICENSED_PRACTICE,
    /** U.S. 40 CFR 82 subpart F: venting, recovery, technician certification. */
    REFRIGERANT_REGULATION,
    /** U.S. 49 CFR 173.304a (from memory): filling of compressed-gas cylinders. */
    CYLINDER_REGULATION,
    /** U.S. 29 CFR 1910.147, 1910.333 and 1910.134 (from memory): lock-out, stored energy, oxygen-deficient air. */
    WORKPLACE_SAFETY,
    /** ASHRAE 15 and UL/CSA 60335-2-40 (clauses from memory): flammable refrigerants, test gas. */
    SAFETY_STANDARD
}
