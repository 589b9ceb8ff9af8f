package readback.calc.fluid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes {@code saturation.txt} anew from the equations of state. Run after any change of an equation, a refrigerant or
 * the shape of the curves:
 *
 * <pre>java -cp calc/target/classes:calc/target/test-classes readback.calc.fluid.CurveGenerator \
 *     calc/src/main/resources/readback/calc/fluid/saturation.txt</pre>
 */
final class CurveGenerator {

    private static final double ICE_POINT = 273.15;

    private CurveGenerator() {}

    public static void main(String[] arguments) throws IOException {
        Files.write(Path.of(arguments[0]), lines());
    }

    /** The whole file. */
    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("# Saturation curves fitted to the equations of state by CurveGenerator: do not edit.");
        EquationLibrary library = EquationFacts.load();
        for (RefrigerantFacts facts : CatalogueFacts.load().supported()) {
            SaturationModel model = RefrigerantBuilder.model(facts, library);
            MolarProperties reference =
                    MolarProperties.at(model.fluid(), ICE_POINT, model.density(Side.BUBBLE, ICE_POINT));
            lines.add(String.format(
                    Locale.ROOT,
                    "reference %s %.9f %.12f",
                    facts.designation(),
                    reference.enthalpy(),
                    reference.entropy()));
            for (Side side : Side.values()) {
                if (side == Side.BUBBLE || facts.kind() != RefrigerantFacts.Kind.PURE) {
                    SaturationCurves curves = SaturationCurves.fit(model, side, facts.criticalTemperature());
                    add(lines, facts.designation() + " " + side + " temperature", curves.temperature(), "%.10f");
                    add(lines, facts.designation() + " " + side + " ln-pressure", curves.lnPressure(), "%.12f");
                }
            }
        }
        return lines;
    }

    private static void add(List<String> lines, String name, SaturationCurve curve, String format) {
        lines.add("curve " + name + " " + curve.low() + " " + curve.high());
        double[] coefficients = curve.coefficients();
        int terms = coefficients.length / curve.pieces();
        for (int piece = 0; piece < curve.pieces(); piece++) {
            StringBuilder line = new StringBuilder("piece");
            for (int j = 0; j < terms; j++) {
                line.append(' ').append(number(format, coefficients[piece * terms + j]));
            }
            lines.add(line.toString());
        }
    }

    /** Without trailing zeros, which would only be read in vain. */
    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value).replaceAll("\\.?0+$", "");
        return text.equals("-0") ? "0" : text;
    }
}
