package readback.calc.plant;

/**
 * A thermostatic or electronic expansion valve: its area grows linearly with superheat above the static setting until
 * it is wide open; flow as through an orifice. Form: Li and Braun, as in Purdue's open heat pump model.
 *
 * @param area per kelvin of opening, m²/K with the discharge coefficient in it
 */
record ExpansionValve(double area) implements Throttle {

    /** Superheat at which it begins to open, K. Usual settings are 2 to 4 K; from memory. */
    private static final double STATIC = 2;

    /** Wide open so many kelvins above: 2.7 times the opening at a rated superheat of 10 °F. Ours. */
    private static final double FULL_OPENING = 6.5;

    /** Opening at a superheat of 10 °F, as a share of wide open. */
    static final double RATED_OPENING = 0.375;

    /** Share of the superheat that the bulb feels through the pipe. Ours. */
    private static final double FELT = 0.8;

    /** How quickly bubbles before the valve choke it. Ours. */
    private static final double CHOKED_BY_BUBBLES = 12;

    private static final double LEAST_DROP = 1_000;

    @Override
    public Throttle sized(double size) {
        return new ExpansionValve(size);
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
        double asked = FELT * superheat + disturbance.bulbWarmer - STATIC;
        double opening = disturbance.stuckOpen > 0
                ? disturbance.stuckOpen * FULL_OPENING
                : FULL_OPENING * softClip(asked / FULL_OPENING);
        double bubble = fluid.bubbleTemperature(upstream);
        double boiling = fluid.liquidEnthalpy(bubble);
        double quality = (enthalpy - boiling) / (fluid.vapourEnthalpy(fluid.dewTemperature(upstream), 0) - boiling);
        double density = fluid.liquidDensity(Math.min(bubble, fluid.liquidTemperature(Math.min(enthalpy, boiling))));
        double drop = Math.max(LEAST_DROP, upstream - downstream);
        return area * opening * Math.sqrt(density * drop) / (1 + CHOKED_BY_BUBBLES * Math.max(0, quality));
    }

    /** 0 to 1, with rounded corners a tenth wide: a solver loses its way where nothing changes. */
    private static double softClip(double x) {
        double corner = 0.03;
        double above = 0.5 * (x + Math.sqrt(x * x + 4 * corner * corner));
        double y = 1 - above;
        return 1 - 0.5 * (y + Math.sqrt(y * y + 4 * corner * corner));
    }
}
