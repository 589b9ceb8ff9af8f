package readback.calc.plant;

/**
 * Flow and power of a compressor at the two saturation temperatures, both dew points in K, with the superheat at which
 * compressors are rated. What the actual vapour does to them is the same for all: see {@link #VOLUME_SHARE}.
 */
interface Compressor {

    /** Superheat for which flow and power hold: 20 °F, AHRI Standard 540. K. */
    double RATED_SUPERHEAT = 20 / 1.8;

    /**
     * How much of a change of the suction vapour's volume the flow follows: Dabiri and Rice, ASHRAE Trans. 87(2), 771
     * (1981), from memory.
     */
    double VOLUME_SHARE = 0.75;

    /** The share of the power that the refrigerant takes along; the rest leaves through the shell. Ours. */
    double HEAT_KEPT = 0.95;

    /** kg/s. */
    double flow(double evaporating, double condensing);

    /** W. */
    double power(double evaporating, double condensing);

    /** The same design with a displacement so many times as large. */
    Compressor times(double factor);
}
