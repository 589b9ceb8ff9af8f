package readback.calc.plant;

/**
 * A coil seen from its air: how near the air leaving it comes to the temperature of the refrigerant, zone by zone. Each
 * zone takes a share of the face and of its air.
 *
 * @param airFlow kg/s at sea level
 * @param effectiveness of a face full of boiling or condensing refrigerant, 0 to 1
 * @param wetShare effectiveness for enthalpy when water condenses on the coil, relative to it; evaporator only
 * @param singlePhaseShare effectiveness of a face full of vapour or liquid alone, relative to it
 * @param volume of the refrigerant side, m³
 * @param pressureDrop at rated flow, Pa
 */
record CoilDesign(
        double airFlow,
        double effectiveness,
        double wetShare,
        double singlePhaseShare,
        double volume,
        double pressureDrop) {

    /** Number of transfer units goes with this power of the air flow: textbook value for finned tubes, from memory. */
    private static final double NTU_WITH_AIR = -0.4;

    CoilDesign withEffectiveness(double other) {
        return new CoilDesign(airFlow, other, wetShare, singlePhaseShare, volume, pressureDrop);
    }

    /**
     * The effectiveness of a zone when a share of the air passes a share of the surface.
     *
     * @param share of {@link #effectiveness()}
     */
    double effectiveness(double share, double air, double surface) {
        double units = -Math.log1p(-effectiveness * share);
        return -Math.expm1(-units * surface * Math.pow(air, NTU_WITH_AIR));
    }
}
