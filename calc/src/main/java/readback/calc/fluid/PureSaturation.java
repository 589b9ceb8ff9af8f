package readback.calc.fluid;

import java.util.Optional;
import java.util.OptionalDouble;
import readback.calc.numeric.Roots;

/** Saturation of a single substance: pressure and Gibbs energy of liquid and vapour are equal. */
record PureSaturation(PureFluid fluid) implements SaturationModel {

    private static final int MOST_STEPS = 60;
    private static final int USUAL_STEPS = 12;
    private static final double FIRST_BRACKET = 1.02;
    private static final double HIGHEST_BRACKETED_SHARE = 0.995;

    /** @param pressure Pa; densities in mol/m³ */
    record Equilibrium(double pressure, double liquidDensity, double vapourDensity) {}

    @Override
    public double pressure(Side side, double kelvin) {
        return equilibrium(kelvin).pressure();
    }

    @Override
    public double density(Side side, double kelvin) {
        Equilibrium equilibrium = equilibrium(kelvin);
        return side == Side.BUBBLE ? equilibrium.liquidDensity() : equilibrium.vapourDensity();
    }

    @Override
    public double temperature(Side side, double pascals) {
        return newtonTemperature(pascals).orElseGet(() -> bracketedTemperature(pascals));
    }

    /** K, by Newton's method along Clapeyron's slope from the ancillary; empty if it does not settle. */
    OptionalDouble newtonTemperature(double pascals) {
        double kelvin = fluid.ancillary("vapour-pressure").inverse(pascals, fluid.lowestTemperature(), hottest());
        for (int step = 0; step < USUAL_STEPS; step++) {
            Equilibrium at = equilibrium(kelvin);
            MolarProperties liquid = MolarProperties.at(fluid, kelvin, at.liquidDensity());
            MolarProperties vapour = MolarProperties.at(fluid, kelvin, at.vapourDensity());
            double slope = (vapour.entropy() - liquid.entropy()) / (1 / at.vapourDensity() - 1 / at.liquidDensity());
            double change = Math.log(pascals / at.pressure()) * at.pressure() / slope;
            kelvin += change;
            if (Math.abs(change) < 1e-12 * kelvin) {
                return OptionalDouble.of(kelvin);
            }
        }
        return OptionalDouble.empty();
    }

    /** K, by a bracketed search up to 0.995 of the critical temperature. */
    double bracketedTemperature(double pascals) {
        return Roots.find(
                kelvin -> Math.log(equilibrium(kelvin).pressure() / pascals),
                fluid.lowestTemperature(),
                HIGHEST_BRACKETED_SHARE * fluid.criticalTemperature(),
                1e-13);
    }

    /** Just below the critical temperature, where the phases can still be told apart. */
    private double hottest() {
        return fluid.criticalTemperature() * (1 - 1e-9);
    }

    /** Both phases in equilibrium at a temperature in K: Newton's method, else bracketed. */
    Equilibrium equilibrium(double kelvin) {
        return newton(kelvin).orElseGet(() -> bracketed(kelvin));
    }

    /**
     * The equilibrium by Newton's method from the ancillary densities; empty if that does not end in two stable phases.
     */
    Optional<Equilibrium> newton(double kelvin) {
        double rt = fluid.gasConstant() * kelvin;
        double liquid = fluid.ancillary("liquid-density").at(kelvin);
        double vapour = fluid.ancillary("vapour-density").at(kelvin);
        for (int step = 0; step < MOST_STEPS; step++) {
            Derivatives l = Phases.residual(fluid, kelvin, liquid);
            Derivatives v = Phases.residual(fluid, kelvin, vapour);
            double pressureGap = liquid * rt * (1 + l.d) - vapour * rt * (1 + v.d);
            double gibbsGap = Phases.reducedGibbs(l, liquid) - Phases.reducedGibbs(v, vapour);
            double liquidSlope = rt * (1 + 2 * l.d + l.dd);
            double vapourSlope = rt * (1 + 2 * v.d + v.dd);
            // The Gibbs energy over RT changes with density by the pressure slope over (density RT).
            double a21 = liquidSlope / (liquid * rt);
            double a22 = -vapourSlope / (vapour * rt);
            double determinant = liquidSlope * a22 + vapourSlope * a21;
            double liquidStep = limited((pressureGap * a22 + vapourSlope * gibbsGap) / determinant, liquid);
            double vapourStep = limited((liquidSlope * gibbsGap - a21 * pressureGap) / determinant, vapour);
            liquid -= liquidStep;
            vapour -= vapourStep;
            // Near the critical point rounding keeps the last digits moving.
            double tolerance = step < USUAL_STEPS ? 1e-13 : 1e-10;
            if (Math.abs(liquidStep) < tolerance * liquid && Math.abs(vapourStep) < tolerance * vapour) {
                double pressure = Phases.pressure(fluid, kelvin, vapour);
                if (liquidSlope > 0 && vapourSlope > 0 && liquid > 1.001 * vapour && pressure > 0) {
                    return Optional.of(new Equilibrium(pressure, liquid, vapour));
                }
                break;
            }
        }
        return Optional.empty();
    }

    /**
     * The same equilibrium by a bracketed search for the pressure of equal Gibbs energies: slower, but cannot go
     * astray.
     */
    Equilibrium bracketed(double kelvin) {
        double estimate = fluid.ancillary("vapour-pressure").at(kelvin);
        double low = estimate / FIRST_BRACKET;
        while (gibbsGap(kelvin, low) < 0) {
            low /= FIRST_BRACKET;
        }
        double high = Math.min(estimate * FIRST_BRACKET, fluid.criticalPressure());
        while (high < fluid.criticalPressure() && gibbsGap(kelvin, high) > 0) {
            high = Math.min(high * FIRST_BRACKET, fluid.criticalPressure());
        }
        double pressure = Roots.find(p -> gibbsGap(kelvin, p), low, high, 1e-13);
        return new Equilibrium(
                pressure, Phases.liquidDensity(fluid, kelvin, pressure), Phases.vapourDensity(fluid, kelvin, pressure));
    }

    /** Liquid less vapour; where the pressure admits only one of them, only the sign is right. */
    private double gibbsGap(double kelvin, double pascals) {
        double liquid;
        double vapour;
        try {
            liquid = Phases.liquidDensity(fluid, kelvin, pascals);
        } catch (ArithmeticException onlyVapour) {
            return 1;
        }
        try {
            vapour = Phases.vapourDensity(fluid, kelvin, pascals);
        } catch (ArithmeticException onlyLiquid) {
            return -1;
        }
        return Phases.reducedGibbs(Phases.residual(fluid, kelvin, liquid), liquid)
                - Phases.reducedGibbs(Phases.residual(fluid, kelvin, vapour), vapour);
    }

    private static double limited(double step, double density) {
        double most = 0.3 * density;
        return Math.max(-most, Math.min(most, step));
    }
}
