package readback.calc.fluid;

/**
 * Saturation of a blend published as a pseudo-pure fluid: bubble and dew pressure are closed-form equations of
 * temperature (Lemmon, Int. J. Thermophys. 24, 991 (2003), doi 10.1023/A:1025048800563).
 */
record PseudoPureSaturation(PureFluid fluid) implements SaturationModel {

    @Override
    public double pressure(Side side, double kelvin) {
        return equation(side).at(kelvin);
    }

    @Override
    public double temperature(Side side, double pascals) {
        return equation(side).inverse(pascals, fluid.lowestTemperature() - 20, fluid.criticalTemperature());
    }

    @Override
    public double density(Side side, double kelvin) {
        double pascals = pressure(side, kelvin);
        return side == Side.BUBBLE
                ? Phases.liquidDensity(fluid, kelvin, pascals)
                : Phases.vapourDensity(fluid, kelvin, pascals);
    }

    private Ancillary equation(Side side) {
        return fluid.ancillary(side == Side.BUBBLE ? "bubble-pressure" : "dew-pressure");
    }
}
