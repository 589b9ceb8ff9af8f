package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The second way of each solver must find what the first one finds. */
class SolversTest {

    private final List<Refrigerant> all = Catalogue.standard().all();

    @Test
    @Tag("slow")
    void continuationFindsTheSameMixturePressuresAsTheDirectStart() {
        for (Refrigerant refrigerant : all) {
            if (refrigerant.model() instanceof MixtureSaturation mixture) {
                for (Side side : Side.values()) {
                    for (double share : new double[] {0, 0.1, 0.5, 0.9, 1}) {
                        double kelvin =
                                200 + share * (refrigerant.highestTemperature().kelvin() - 200);
                        assertThat(mixture.pressureByContinuation(side, kelvin) / mixture.pressure(side, kelvin))
                                .as("%s %s at %s K", refrigerant, side, kelvin)
                                .isCloseTo(1, within(1e-9));
                    }
                }
            }
        }
    }

    @Test
    @Tag("slow")
    void continuationFindsTheSameMixtureTemperaturesAsTheDirectStart() {
        for (Refrigerant refrigerant : all) {
            if (refrigerant.model() instanceof MixtureSaturation mixture) {
                for (Side side : Side.values()) {
                    for (double share : new double[] {0, 0.1, 0.5, 0.9, 1}) {
                        double pascals = refrigerant.lowestPressure(side).pascals()
                                * Math.pow(
                                        refrigerant.highestPressure(side).pascals()
                                                / refrigerant
                                                        .lowestPressure(side)
                                                        .pascals(),
                                        share);
                        assertThat(mixture.temperatureByContinuation(side, pascals))
                                .as("%s %s at %s Pa", refrigerant, side, pascals)
                                .isCloseTo(mixture.temperature(side, pascals), within(1e-7));
                    }
                }
            }
        }
    }

    @Test
    void theBracketedSearchFindsTheSameEquilibriumAsNewtonsMethod() {
        for (Refrigerant refrigerant : all) {
            if (refrigerant.model() instanceof PureSaturation pure) {
                for (double share : new double[] {0, 0.1, 0.5, 0.9, 1}) {
                    double kelvin =
                            200 + share * (refrigerant.highestTemperature().kelvin() - 200);
                    PureSaturation.Equilibrium newton = pure.newton(kelvin).orElseThrow();
                    PureSaturation.Equilibrium bracketed = pure.bracketed(kelvin);
                    assertThat(bracketed.pressure() / newton.pressure())
                            .as("%s at %s K", refrigerant, kelvin)
                            .isCloseTo(1, within(1e-9));
                    assertThat(bracketed.liquidDensity() / newton.liquidDensity())
                            .isCloseTo(1, within(1e-8));
                    assertThat(bracketed.vapourDensity() / newton.vapourDensity())
                            .isCloseTo(1, within(1e-8));
                }
            }
        }
    }

    @Test
    void theBracketedSearchFindsTheSameTemperatureAsNewtonsMethod() {
        for (Refrigerant refrigerant : all) {
            if (refrigerant.model() instanceof PureSaturation pure) {
                for (double kelvin : new double[] {215, 280, 320}) {
                    double pascals = pure.pressure(Side.DEW, kelvin);
                    assertThat(pure.newtonTemperature(pascals).orElseThrow())
                            .as("%s at %s K", refrigerant, kelvin)
                            .isCloseTo(kelvin, within(1e-8));
                    assertThat(pure.bracketedTemperature(pascals)).isCloseTo(kelvin, within(1e-8));
                }
            }
        }
    }

    @Test
    void bothPhasesOfAPureFluidShareFugacityAndPressure() {
        for (Refrigerant refrigerant : all) {
            if (refrigerant.model() instanceof PureSaturation pure) {
                PureFluid fluid = pure.fluid();
                for (double kelvin = 200;
                        kelvin <= refrigerant.highestTemperature().kelvin();
                        kelvin += 7) {
                    PureSaturation.Equilibrium at = pure.equilibrium(kelvin);
                    Derivatives liquid = Phases.residual(fluid, kelvin, at.liquidDensity());
                    Derivatives vapour = Phases.residual(fluid, kelvin, at.vapourDensity());
                    assertThat(Phases.reducedGibbs(liquid, at.liquidDensity()))
                            .as("%s at %s K", refrigerant, kelvin)
                            .isCloseTo(Phases.reducedGibbs(vapour, at.vapourDensity()), within(1e-9));
                }
            }
        }
    }

    @Test
    void noVapourIsFoundAboveTheCondensingPressure() {
        PureFluid fluid = EquationFacts.load().pureFluid("R-22");

        assertThatThrownBy(() -> Phases.vapourDensity(fluid, 300, 3e6))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("300.0 K");
    }

    @Test
    void noLiquidIsFoundFarBelowTheBoilingPressure() {
        PureFluid fluid = EquationFacts.load().pureFluid("R-22");

        assertThatThrownBy(() -> Phases.liquidDensity(fluid, 360, 1e5))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("360.0 K");
    }

    @Test
    void aMixtureWithoutPublishedPairParametersIsRefused() {
        EquationLibrary library = EquationFacts.load();
        List<PureFluid> components = List.of(library.pureFluid("R-22"), library.pureFluid("R-125"));

        assertThatThrownBy(() -> new MixtureModel(components, library))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no published mixture parameters for R-22 with R-125");
    }

    @Test
    void exchangingThePairInvertsTheBetas() {
        EquationLibrary library = EquationFacts.load();
        PairParameters there = library.pair("R-32", "R-1234yf").orElseThrow();
        PairParameters back = library.pair("R-1234yf", "R-32").orElseThrow();

        assertThat(back.betaT() * there.betaT()).isCloseTo(1, within(1e-15));
        assertThat(back.betaV() * there.betaV()).isCloseTo(1, within(1e-15));
        assertThat(back.gammaT()).isEqualTo(there.gammaT());
        assertThat(back.first()).isEqualTo(there.second());
    }
}
