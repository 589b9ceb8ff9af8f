package readback.calc.quantity;

/** The pressure of the air around the gauges. */
public final class Atmosphere {

    /** 101,325 Pa: ISO 2533:1975, U.S. Standard Atmosphere 1976. */
    public static final AbsolutePressure SEA_LEVEL = AbsolutePressure.pascals(101_325);

    /** Lowest height for which a standard atmosphere is given. */
    public static final double LOWEST_METRES = -500;

    /** Greatest height for which a standard atmosphere is given. */
    public static final double HIGHEST_METRES = 6_000;

    /** No weather at any height where equipment stands goes beyond these. Pa; engineering judgement, no source. */
    private static final double LOWEST_BAROMETER = 45_000;

    /** The lowest ever measured is 87 kPa, in a typhoon: World Meteorological Organization, from memory. Pa. */
    private static final double LOWEST_SEA_LEVEL_BAROMETER = 85_000;

    private static final double HIGHEST_BAROMETER = 110_000;

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
        checkAltitude(metres);
        return AbsolutePressure.pascals(SEA_LEVEL.pascals() * Math.pow(1 - LAPSE * metres, EXPONENT));
    }

    /**
     * The pressure that a barometer shows where the gauges are, checked for sense.
     *
     * @param reading the station pressure, not corrected to sea level: 45 to 110 kPa
     * @throws OutOfRangeException outside that range
     */
    public static AbsolutePressure fromBarometer(AbsolutePressure reading) {
        double pascals = reading.pascals();
        if (!(pascals >= LOWEST_BAROMETER && pascals <= HIGHEST_BAROMETER)) {
            throw new OutOfRangeException(
                    "barometer", pascals, "Pa", LOWEST_BAROMETER + " to " + HIGHEST_BAROMETER + " Pa");
        }
        return reading;
    }

    /**
     * The local pressure from the barometer of a weather report, which is corrected to sea level. Taking such a reading
     * as it is would ignore the altitude.
     *
     * <p>The correction runs along the standard atmosphere, as for an altimeter setting: with x = p/101325 to the power
     * 1/5.2559, the local x is the reported x less 2.25577e-5 h (ICAO Doc 7488, from memory).
     *
     * @param reported as reported, 85 to 110 kPa
     * @param metres height above sea level, -500 to 6,000
     * @throws OutOfRangeException outside those ranges
     */
    public static AbsolutePressure fromSeaLevelBarometer(AbsolutePressure reported, double metres) {
        double pascals = reported.pascals();
        if (!(pascals >= LOWEST_SEA_LEVEL_BAROMETER && pascals <= HIGHEST_BAROMETER)) {
            throw new OutOfRangeException(
                    "sea-level barometer",
                    pascals,
                    "Pa",
                    LOWEST_SEA_LEVEL_BAROMETER + " to " + HIGHEST_BAROMETER + " Pa");
        }
        checkAltitude(metres);
        double x = Math.pow(pascals / SEA_LEVEL.pascals(), 1 / EXPONENT) - LAPSE * metres;
        return AbsolutePressure.pascals(SEA_LEVEL.pascals() * Math.pow(x, EXPONENT));
    }

    private static void checkAltitude(double metres) {
        if (!(metres >= LOWEST_METRES && metres <= HIGHEST_METRES)) {
            throw new OutOfRangeException("altitude", metres, "m", LOWEST_METRES + " to " + HIGHEST_METRES + " m");
        }
    }
}
