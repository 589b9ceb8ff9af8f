package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class AncillaryTest {

    private final EquationLibrary library = EquationFacts.load();

    @Test
    void theThreeFormsFollowTheirDefinition() {
        double[] n = {-2, 3};
        double[] t = {1, 2};
        // theta is 0.25 at 300 K, the sum -2 (0.25) + 3 (0.0625) = -0.3125.
        assertThat(ancillary(Ancillary.Form.EXP, n, t)).isCloseTo(7 * Math.exp(-0.3125), within(1e-12));
        assertThat(ancillary(Ancillary.Form.EXP_SCALED, n, t))
                .isCloseTo(7 * Math.exp(-0.3125 * 400 / 300), within(1e-12));
        assertThat(ancillary(Ancillary.Form.ONE_PLUS, n, t)).isCloseTo(7 * 0.6875, within(1e-12));
    }

    private static double ancillary(Ancillary.Form form, double[] n, double[] t) {
        return new Ancillary(form, 400, 7, n, t).at(300);
    }

    @Test
    void theInverseOfAVapourPressureIsItsTemperature() {
        Ancillary pressure = library.pureFluid("R-32").ancillary("vapour-pressure");

        assertThat(pressure.inverse(pressure.at(281.7), 200, 350)).isCloseTo(281.7, within(1e-9));
    }

    @Test
    void everyAncillaryStartsTheSolversNearTheEquationOfState() {
        for (PureFluid fluid : library.pure().values()) {
            PureSaturation saturation = new PureSaturation(fluid);
            for (double share : new double[] {0.6, 0.75, 0.9}) {
                double kelvin = share * fluid.criticalTemperature();
                PureSaturation.Equilibrium at = saturation.equilibrium(kelvin);
                near(fluid, "vapour-pressure", kelvin, at.pressure(), 0.005);
                near(fluid, "liquid-density", kelvin, at.liquidDensity(), 0.01);
                near(fluid, "vapour-density", kelvin, at.vapourDensity(), 0.03);
            }
        }
    }

    private static void near(PureFluid fluid, String what, double kelvin, double value, double share) {
        assertThat(fluid.ancillary(what).at(kelvin) / value)
                .as("%s of %s at %s K", what, fluid.name(), kelvin)
                .isCloseTo(1, within(share));
    }
}
