package readback.calc.fluid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import readback.calc.fluid.FactLines.Line;

/**
 * Reads and writes {@code saturation.txt}, the curves fitted to the equations of state.
 *
 * <p>{@code reference designation enthalpy entropy} are molar, of saturated liquid at 0 °C by the equation's own
 * constants. {@code curve designation side function low high} is followed by one {@code piece} line for each piece.
 */
final class CurveFacts {

    private final Map<String, SaturationCurve> curves = new HashMap<>();
    private final Map<String, MolarProperties> references = new HashMap<>();
    private final List<double[]> pieces = new ArrayList<>();
    private @Nullable Line open;

    private CurveFacts() {}

    static CurveFacts load() {
        return parse(FactLines.read("saturation.txt"));
    }

    static CurveFacts parse(List<Line> lines) {
        CurveFacts facts = new CurveFacts();
        for (Line line : lines) {
            if (line.keyword().equals("piece")) {
                double[] piece = new double[line.words().size()];
                for (int i = 0; i < piece.length; i++) {
                    piece[i] = line.number(i);
                }
                facts.pieces.add(piece);
            } else {
                facts.close();
                if (line.keyword().equals("curve")) {
                    facts.open = line;
                } else {
                    facts.references.put(
                            line.words().get(0),
                            new MolarProperties(Double.NaN, line.number(1), line.number(2), Double.NaN, Double.NaN));
                }
            }
        }
        facts.close();
        return facts;
    }

    /** Both curves of one side. */
    SaturationCurves curves(String designation, Side side) {
        return new SaturationCurves(curve(designation, side, "temperature"), curve(designation, side, "ln-pressure"));
    }

    /** Enthalpy and entropy of saturated liquid at 0 °C; the other properties are not kept. */
    MolarProperties reference(String designation) {
        MolarProperties found = references.get(designation);
        if (found == null) {
            throw new IllegalStateException("saturation.txt lacks the reference state of " + designation);
        }
        return found;
    }

    private SaturationCurve curve(String designation, Side side, String function) {
        String name = designation + " " + side + " " + function;
        SaturationCurve found = curves.get(name);
        if (found == null) {
            throw new IllegalStateException("saturation.txt lacks " + name);
        }
        return found;
    }

    private void close() {
        if (open != null) {
            int terms = pieces.get(0).length;
            double[] coefficients = new double[pieces.size() * terms];
            for (int i = 0; i < pieces.size(); i++) {
                System.arraycopy(pieces.get(i), 0, coefficients, i * terms, terms);
            }
            SaturationCurve curve = new SaturationCurve(open.number(3), open.number(4), pieces.size(), coefficients);
            List<String> words = open.words();
            curves.put(words.get(0) + " " + words.get(1) + " " + words.get(2), curve);
            pieces.clear();
            open = null;
        }
    }
}
