package readback.calc.plant;

/**
 * The condenser at one trial state: vapour is cooled, condensed, and the liquid subcooled, each on its share of the
 * face.
 */
final class Condenser {

    /**
     * Dirt gathers low on a coil, where the liquid leaves, and what air is left passes above it: with the air over the
     * whole face falling to a share, that over the liquid falls to this power of it. Ours; without it subcooling would
     * rise with fouling, and Rossi and Braun (HVAC&R Research 3(1), 1997) found that it falls.
     */
    private static final double AIR_OVER_LIQUID = 3;

    private static final double AIR_HEAT_CAPACITY = 1_006;
    private static final double LEAST_DIFFERENCE = 0.3;
    private static final double LEAST_FACE = 0.02;

    /** Share of the coil's volume that is left to the gas that does not condense. Ours. */
    private static final double GAS_ROOM = 0.5;

    /** Volume of the whole circuit over that of the condenser. Ours. */
    private static final double CIRCUIT_OVER_CONDENSER = 3.5;

    /** The air with which a circuit that was not evacuated is filled. Pa and K. */
    private static final double AIR_PRESSURE = 101_325;

    private static final double AIR_TEMPERATURE = 298.15;

    /** Enthalpy of the refrigerant leaving, J/kg. */
    final double leaving;
    /** Pressure of the refrigerant leaving, Pa, with that of other gas. */
    final double leavingPressure;
    /** Temperature of the vapour entering, K. */
    final double discharge;
    /** Bubble point of the refrigerant alone at the mean pressure, K. */
    final double bubble;
    /** Quality of what leaves; 0 for liquid. */
    final double quality;
    /** Refrigerant inside, kg. */
    final double charge;

    Condenser(
            FluidTable fluid,
            CoilDesign design,
            double ratedFlow,
            double flow,
            double entering,
            double condensing,
            OperatingConditions setting) {
        Disturbance disturbance = setting.disturbance();
        double air = disturbance.outdoorAir * setting.thinAir();
        double outdoor = setting.outdoor();
        double pressure = fluid.dewPressure(condensing);
        double drop = design.pressureDrop() * (flow / ratedFlow) * (flow / ratedFlow);
        double dew = fluid.vapourEnthalpy(condensing, 0);
        bubble = fluid.bubbleTemperature(pressure - 0.5 * drop);
        double boiling = fluid.liquidEnthalpy(bubble);
        double gas = gasPressure(disturbance, condensing);
        leavingPressure = pressure - drop + gas;

        double airCapacity = design.airFlow() * air * AIR_HEAT_CAPACITY;
        double blanketed = 1 - gas / (gas + pressure);
        double latent = blanketed * design.effectiveness(1, air, 1);
        double single = design.effectiveness(design.singlePhaseShare(), air, 1);
        double overLiquid = Math.pow(disturbance.outdoorAir, AIR_OVER_LIQUID) * setting.thinAir();
        double liquidCapacity = design.airFlow()
                * overLiquid
                * AIR_HEAT_CAPACITY
                * design.effectiveness(design.singlePhaseShare(), overLiquid, 1);

        double superheat = fluid.superheat(condensing, entering);
        discharge = condensing + superheat;
        double hotFace = 0;
        if (superheat > 0) {
            double capacity = flow * (entering - dew) / superheat;
            double fall = (discharge - outdoor) / Math.max(LEAST_DIFFERENCE, condensing - outdoor);
            hotFace = capacity / (single * airCapacity) * Math.log(Math.max(1, fall));
        }
        double difference = logarithmicMean(
                Smooth.max(condensing - outdoor, LEAST_DIFFERENCE, 0.05),
                Smooth.max(bubble - outdoor, LEAST_DIFFERENCE, 0.05));
        double condensingHeat = Math.min(entering, dew) - boiling;
        double wanted = flow * condensingHeat / (latent * airCapacity * difference);
        double left = 1 - hotFace - wanted;

        double liquid = fluid.liquidDensity(bubble);
        double vapour = fluid.vapourDensity(condensing, 0);
        double inlet = Math.min(1, (entering - boiling) / (dew - boiling));
        double condensed;
        double subcooled;
        if (left >= 0) {
            double heat = fluid.liquidHeatCapacity(bubble);
            double cold = outdoor + (bubble - outdoor) * Math.exp(-liquidCapacity * left / (flow * heat));
            leaving = fluid.liquidEnthalpy(cold);
            quality = 0;
            condensed = wanted;
            subcooled = left * fluid.liquidDensity(0.5 * (bubble + cold));
        } else {
            condensed = Math.max(LEAST_FACE, 1 - hotFace);
            leaving = boiling + (1 - condensed / wanted) * condensingHeat;
            quality = (leaving - boiling) / (dew - boiling);
            subcooled = 0;
        }
        charge = design.volume()
                * (hotFace * fluid.vapourDensity(condensing, 0.5 * superheat)
                        + condensed * VoidFraction.density(liquid, vapour, quality, inlet)
                        + subcooled);
    }

    /** Falls to nothing where the colder end comes down to the air, however warm the other is. */
    private static double logarithmicMean(double a, double b) {
        return Math.abs(a - b) < 1e-3 * a ? 0.5 * (a + b) : (a - b) / Math.log(a / b);
    }

    /**
     * The partial pressure in Pa of air that was left in the circuit: all of it gathers in the condenser, since liquid
     * bars its way.
     */
    static double gasPressure(Disturbance disturbance, double condensing) {
        return disturbance.air * AIR_PRESSURE * (condensing / AIR_TEMPERATURE) * CIRCUIT_OVER_CONDENSER / GAS_ROOM;
    }
}
