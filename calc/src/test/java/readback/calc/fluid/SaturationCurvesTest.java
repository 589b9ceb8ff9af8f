package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The fast path against the equations of state it was fitted to. */
class SaturationCurvesTest {

    /** The promise is 0.001 K; the curves keep a twentieth of it. */
    private static final double KELVIN = 5e-5 + 1e-6;

    private static final double STEP = 0.413;

    private final List<Refrigerant> all = Catalogue.standard().all();

    /** The equation of state, solved once for all tests: every refrigerant, both sides, every 0.413 K. */
    private static final List<Point> POINTS = solve();

    private record Point(Refrigerant refrigerant, Side side, double kelvin, double pascals) {

        SaturationCurves curves() {
            return refrigerant.curves(side);
        }
    }

    private static List<Point> solve() {
        List<Point> points = new ArrayList<>();
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            for (Side side : Side.values()) {
                for (double kelvin = 200; kelvin <= highest(refrigerant); kelvin += STEP) {
                    points.add(new Point(
                            refrigerant, side, kelvin, refrigerant.model().pressure(side, kelvin)));
                }
            }
        }
        return points;
    }

    @Test
    void temperaturesFollowTheEquationOfStateOverTheWholeRange() {
        for (Point point : POINTS) {
            assertThat(point.curves().temperature(point.pascals()))
                    .as("%s", point)
                    .isCloseTo(point.kelvin(), within(KELVIN));
        }
    }

    @Test
    void pressuresFollowTheEquationOfStateOverTheWholeRange() {
        for (Point point : POINTS) {
            assertThat(point.curves().pressure(point.kelvin()) / point.pascals())
                    .as("%s", point)
                    .isCloseTo(1, within(1e-6));
        }
    }

    @Test
    void pressureRisesWithTemperatureEverywhere() {
        for (int i = 1; i < POINTS.size(); i++) {
            Point colder = POINTS.get(i - 1);
            Point warmer = POINTS.get(i);
            if (colder.refrigerant() == warmer.refrigerant() && colder.side() == warmer.side()) {
                assertThat(warmer.pascals()).as("%s", warmer).isGreaterThan(colder.pascals());
            }
        }
    }

    @Test
    void thereAndBackAgainEndsWhereItBegan() {
        for (Refrigerant refrigerant : all) {
            for (Side side : Side.values()) {
                SaturationCurves curves = refrigerant.curves(side);
                for (double kelvin = 200.01; kelvin < highest(refrigerant); kelvin += 0.037) {
                    assertThat(curves.temperature(curves.pressure(kelvin)))
                            .as("%s %s", refrigerant, side)
                            .isCloseTo(kelvin, within(KELVIN));
                }
            }
        }
    }

    @Test
    void storedCurvesAreWhatTheEquationsOfStateGiveToday() {
        List<String> stored = CurveFactsText.lines("saturation.txt");
        List<String> generated = CurveGenerator.lines();
        assertThat(generated).hasSameSizeAs(stored);
        for (int i = 0; i < stored.size(); i++) {
            String[] expected = stored.get(i).split(" ");
            String[] actual = generated.get(i).split(" ");
            assertThat(actual).hasSameSizeAs(expected);
            for (int j = 0; j < expected.length; j++) {
                if (number(expected[j])) {
                    // Another processor may round the last digits of a logarithm differently.
                    double value = Double.parseDouble(expected[j]);
                    assertThat(Double.parseDouble(actual[j]))
                            .as(stored.get(i))
                            .isCloseTo(value, within(1e-7 * Math.max(1, Math.abs(value))));
                } else {
                    assertThat(actual[j]).isEqualTo(expected[j]);
                }
            }
        }
    }

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
        assertThat(Arrays.stream(curve.coefficients()).count()).isEqualTo(8);
    }

    private static boolean number(String word) {
        return word.matches("-?[0-9.]+(E-?[0-9]+)?");
    }

    private static double highest(Refrigerant refrigerant) {
        return refrigerant.highestTemperature().kelvin();
    }
}
