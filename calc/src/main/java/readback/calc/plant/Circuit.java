package readback.calc.plant;

/**
 * The parts of an air-conditioner as the equations take them.
 *
 * @param ratedFlow kg/s
 * @param ratedCharge kg
 * @param ratedLift pressure difference between high and low side at rating, Pa
 * @param liquidLine volume, m³
 * @param suctionLine volume, m³
 * @param suctionLineGain heat that the suction line takes from outdoor air, W/K
 * @param elsewhere refrigerant in oil, drier, compressor and joints, kg: what makes the computed charge at rating that
 *     of the nameplate (the one-point correction of Shen and Braun, ASHRAE RP-1173)
 */
record Circuit(
        FluidTable fluid,
        Compressor compressor,
        CoilDesign condenser,
        CoilDesign evaporator,
        Throttle throttle,
        double ratedFlow,
        double ratedCharge,
        double ratedLift,
        double liquidLine,
        double suctionLine,
        double suctionLineGain,
        double elsewhere) {}
