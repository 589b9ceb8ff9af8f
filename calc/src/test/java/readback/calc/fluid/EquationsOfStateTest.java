package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.ReferenceTable.Row;
import readback.calc.quantity.Temperature;

/** Against a second, independent evaluation of the same equations; the tables name their source. */
@Tag("slow")
class EquationsOfStateTest {

    private static final double RELATIVE = 1e-6;
    private static final double ICE_POINT = 273.15;

    private final Models models = new Models();

    @Test
    void saturationPressuresAgreeAtEveryTemperature() {
        for (Row row : ReferenceTable.read("saturation-by-temperature.csv").rows()) {
            SaturationModel model = model(row);
            same(row, "pBubble", model.pressure(Side.BUBBLE, kelvin(row)));
            same(row, "pDew", model.pressure(Side.DEW, kelvin(row)));
        }
    }

    @Test
    void saturationTemperaturesAgreeAtEveryPressure() {
        for (Row row : ReferenceTable.read("saturation-by-pressure.csv").rows()) {
            SaturationModel model = model(row);
            same(row, "tBubble", model.temperature(Side.BUBBLE, row.number("p")));
            same(row, "tDew", model.temperature(Side.DEW, row.number("p")));
        }
    }

    @Test
    void saturatedPhasesAgreeInDensityHeatCapacityEnthalpyAndEntropy() {
        for (Row row : ReferenceTable.read("saturation-by-temperature.csv").rows()) {
            SaturationModel model = model(row);
            double kelvin = kelvin(row);
            agree(row, model, kelvin, model.density(Side.BUBBLE, kelvin), "Liquid");
            agree(row, model, kelvin, model.density(Side.DEW, kelvin), "Vapour");
        }
    }

    @Test
    void superheatedVapourAndSubcooledLiquidAgree() {
        for (Row row : ReferenceTable.read("single-phase.csv").rows()) {
            SaturationModel model = model(row);
            double kelvin = kelvin(row);
            double density = row.text("region").equals("subcooled_liquid")
                    ? Phases.liquidDensity(model.fluid(), kelvin, row.number("p"))
                    : Phases.vapourDensity(model.fluid(), kelvin, row.number("p"));
            agree(row, model, kelvin, density, "");
        }
    }

    private void agree(Row row, SaturationModel model, double kelvin, double density, String phase) {
        double molarMass = model.fluid().molarMass();
        MolarProperties at = MolarProperties.at(model.fluid(), kelvin, density);
        MolarProperties ice = MolarProperties.at(model.fluid(), ICE_POINT, model.density(Side.BUBBLE, ICE_POINT));
        same(row, "rho" + phase, density * molarMass);
        same(row, "cp" + phase, at.heatCapacity() / molarMass);
        same(row, "h" + phase, (at.enthalpy() - ice.enthalpy()) / molarMass + 200_000);
        same(row, "s" + phase, (at.entropy() - ice.entropy()) / molarMass + 1_000);
    }

    private static double kelvin(Row row) {
        return Temperature.fahrenheit(row.number("fahrenheit")).kelvin();
    }

    private SaturationModel model(Row row) {
        return models.of(row.text("refrigerant"), row.text("model"));
    }

    private static void same(Row row, String column, double computed) {
        double expected = row.number(column);
        assertThat(computed).as("%s in %s", column, row).isCloseTo(expected, within(RELATIVE * Math.abs(expected)));
    }
}
