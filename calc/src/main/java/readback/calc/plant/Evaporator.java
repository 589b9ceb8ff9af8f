package readback.calc.plant;

import readback.calc.air.MoistAir;
import readback.calc.quantity.Temperature;

/**
 * The evaporator at one trial state: refrigerant boils on a share of the face, and on the rest the vapour is warmed.
 * Dry or wet, whichever moves more heat.
 */
final class Evaporator {

    private static final double AIR_HEAT_CAPACITY = 1_006;
    private static final double VAPOUR_HEAT_CAPACITY = 1_860;

    /** Saturated air is not tabulated below. K */
    private static final double COLDEST_AIR = 223.2;

    /** Over which superheat the vapour's heat capacity is taken, K. */
    private static final double CAPACITY_SPAN = 8;

    /** Rounds the corner between dry and wet, as a share of the heat. */
    private static final double ROUNDED = 0.002;

    private static final double LEAST_HEAT = 50;

    /** The blower warms the supply air: 365 W for 1,000 cfm, the default of AHRI Standard 210/240 (from memory). K */
    private static final double BLOWER_RISE = 0.64;

    /** Enthalpy of the refrigerant leaving, J/kg. */
    final double leaving;
    /** Superheat of the vapour leaving, K; 0 when it is wet. */
    final double superheat;
    /** Pressure of the refrigerant entering, Pa. */
    final double enteringPressure;
    /** Heat that cools the air, W. */
    final double sensible;
    /** Dry bulb of the air behind coil and blower, K. */
    final double supply;
    /** Refrigerant inside, kg. */
    final double charge;

    Evaporator(
            FluidTable fluid,
            CoilDesign design,
            double ratedFlow,
            double flow,
            double entering,
            double evaporating,
            OperatingConditions setting) {
        Disturbance disturbance = setting.disturbance();
        MoistAir returnAir = setting.returnAir();
        double share = disturbance.indoorAir * setting.thinAir();
        double air = design.airFlow() * share;
        double heatCapacity = AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * returnAir.humidityRatio();
        double surface = disturbance.clearSurface;

        double pressure = fluid.dewPressure(evaporating);
        double drop = design.pressureDrop() * (flow / ratedFlow) * (flow / ratedFlow);
        enteringPressure = pressure + drop;
        double dew = fluid.dewTemperature(pressure + 0.5 * drop);
        double bubble = fluid.bubbleTemperature(pressure + 0.5 * drop);
        double boiling = fluid.liquidEnthalpy(bubble);
        double dry = fluid.vapourEnthalpy(evaporating, 0);
        double inlet = Math.max(0, Math.min(0.95, (entering - boiling) / (dry - boiling)));
        // a blend begins to boil colder than it ends
        double mean = dew - 0.5 * (1 - inlet) * (dew - bubble);

        double warm = returnAir.dryBulb().kelvin();
        double dryHeat = design.effectiveness(1, share, surface) * air * heatCapacity * (warm - mean);
        double wetHeat = design.effectiveness(design.wetShare(), share, surface)
                * air
                * (returnAir.enthalpy() - saturatedEnthalpy(mean, setting));
        double full = Math.max(LEAST_HEAT, Smooth.max(dryHeat, wetHeat, ROUNDED * Math.abs(dryHeat)));
        double wanted = flow * (dry - entering) / full;

        double boilingFace;
        double outlet;
        if (wanted < 1) {
            boilingFace = wanted;
            outlet = 1;
            double vapourCapacity = (fluid.vapourEnthalpy(evaporating, CAPACITY_SPAN) - dry) / CAPACITY_SPAN;
            double warmed = design.effectiveness(design.singlePhaseShare(), share, surface)
                    * air
                    * heatCapacity
                    * (1 - wanted)
                    / (flow * vapourCapacity);
            superheat = (warm - evaporating) * -Math.expm1(-warmed);
            leaving = fluid.vapourEnthalpy(evaporating, superheat);
        } else {
            boilingFace = 1;
            superheat = 0;
            leaving = entering + full / flow;
            outlet = Math.max(inlet, Math.min(1, (leaving - boiling) / (dry - boiling)));
        }
        double heat = flow * (leaving - entering);
        sensible = Math.min(heat, boilingFace * dryHeat + Math.max(0, heat - boilingFace * full));
        supply = warm - sensible / (air * heatCapacity) + BLOWER_RISE;

        double liquid = fluid.liquidDensity(bubble);
        double vapour = fluid.vapourDensity(evaporating, 0);
        charge = design.volume()
                * (boilingFace * VoidFraction.density(liquid, vapour, inlet, outlet)
                        + (1 - boilingFace) * fluid.vapourDensity(evaporating, 0.5 * superheat));
    }

    private static double saturatedEnthalpy(double kelvin, OperatingConditions setting) {
        return MoistAir.fromRelativeHumidity(
                        Temperature.kelvin(Math.max(COLDEST_AIR, kelvin)),
                        1,
                        setting.returnAir().pressure())
                .enthalpy();
    }
}
