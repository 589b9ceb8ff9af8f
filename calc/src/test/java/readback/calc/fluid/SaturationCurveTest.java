package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SaturationCurveTest {

    @Test
    void neighbouringPiecesMeet() {
        SaturationCurve curve = SaturationCurve.fit(Math::exp, 0, 3, 3, 4);

        for (double joint : new double[] {1, 2}) {
            assertThat(curve.at(joint - 1e-13)).isCloseTo(curve.at(joint), within(1e-11));
            assertThat(curve.at(joint)).isCloseTo(Math.exp(joint), within(1e-12));
        }
    }

    @Test
    void aSeriesOfEnoughTermsReproducesAPolynomial() {
        SaturationCurve curve = SaturationCurve.fit(x -> 1 + x * (2 + x * (3 - x)), -2, 5, 2, 3);

        for (double x : new double[] {-2, -1.3, 0, 1.5, 1.7, 4.9, 5}) {
            assertThat(curve.at(x)).isCloseTo(1 + x * (2 + x * (3 - x)), within(1e-12));
        }
        assertThat(curve.coefficients()).hasSize(8);
    }

    @Test
    void outsideItsRangeTheEndPiecesGoOn() {
        SaturationCurve curve = SaturationCurve.fit(x -> x * x, 1, 3, 2, 2);

        assertThat(curve.at(0.9)).isCloseTo(0.81, within(1e-12));
        assertThat(curve.at(3.2)).isCloseTo(10.24, within(1e-12));
        assertThat(curve.low()).isEqualTo(1);
        assertThat(curve.high()).isEqualTo(3);
        assertThat(curve.pieces()).isEqualTo(2);
    }

    @Test
    void theErrorFallsWithTheNumberOfTerms() {
        double before = 1;
        for (int degree = 2; degree <= 12; degree += 2) {
            SaturationCurve curve = SaturationCurve.fit(Math::log, 1, 5, 2, degree);
            double worst = 0;
            for (double x = 1; x <= 5; x += 0.013) {
                worst = Math.max(worst, Math.abs(curve.at(x) - Math.log(x)));
            }
            assertThat(worst).as("degree %s", degree).isLessThan(before / 5);
            before = worst;
        }
    }

    @Test
    void theCurvesOfOneSideAreFittedToTheEquationOfState() {
        Refrigerant r410a = Catalogue.standard().all().get(0);
        SaturationModel model = r410a.model();

        SaturationCurves curves = SaturationCurves.fit(model, Side.DEW, 344.494);

        for (double kelvin = 200.5; kelvin < 339; kelvin += 3.7) {
            double pascals = model.pressure(Side.DEW, kelvin);
            assertThat(curves.temperature(pascals)).isCloseTo(kelvin, within(1e-5));
            assertThat(curves.pressure(kelvin) / pascals).isCloseTo(1, within(1e-6));
        }
        assertThat(curves.lnPressure().low()).isCloseTo(1 / (0.985 * 344.494), within(1e-12));
        assertThat(curves.lnPressure().high()).isEqualTo(1.0 / 200);
    }
}
