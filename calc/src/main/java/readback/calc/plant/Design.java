package readback.calc.plant;

import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What a maker chose inside the unit: the state at {@link Weather#RATING}, from which coils, orifice and compressor
 * follow, and how the coils are built.
 *
 * @param evaporating dew point at the evaporator's outlet
 * @param condensing dew point at the condenser's inlet
 * @param superheat at the compressor
 * @param compressor how flow and power answer to pressure
 * @param orificeGrowth how much the diameter of a fixed orifice seems to grow a kelvin of outdoor air above rating: see
 *     {@link ShortTube}
 * @param coils build of the coils
 */
public record Design(
        Temperature evaporating,
        Temperature condensing,
        TemperatureDifference superheat,
        CompressorKind compressor,
        double orificeGrowth,
        Coils coils) {

    /** How flow and power of the compressor are found. */
    public enum CompressorKind {
        /** By the published map of a 3-ton R-410A compressor. */
        MAPPED,
        /** By that of a 3-ton reciprocating R-410A compressor. */
        MAPPED_RECIPROCATING,
        /** By displacement and efficiency. */
        DISPLACEMENT
    }

    /**
     * How the coils are built. Volumes are litres a ton of capacity.
     *
     * @param evaporatorVolume with the accumulator
     * @param wetShare effectiveness for enthalpy over that for temperature, evaporator
     * @param vapourShare effectiveness for vapour over that for boiling, evaporator
     * @param suctionLineGain heat gained by the suction line, W/K a ton
     */
    public record Coils(
            double condenserVolume,
            double evaporatorVolume,
            double wetShare,
            double vapourShare,
            double suctionLineGain) {

        /**
         * Fitted, with the state of {@link TrainingUnit#THREE_TON_R410A_PISTON}, to half of the nodes of the charging
         * chart, and to the table of temperature split.
         */
        public static final Coils FITTED = new Coils(0.75, 1.7, 0.91, 0.44, 0.25);

        /** The same for compressors without a map: the vapour zone was fitted anew to the same nodes. */
        public static final Coils FITTED_WITHOUT_MAP = new Coils(0.75, 1.7, 0.91, 0.36, 0.25);
    }
}
