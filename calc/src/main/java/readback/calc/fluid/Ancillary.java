package readback.calc.fluid;

import readback.calc.numeric.Roots;

/**
 * A closed-form equation along the saturation line in theta = 1 - T/Tref. For pseudo-pure blends the two pressure
 * ancillaries are the published vapour pressure itself; everywhere else an ancillary only seeds a solver.
 */
final class Ancillary {

    /** How the sum of n theta^t becomes the value. */
    enum Form {
        EXP_SCALED,
        EXP,
        ONE_PLUS
    }

    private final Form form;
    private final double referenceTemperature;
    private final double referenceValue;
    private final double[] n;
    private final double[] t;

    Ancillary(Form form, double referenceTemperature, double referenceValue, double[] n, double[] t) {
        this.form = form;
        this.referenceTemperature = referenceTemperature;
        this.referenceValue = referenceValue;
        this.n = n.clone();
        this.t = t.clone();
    }

    /** The value at a temperature in kelvin below the reference temperature, in the unit of the reference value. */
    double at(double kelvin) {
        double theta = 1 - kelvin / referenceTemperature;
        double sum = 0;
        for (int i = 0; i < n.length; i++) {
            sum += n[i] * Math.pow(theta, t[i]);
        }
        return switch (form) {
            case EXP_SCALED -> referenceValue * Math.exp(sum * referenceTemperature / kelvin);
            case EXP -> referenceValue * Math.exp(sum);
            case ONE_PLUS -> referenceValue * (1 + sum);
        };
    }

    /**
     * The temperature at which the value is reached, for a value that rises with temperature.
     *
     * @param low kelvin, where the value is too small
     * @param high kelvin, where it is too large
     */
    double inverse(double value, double low, double high) {
        return Roots.find(kelvin -> Math.log(at(kelvin) / value), low, high, 1e-14);
    }
}
