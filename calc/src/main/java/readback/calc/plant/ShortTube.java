package readback.calc.plant;

/**
 * A fixed orifice: Payne and O'Neal, HVAC&R Research 10(1), 73 (2004), as two public simulation programs carry it with
 * the same numbers. Fitted there to R-12, R-134a, R-502, R-22, R-407C and R-410A, lengths of 9.5 to 25.4 mm and
 * diameters of 1.09 to 1.94 mm; other refrigerants and larger sizes are extrapolated.
 *
 * <p>A capillary tube is computed as a short tube of the diameter that passes the same flow at rating: both answer to
 * pressure and subcooling in the same sense, and no law for capillary tubes with today's refrigerants was at hand.
 *
 * <p>The diameter is let grow with outdoor heat. That is fitted to the charging chart, without which superheat falls
 * too little with outdoor heat; no physical cause is known, and units need it in different measure. Over 65 to 110 °F
 * it changes the flow by less than the scatter of such correlations.
 *
 * @param diameter m, at 95 °F outdoor air
 * @param growth of the diameter, relative, a kelvin
 */
record ShortTube(double diameter, double growth) implements Throttle {

    private static final double LENGTH = 0.0127;

    private static final double RATED_OUTDOOR = 308.15;

    /** The correction for bubbles is not 1 where they begin; it is blended in up to this quality. */
    private static final double BLENDED_IN = 0.02;

    @Override
    public Throttle sized(double size) {
        return new ShortTube(size, growth);
    }

    @Override
    public double flow(
            FluidTable fluid,
            double upstream,
            double enthalpy,
            double downstream,
            double superheat,
            double outdoor,
            Disturbance disturbance) {
        double bore = diameter * disturbance.orificeRatio * (1 + growth * (outdoor - RATED_OUTDOOR));
        return Math.PI / 4 * bore * bore * flux(fluid, upstream, enthalpy, LENGTH / bore);
    }

    private static double flux(FluidTable fluid, double upstream, double enthalpy, double slenderness) {
        double bubble = fluid.bubbleTemperature(upstream);
        double boiling = fluid.liquidEnthalpy(bubble);
        double critical = fluid.criticalPressure();
        if (enthalpy <= boiling) {
            double inlet = fluid.liquidTemperature(enthalpy);
            double saturation = fluid.bubblePressure(inlet);
            double liquid = fluid.liquidDensity(inlet);
            double vapour = fluid.vapourDensity(fluid.dewTemperature(saturation), 0);
            return single(
                    fluid, (upstream - saturation) / critical, bubble - inlet, liquid, vapour / liquid, slenderness);
        }
        double dew = fluid.dewTemperature(upstream);
        double liquid = fluid.liquidDensity(bubble);
        double vapour = fluid.vapourDensity(dew, 0);
        double quality = Math.min(0.9, (enthalpy - boiling) / (fluid.vapourEnthalpy(dew, 0) - boiling));
        double bubbles = bubbles(quality, liquid, vapour, upstream / critical, slenderness);
        double blended = 1 + Math.min(1, quality / BLENDED_IN) * (bubbles - 1);
        return blended * single(fluid, 0, 0, liquid, vapour / liquid, slenderness);
    }

    private static double single(
            FluidTable fluid,
            double overpressure,
            double subcooling,
            double liquid,
            double densityRatio,
            double slenderness) {
        double relative = subcooling / fluid.criticalTemperature();
        double group = (0.38811
                        + 11.427 * overpressure
                        - 14.194 * relative
                        + 1.0703 * densityRatio
                        - 0.091928 * Math.log(slenderness))
                / (1 + 21.425 * overpressure - 581.95 * relative * relative);
        return group * Math.sqrt(liquid * fluid.criticalPressure());
    }

    private static double bubbles(double quality, double liquid, double vapour, double pressure, double slenderness) {
        double mean = 1 / ((1 - quality) / liquid + quality / vapour) / liquid;
        double slip = quality / (1 - quality) * Math.sqrt(liquid / vapour);
        double above = squaredLog(1 - pressure);
        double value = (1.1831 * mean
                        - 1.4680 * mean * mean
                        - 0.15285 * squaredLog(mean)
                        - 14.639 * above
                        + 9.8401 * above
                        - 0.019798 * squaredLog(slenderness))
                / (1 - 1.5348 * mean - 2.0533 * slip - 17.195 * pressure * pressure * pressure);
        return Math.max(0.1, Math.min(1, value));
    }

    private static double squaredLog(double x) {
        double ln = Math.log(x);
        return ln * ln;
    }
}
