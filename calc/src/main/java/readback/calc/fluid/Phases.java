package readback.calc.fluid;

/** Single-phase densities and properties of a {@link HelmholtzFluid}. Molar SI units throughout. */
final class Phases {

    private static final int MOST_STEPS = 400;
    private static final double MARCH = 1.05;

    private Phases() {}

    /** The residual derivatives at a temperature (K) and density (mol/m³). */
    static Derivatives residual(HelmholtzFluid fluid, double kelvin, double density) {
        Derivatives sum = new Derivatives();
        fluid.addResidual(fluid.reducingTemperature() / kelvin, density / fluid.reducingDensity(), sum);
        return sum;
    }

    /** Pa. */
    static double pressure(HelmholtzFluid fluid, double kelvin, double density) {
        return density * fluid.gasConstant() * kelvin * (1 + residual(fluid, kelvin, density).d);
    }

    /**
     * The density of the vapour in mol/m³: the first density that reaches the pressure when coming from the dilute gas.
     *
     * @throws ArithmeticException if the vapour becomes unstable before it reaches the pressure
     */
    static double vapourDensity(HelmholtzFluid fluid, double kelvin, double pascals) {
        double rt = fluid.gasConstant() * kelvin;
        double low = 0;
        double high = pascals / rt;
        for (int step = 0; step < MOST_STEPS; step++) {
            Derivatives at = residual(fluid, kelvin, high);
            if (high * rt * (1 + at.d) >= pascals) {
                return between(fluid, kelvin, pascals, low, high);
            }
            if (1 + 2 * at.d + at.dd <= 0) {
                break;
            }
            low = high;
            high *= MARCH;
        }
        throw new ArithmeticException("no vapour at " + kelvin + " K and " + pascals + " Pa");
    }

    /**
     * The density of the liquid in mol/m³: the first density that falls to the pressure when coming from the dense
     * liquid.
     *
     * @throws ArithmeticException if the liquid becomes unstable before it falls to the pressure
     */
    static double liquidDensity(HelmholtzFluid fluid, double kelvin, double pascals) {
        double rt = fluid.gasConstant() * kelvin;
        double high = fluid.liquidDensityEstimate(kelvin);
        for (int step = 0; high * rt * (1 + residual(fluid, kelvin, high).d) < pascals; step++) {
            if (step == MOST_STEPS) {
                throw new ArithmeticException("no liquid at " + kelvin + " K and " + pascals + " Pa");
            }
            high *= 1.01;
        }
        double low = high;
        for (int step = 0; step < MOST_STEPS; step++) {
            low = high / 1.01;
            Derivatives at = residual(fluid, kelvin, low);
            if (low * rt * (1 + at.d) <= pascals) {
                return between(fluid, kelvin, pascals, low, high);
            }
            if (1 + 2 * at.d + at.dd <= 0) {
                break;
            }
            high = low;
        }
        throw new ArithmeticException("no liquid at " + kelvin + " K and " + pascals + " Pa");
    }

    /** Newton's method on the density, thrown back to bisection whenever it leaves the bracket. */
    private static double between(HelmholtzFluid fluid, double kelvin, double pascals, double low, double high) {
        double rt = fluid.gasConstant() * kelvin;
        double a = low;
        double b = high;
        double density = b;
        for (int step = 0; step < MOST_STEPS; step++) {
            Derivatives at = residual(fluid, kelvin, density);
            double excess = density * rt * (1 + at.d) - pascals;
            if (excess > 0) {
                b = density;
            } else {
                a = density;
            }
            double next = density - excess / (rt * (1 + 2 * at.d + at.dd));
            if (!(next > a && next < b)) {
                next = 0.5 * (a + b);
            }
            if (Math.abs(next - density) <= 1e-15 * density) {
                return next;
            }
            density = next;
        }
        return density;
    }

    /** ln of the fugacity coefficient times pressure over RT, up to a function of temperature: equal in both phases. */
    static double reducedGibbs(Derivatives residual, double density) {
        return Math.log(density) + residual.a + residual.d;
    }
}
