package readback.calc.quantity;

/** The pressure of the air around the gauges. */
public final class Atmosphere {

    /** 101,325 Pa: ISO 2533:1975, U.S. Standard Atmosphere 1976. */
    public static final AbsolutePressure SEA_LEVEL = AbsolutePressure.pascals(101_325);

    /** Lowest height for which a standard atmosphere is given. */
    public static final double LOWEST_METRES = -500;

    /** Greatest height for which a standard atmosphere is given. */
    public static final double HIGHEST_METRES = 6_000;

    private static final double LAPSE = 2.25577e-5;
    private static final double EXPONENT = 5.2559;

    private Atmosphere() {}

    /**
     * The standard-atmosphere pressure at a height above sea level.
     *
     * <p>p = 101325 (1 - 2.25577e-5 h)^5.2559, h in metres: ASHRAE Handbook of Fundamentals, chapter 1, equation 3,
     * after the U.S. Standard Atmosphere 1976 (from memory).
     *
     * @param metres -500 to 6,000
     * @throws OutOfRangeException outside that range
     */
    public static AbsolutePressure atAltitude(double metres) {
        if (!(metres >= LOWEST_METRES && metres <= HIGHEST_METRES)) {
            throw new OutOfRangeException("altitude", metres, "m", LOWEST_METRES + " to " + HIGHEST_METRES + " m");
        }
        return AbsolutePressure.pascals(SEA_LEVEL.pascals() * Math.pow(1 - LAPSE * metres, EXPONENT));
    }
}
