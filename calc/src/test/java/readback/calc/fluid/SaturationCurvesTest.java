package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The fast path against the equations of state it was fitted to. */
@Tag("slow")
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

    private static boolean number(String word) {
        return word.matches("-?[0-9.]+(E-?[0-9]+)?");
    }

    private static double highest(Refrigerant refrigerant) {
        return refrigerant.highestTemperature().kelvin();
    }
}
