package readback.calc.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.ReferenceTable.Row;

/** Against printed values of papers and tables; the resource names each source and why any tolerance is wide. */
class PublishedValuesTest {

    private static final double ICE_POINT = 273.15;

    /** The papers of the equations themselves: nothing but print rounding lies between. */
    private static final List<String> OWN_PAPERS =
            List.of("TRB94", "TRY97", "L03", "LA22", "LJ05", "LMW09", "TL16", "LJ00");

    private final Models models = new Models();
    private final List<Row> rows =
            ReferenceTable.read("published-check-points.csv").rows();

    @Test
    void meetsTheCheckValuesOfThePapersWithinTheirPrintRounding() {
        List<Row> own = rows.stream().filter(PublishedValuesTest::ownPaper).toList();

        assertThat(own).hasSizeGreaterThan(130).allSatisfy(this::meets);
    }

    @Test
    void meetsTheValuesOfOtherSourcesWithinTheSpreadOfTheirEquations() {
        List<Row> others = rows.stream().filter(row -> !ownPaper(row)).toList();

        assertThat(others).hasSizeGreaterThan(60).allSatisfy(this::meets);
    }

    private static boolean ownPaper(Row row) {
        return OWN_PAPERS.contains(row.text("source")) && !row.text("model").equals("mixture");
    }

    private void meets(Row row) {
        assertThat(computed(row))
                .as("%s", row)
                .isCloseTo(row.number("published"), within(row.number("tolerance") * (1 + 1e-6)));
    }

    private double computed(Row row) {
        SaturationModel model = models.of(row.text("refrigerant"), row.text("model"));
        String quantity = row.text("quantity");
        return switch (quantity) {
            case "pBubble" -> model.pressure(Side.BUBBLE, row.number("T"));
            case "pDew" -> model.pressure(Side.DEW, row.number("T"));
            case "tBubble" -> model.temperature(Side.BUBBLE, row.number("p"));
            case "tDew" -> model.temperature(Side.DEW, row.number("p"));
            case "latentHeat" ->
                saturated(model, Side.DEW, row).enthalpy()
                        - saturated(model, Side.BUBBLE, row).enthalpy();
            default -> ofOnePhase(quantity, model, row);
        };
    }

    private static double ofOnePhase(String quantity, SaturationModel model, Row row) {
        if (quantity.endsWith("Liquid") || quantity.endsWith("Vapour")) {
            Side side = quantity.endsWith("Liquid") ? Side.BUBBLE : Side.DEW;
            return property(quantity.replaceAll("Liquid|Vapour", ""), model, saturated(model, side, row));
        }
        if (!row.text("molarDensity").isEmpty()) {
            return property(quantity, model, new Point(model, row.number("T"), row.number("molarDensity")));
        }
        double kelvin = row.number("T");
        double pascals = row.number("p");
        double density = pascals > model.pressure(Side.DEW, Math.min(kelvin, 345))
                ? Phases.liquidDensity(model.fluid(), kelvin, pascals)
                : Phases.vapourDensity(model.fluid(), kelvin, pascals);
        return property(quantity, model, new Point(model, kelvin, density));
    }

    private static double property(String quantity, SaturationModel model, Point at) {
        double molarMass = model.fluid().molarMass();
        return switch (quantity) {
            case "p" -> at.properties().pressure();
            case "rho" -> at.density() * molarMass;
            case "molarRho" -> at.density();
            case "v" -> 1 / (at.density() * molarMass);
            case "h" -> 200_000 + at.enthalpy();
            case "s" -> 1_000 + (at.properties().entropy() - ice(model).entropy()) / molarMass;
            case "cp" -> at.properties().heatCapacity() / molarMass;
            case "molarCp" -> at.properties().heatCapacity();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static Point saturated(SaturationModel model, Side side, Row row) {
        return new Point(model, row.number("T"), model.density(side, row.number("T")));
    }

    private static MolarProperties ice(SaturationModel model) {
        return MolarProperties.at(model.fluid(), ICE_POINT, model.density(Side.BUBBLE, ICE_POINT));
    }

    /** A state by temperature (K) and density (mol/m³). */
    private record Point(SaturationModel model, double kelvin, double density) {

        MolarProperties properties() {
            return MolarProperties.at(model.fluid(), kelvin, density);
        }

        /** J/kg above saturated liquid at 0 °C. */
        double enthalpy() {
            return (properties().enthalpy() - ice(model).enthalpy())
                    / model.fluid().molarMass();
        }
    }
}
