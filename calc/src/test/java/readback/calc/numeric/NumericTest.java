package readback.calc.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NumericTest {

    @Test
    void rootsAreFoundInsideTheirBracket() {
        assertThat(Roots.find(x -> x * x * x - 2, 0, 50, 1e-14)).isCloseTo(Math.cbrt(2), within(1e-13));
        assertThat(Roots.find(x -> 2 - x * x * x, 50, 0, 1e-14)).isCloseTo(Math.cbrt(2), within(1e-13));
        assertThat(Roots.find(Math::cos, 1, 2, 1e-14)).isCloseTo(Math.PI / 2, within(1e-13));
        assertThat(Roots.find(x -> Math.pow(x, 9), -1, 3, 1e-14)).isCloseTo(0, within(1e-9));
    }

    @Test
    void anEndThatIsARootIsReturnedAsItIs() {
        assertThat(Roots.find(x -> x - 3, 3, 4, 1e-14)).isEqualTo(3);
        assertThat(Roots.find(x -> x - 4, 3, 4, 1e-14)).isEqualTo(4);
    }

    @Test
    void aBracketWithoutAChangeOfSignIsRefused() {
        assertThatThrownBy(() -> Roots.find(x -> x * x + 1, -1, 1, 1e-14))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no change of sign between -1.0 (2.0) and 1.0 (2.0)");
    }

    @Test
    void theFunctionIsNeverAskedOutsideTheBracket() {
        double root = Roots.find(
                x -> {
                    assertThat(x).isBetween(0.0, 10.0);
                    return Math.exp(x) - 100;
                },
                0,
                10,
                1e-12);

        assertThat(root).isCloseTo(Math.log(100), within(1e-10));
    }

    @Test
    void linearSystemsAreSolvedWithPivoting() {
        double[] right = {5, -2, 9};

        LinearSystem.solve(new double[][] {{0, 2, 1}, {1, -2, -3}, {-1, 1, 2}}, right);

        assertThat(2 * right[1] + right[2]).isCloseTo(5, within(1e-12));
        assertThat(right[0] - 2 * right[1] - 3 * right[2]).isCloseTo(-2, within(1e-12));
        assertThat(-right[0] + right[1] + 2 * right[2]).isCloseTo(9, within(1e-12));
    }

    @Test
    void aSingularSystemIsRefused() {
        assertThatThrownBy(() -> LinearSystem.solve(new double[][] {{1, 2}, {2, 4}}, new double[] {1, 2}))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("singular matrix");
    }
}
