package readback.calc.plant;

import readback.calc.fluid.FluidState;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/**
 * Properties of one refrigerant, tabulated from its equation of state over saturation temperature and superheat and
 * interpolated by cubic pieces with continuous slopes, which Newton's method needs. Kelvins, pascals, J/kg, m³/kg.
 * Beyond its edges the table goes on in a straight line, so that a solver may stray there. Immutable.
 *
 * <p>Vapour is named by the dew temperature of its pressure and its superheat, liquid by its own temperature: the
 * pressure of a liquid hardly matters.
 */
final class FluidTable {

    private static final double LOWEST = 223.15;
    private static final double HIGHEST = 345.15;
    private static final double STEP = 3;
    private static final double SUPERHEAT_STEP = 6;
    private static final int SUPERHEATS = 21;

    private static final int MOST_STEPS = 12;

    /** J/kg: a hundred-thousandth of a kelvin. */
    private static final double ENTHALPY_PRECISION = 0.01;

    /** K, over which a slope is taken. */
    private static final double SLOPE_STEP = 0.01;

    private static final double PASCALS_AT_LEAST = 1_000;

    private final Refrigerant refrigerant;
    private final double criticalPressure;
    private final double criticalTemperature;
    private final double lowest;
    private final double highest;
    private final double step;
    private final double[] liquidEnthalpy;
    private final double[] liquidDensity;
    private final double[] liquidHeatCapacity;
    /** By superheat, then by dew temperature. */
    private final double[][] vapourEnthalpy;

    private final double[][] lnVapourDensity;

    FluidTable(Refrigerant refrigerant) {
        this.refrigerant = refrigerant;
        criticalPressure = refrigerant.criticalPressure().pascals();
        criticalTemperature = refrigerant.criticalTemperature().kelvin();
        lowest = LOWEST;
        highest = Math.min(HIGHEST, refrigerant.highestTemperature().kelvin());
        int pieces = (int) Math.ceil((highest - lowest) / STEP);
        step = (highest - lowest) / pieces;
        liquidEnthalpy = new double[pieces + 1];
        liquidDensity = new double[pieces + 1];
        liquidHeatCapacity = new double[pieces + 1];
        vapourEnthalpy = new double[SUPERHEATS][pieces + 1];
        lnVapourDensity = new double[SUPERHEATS][pieces + 1];
        for (int i = 0; i <= pieces; i++) {
            Temperature saturation = Temperature.kelvin(Math.min(highest, lowest + i * step));
            FluidState liquid = refrigerant.saturatedLiquid(saturation);
            liquidEnthalpy[i] = liquid.enthalpy();
            liquidDensity[i] = liquid.density();
            liquidHeatCapacity[i] = liquid.heatCapacity();
            vapour(i, saturation);
        }
    }

    private void vapour(int i, Temperature saturation) {
        AbsolutePressure pressure = refrigerant.dewPressure(saturation);
        double hottest = refrigerant.highestVapourTemperature().kelvin();
        for (int j = 0; j < SUPERHEATS; j++) {
            double kelvin = saturation.kelvin() + j * SUPERHEAT_STEP;
            if (kelvin > hottest) {
                // the equation of state ends before the compressor's heat does
                vapourEnthalpy[j][i] = 2 * vapourEnthalpy[j - 1][i] - vapourEnthalpy[j - 2][i];
                lnVapourDensity[j][i] = 2 * lnVapourDensity[j - 1][i] - lnVapourDensity[j - 2][i];
            } else {
                FluidState state = j == 0
                        ? refrigerant.saturatedVapour(saturation)
                        : refrigerant.superheatedVapour(Temperature.kelvin(kelvin), pressure);
                vapourEnthalpy[j][i] = state.enthalpy();
                lnVapourDensity[j][i] = Math.log(state.density());
            }
        }
    }

    Refrigerant refrigerant() {
        return refrigerant;
    }

    double criticalPressure() {
        return criticalPressure;
    }

    double criticalTemperature() {
        return criticalTemperature;
    }

    /** The highest saturation temperature of the table. */
    double highest() {
        return highest;
    }

    double dewPressure(double kelvin) {
        return refrigerant.dewPressure(inside(kelvin)).pascals();
    }

    double bubblePressure(double kelvin) {
        return refrigerant.bubblePressure(inside(kelvin)).pascals();
    }

    double dewTemperature(double pascals) {
        return refrigerant.dewTemperature(inside(pascals, Side.DEW)).kelvin();
    }

    double bubbleTemperature(double pascals) {
        return refrigerant.bubbleTemperature(inside(pascals, Side.BUBBLE)).kelvin();
    }

    double liquidEnthalpy(double kelvin) {
        return cubic(liquidEnthalpy, (kelvin - lowest) / step);
    }

    double liquidDensity(double kelvin) {
        return cubic(liquidDensity, (kelvin - lowest) / step);
    }

    double liquidHeatCapacity(double kelvin) {
        return cubic(liquidHeatCapacity, (kelvin - lowest) / step);
    }

    /** The temperature of liquid of this enthalpy. */
    double liquidTemperature(double enthalpy) {
        double kelvin = 0.5 * (lowest + highest);
        for (int i = 0; i < MOST_STEPS; i++) {
            double miss = liquidEnthalpy(kelvin) - enthalpy;
            if (Math.abs(miss) < ENTHALPY_PRECISION) {
                break;
            }
            kelvin -= miss * SLOPE_STEP / (liquidEnthalpy(kelvin + SLOPE_STEP) - liquidEnthalpy(kelvin));
        }
        return kelvin;
    }

    double vapourEnthalpy(double dew, double superheat) {
        return bicubic(vapourEnthalpy, dew, superheat);
    }

    double vapourDensity(double dew, double superheat) {
        return Math.exp(bicubic(lnVapourDensity, dew, superheat));
    }

    /** The superheat of vapour of this enthalpy at the pressure of a dew temperature; zero for wet vapour. */
    double superheat(double dew, double enthalpy) {
        double saturated = vapourEnthalpy(dew, 0);
        if (enthalpy <= saturated) {
            return 0;
        }
        double kelvins = (enthalpy - saturated) / 1_000;
        double slope = 1_000;
        for (int i = 0; i < MOST_STEPS; i++) {
            double at = vapourEnthalpy(dew, kelvins);
            if (Math.abs(at - enthalpy) < ENTHALPY_PRECISION) {
                break;
            }
            if (kelvins > 0.01) {
                slope = (at - saturated) / kelvins;
            }
            kelvins = Math.max(0, kelvins - (at - enthalpy) / slope);
        }
        return kelvins;
    }

    private Temperature inside(double kelvin) {
        return Temperature.kelvin(Math.max(lowest, Math.min(highest, kelvin)));
    }

    private AbsolutePressure inside(double pascals, Side side) {
        double least =
                Math.max(PASCALS_AT_LEAST, refrigerant.lowestPressure(side).pascals());
        double most = refrigerant.highestPressure(side).pascals();
        return AbsolutePressure.pascals(Math.max(least, Math.min(most, pascals)));
    }

    private double bicubic(double[][] rows, double dew, double superheat) {
        double x = (dew - lowest) / step;
        double y = superheat / SUPERHEAT_STEP;
        int j = piece(y, rows.length);
        double b = cubic(rows[j], x);
        double c = cubic(rows[j + 1], x);
        double a = j > 0 ? cubic(rows[j - 1], x) : Double.NaN;
        double d = j + 2 < rows.length ? cubic(rows[j + 2], x) : Double.NaN;
        return cubic(a, b, c, d, y - j);
    }

    private static double cubic(double[] values, double x) {
        int i = piece(x, values.length);
        double a = i > 0 ? values[i - 1] : Double.NaN;
        double d = i + 2 < values.length ? values[i + 2] : Double.NaN;
        return cubic(a, values[i], values[i + 1], d, x - i);
    }

    private static int piece(double x, int points) {
        return Math.max(0, Math.min(points - 2, (int) Math.floor(x)));
    }

    /**
     * Hermite's cubic between b and c with slopes from their neighbours; where a neighbour is missing (not a number)
     * the slope is that of a parabola through the three others.
     */
    private static double cubic(double a, double b, double c, double d, double f) {
        double left = Double.isNaN(a) ? (-3 * b + 4 * c - d) / 2 : (c - a) / 2;
        double right = Double.isNaN(d) ? (3 * c - 4 * b + a) / 2 : (d - b) / 2;
        if (f < 0) {
            return b + f * left;
        }
        if (f > 1) {
            return c + (f - 1) * right;
        }
        double g = 1 - f;
        return b * g * g * (1 + 2 * f) + c * f * f * (1 + 2 * g) + f * g * (left * g - right * f);
    }
}
