package readback.calc.plant;

/**
 * Everything in the circuit at one trial state, and by how much the four balances miss. The state is: dew temperature
 * at the evaporator's outlet and at the condenser's inlet (K), enthalpy of the vapour entering the compressor and of
 * the liquid leaving the condenser (J/kg).
 */
final class Trial {

    static final int EVAPORATING = 0;
    static final int CONDENSING = 1;
    static final int SUCTION = 2;
    static final int LIQUID = 3;

    static final int FLOW_BALANCE = 0;
    static final int CONDENSER_BALANCE = 1;
    static final int EVAPORATOR_BALANCE = 2;
    static final int CHARGE_BALANCE = 3;

    /** A miss of so many J/kg counts as one: some 20 % of the heat that a kilogram moves. */
    private static final double ENTHALPY_SCALE = 40_000;

    /** Makes a miss of a quarter of the charge count as one. */
    private static final double CHARGE_WEIGHT = 4;

    /** Superheats are given below zero for wet vapour, a kelvin for each twentieth of the heat of evaporation. */
    private static final double WET_SCALE = 20;

    private static final double LEAST_VOLUME = 0.2;

    final double evaporating;
    final double condensing;
    final double suctionEnthalpy;
    final double liquidEnthalpy;
    final double flow;
    final double power;
    /** Enthalpy of the vapour leaving the compressor, J/kg. */
    final double dischargeEnthalpy;
    /** At the compressor, K; below zero for wet vapour. */
    final double suctionSuperheat;

    final Condenser condenser;
    final Evaporator evaporator;
    /** Pressure of the liquid before and after what restricts it, Pa. */
    final double liquidPressure;

    final double restrictedPressure;
    /** Pressure that the compressor works against, with that of other gas, Pa. */
    final double dischargePressure;

    final double charge;
    /** Flow, condenser, evaporator and charge, each about 1 for a state that is far off. */
    final double[] misses;

    Trial(Circuit circuit, OperatingConditions setting, double[] state) {
        FluidTable fluid = circuit.fluid();
        Disturbance disturbance = setting.disturbance();
        evaporating = state[EVAPORATING];
        condensing = state[CONDENSING];
        suctionEnthalpy = state[SUCTION];
        liquidEnthalpy = state[LIQUID];

        double dry = fluid.vapourEnthalpy(evaporating, 0);
        double wet = (suctionEnthalpy - dry) / (dry - fluid.liquidEnthalpy(evaporating));
        suctionSuperheat = wet >= 0 ? fluid.superheat(evaporating, suctionEnthalpy) : WET_SCALE * wet;
        double volume = wet >= 0
                ? 1 / fluid.vapourDensity(evaporating, suctionSuperheat)
                : Math.max(LEAST_VOLUME, 1 + wet) / fluid.vapourDensity(evaporating, 0);
        double mapped = 1 / fluid.vapourDensity(evaporating, Compressor.RATED_SUPERHEAT);
        double gas = Condenser.gasPressure(disturbance, condensing);
        dischargePressure = fluid.dewPressure(condensing) + gas;
        double against = gas > 0 ? fluid.dewTemperature(dischargePressure) : condensing;
        double pumped =
                Math.max(0.02 * circuit.ratedFlow(), circuit.compressor().flow(evaporating, against))
                        * (1 + Compressor.VOLUME_SHARE * (mapped / volume - 1));
        flow = pumped * (1 - disturbance.leakage);
        power = Math.max(1, circuit.compressor().power(evaporating, against))
                * (1 + Compressor.VOLUME_SHARE * (mapped / volume - 1))
                * (volume / mapped);
        dischargeEnthalpy = suctionEnthalpy + Compressor.HEAT_KEPT * power / flow;

        condenser = new Condenser(
                fluid, circuit.condenser(), circuit.ratedFlow(), flow, dischargeEnthalpy, condensing, setting);
        liquidPressure = condenser.leavingPressure;
        double relative = flow / circuit.ratedFlow();
        restrictedPressure = liquidPressure - disturbance.restriction * circuit.ratedLift() * relative * relative;
        evaporator = new Evaporator(
                fluid, circuit.evaporator(), circuit.ratedFlow(), flow, liquidEnthalpy, evaporating, setting);
        double fed = circuit.throttle()
                .flow(
                        fluid,
                        restrictedPressure,
                        liquidEnthalpy,
                        evaporator.enteringPressure,
                        evaporator.superheat,
                        setting.outdoor(),
                        disturbance);
        double gained = circuit.suctionLineGain() * (setting.outdoor() - evaporating - evaporator.superheat) / flow;
        charge = circuit.elsewhere()
                + condenser.charge
                + evaporator.charge
                + circuit.liquidLine() * lineDensity(fluid)
                + circuit.suctionLine() * fluid.vapourDensity(evaporating, Math.max(0, suctionSuperheat));
        misses = new double[] {
            (flow - fed) / circuit.ratedFlow(),
            (liquidEnthalpy - condenser.leaving) / ENTHALPY_SCALE,
            (suctionEnthalpy - evaporator.leaving - gained) / ENTHALPY_SCALE,
            CHARGE_WEIGHT * (charge - setting.charge()) / circuit.ratedCharge()
        };
    }

    private double lineDensity(FluidTable fluid) {
        return condenser.quality > 0
                ? VoidFraction.density(
                        fluid.liquidDensity(condenser.bubble),
                        fluid.vapourDensity(condensing, 0),
                        condenser.quality,
                        condenser.quality)
                : fluid.liquidDensity(fluid.liquidTemperature(liquidEnthalpy));
    }

    double miss() {
        double sum = 0;
        for (double each : misses) {
            sum += each * each;
        }
        return Math.sqrt(sum);
    }
}
