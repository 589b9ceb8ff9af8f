package readback.calc.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import readback.calc.circuit.TubeSize.Temper;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.FluidState;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;

class CircuitTest {

    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    private static Refrigerant refrigerant(String name) {
        return ((Lookup.Found) Catalogue.standard().find(name)).refrigerant();
    }

    @ParameterizedTest
    @CsvSource({
        // Moran and Shapiro, table A-7: R-22, kJ/kg
        "-50, 239.45",
        "-20, 219.92",
        "0, 204.80",
    })
    void latentHeatMeetsTheTable(double celsius, double kilojoules) {
        Refrigerant r22 = refrigerant("R-22");
        AbsolutePressure pressure = r22.dewPressure(Temperature.celsius(celsius));

        double latent = r22.saturatedVapour(r22.dewTemperature(pressure)).enthalpy()
                - r22.saturatedLiquid(r22.bubbleTemperature(pressure)).enthalpy();

        assertThat(latent / 1000 / kilojoules).isCloseTo(1, within(0.0013));
    }

    @ParameterizedTest
    @CsvSource({
        // ASTM B280, cross-sectional area of the bore in square inches
        "ONE_QUARTER, ANNEALED, 0.0284",
        "FIVE_SIXTEENTHS, ANNEALED, 0.0483",
        "THREE_EIGHTHS, ANNEALED, 0.076",
        "THREE_EIGHTHS, DRAWN, 0.078",
        "ONE_HALF, ANNEALED, 0.149",
        "ONE_HALF, DRAWN, 0.145",
        "FIVE_EIGHTHS, ANNEALED, 0.242",
        "FIVE_EIGHTHS, DRAWN, 0.233",
        "THREE_QUARTERS, ANNEALED, 0.363",
        "THREE_QUARTERS, DRAWN, 0.348",
        "SEVEN_EIGHTHS, ANNEALED, 0.484",
        "SEVEN_EIGHTHS, DRAWN, 0.484",
        "ONE_AND_ONE_EIGHTH, DRAWN, 0.825",
        "ONE_AND_THREE_EIGHTHS, ANNEALED, 1.26",
    })
    void boresHaveTheirStandardArea(TubeSize size, Temper temper, double squareInches) {
        assertThat(size.volumePerMetre(temper) / SQUARE_INCH / squareInches).isCloseTo(1, within(0.005));
    }

    @ParameterizedTest
    @EnumSource(TubeSize.class)
    void everySizeIsFoundByItsOutsideDiameter(TubeSize size) {
        assertThat(TubeSize.ofOutsideDiameter(size.outsideDiameter())).contains(size);
        assertThat(TubeSize.ofOutsideDiameter(size.outsideDiameter() + 0.0002)).contains(size);
        assertThat(TubeSize.ofOutsideDiameter(size.outsideDiameter() + 0.0003)).isEmpty();
    }

    @Test
    void threeEighthsOfAnInchAreNineAndAHalfMillimetres() {
        assertThat(TubeSize.THREE_EIGHTHS.outsideDiameter()).isCloseTo(0.009525, within(1e-12));
        assertThat(TubeSize.ofOutsideDiameter(0.0158)).contains(TubeSize.FIVE_EIGHTHS);
    }

    @ParameterizedTest
    @CsvSource({
        // 7 to 11 in the trade: common practice, no source. It holds for R-22 and R-407C at 40 °F evaporating and 10 °F
        // superheat; R-410A vapour is denser, and comes to 7 only with a suction colder than about 25 °F.
        "R-22, 40, 9, 11",
        "R-407C, 40, 8, 11",
        "R-410A, 20, 7, 11",
        "R-410A, 40, 5, 7",
    })
    void aLiquidLineHoldsManyTimesWhatTheSuctionLineHolds(String name, double evaporating, double least, double most) {
        Refrigerant refrigerant = refrigerant(name);

        double ratio = LineSet.massPerMetre(TubeSize.THREE_EIGHTHS, liquid(refrigerant))
                / LineSet.massPerMetre(TubeSize.THREE_QUARTERS, suction(refrigerant, evaporating));

        assertThat(ratio).isBetween(least, most);
    }

    private static FluidState liquid(Refrigerant refrigerant) {
        AbsolutePressure high = refrigerant.bubblePressure(Temperature.fahrenheit(105));
        return refrigerant.subcooledLiquid(Temperature.fahrenheit(95), high);
    }

    private static FluidState suction(Refrigerant refrigerant, double evaporating) {
        AbsolutePressure low = refrigerant.dewPressure(Temperature.fahrenheit(evaporating));
        return refrigerant.superheatedVapour(Temperature.fahrenheit(evaporating + 10), low);
    }

    @Test
    void aFootOfThreeEighthsLiquidLineHoldsAboutSixTenthsOfAnOunce() {
        // 0.6 oz/ft: common practice, no source; R-22 and R-410A at 95 °F.
        double ounce = 0.028349523125;
        double foot = 0.3048;

        assertThat(foot * LineSet.massPerMetre(TubeSize.THREE_EIGHTHS, liquid(refrigerant("R-22"))) / ounce)
                .isCloseTo(0.61, within(0.03));
        assertThat(foot * LineSet.massPerMetre(TubeSize.THREE_EIGHTHS, liquid(refrigerant("R-410A"))) / ounce)
                .isCloseTo(0.54, within(0.03));
    }

    @Test
    void aLineLengthThatCannotBeIsRefused() {
        for (double metres : new double[] {-0.1, 200.1, Double.NaN}) {
            assertThatThrownBy(() -> new LineSet(TubeSize.THREE_EIGHTHS, TubeSize.THREE_QUARTERS, metres))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("line length");
        }
        assertThat(new LineSet(TubeSize.ONE_QUARTER, TubeSize.ONE_HALF, 0).metres())
                .isZero();
        assertThat(new LineSet(TubeSize.ONE_QUARTER, TubeSize.ONE_HALF, 200).metres())
                .isEqualTo(200);
    }
}
