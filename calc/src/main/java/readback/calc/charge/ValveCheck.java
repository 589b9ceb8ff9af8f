package readback.calc.charge;

/**
 * Whether an expansion valve holds its superheat. It tells about the valve, not about the charge.
 *
 * @param superheat at the suction port, against the range
 * @param source rating plate when the maker states the range or the superheat, else common limits
 */
public record ValveCheck(Comparison superheat, Source source) {

    /** Who states the range. */
    public enum Source {
        MAKER,
        /** RA3.2.2.6.2, step 9. */
        GENERAL_LIMITS
    }
}
