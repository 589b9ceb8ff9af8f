package readback.calc.fluid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import readback.calc.fluid.FactLines.Line;

/** Reads {@code equations.txt}; the file's own header describes its lines. Used once by one thread. */
final class EquationFacts {

    private final Map<String, PureFluid> pure = new LinkedHashMap<>();
    private final Map<String, PureFluid> pseudoPure = new LinkedHashMap<>();
    private final Map<String, ResidualTerms.Builder> departures = new HashMap<>();
    private final List<PairParameters> pairs = new ArrayList<>();
    private final Map<String, Paper> papers = new LinkedHashMap<>();
    private ResidualTerms.Builder terms = new ResidualTerms.Builder();
    private @Nullable FluidLines open;

    private EquationFacts() {}

    /** All equations in the file. */
    static EquationLibrary load() {
        return parse(FactLines.read("equations.txt"));
    }

    /** @throws IllegalStateException if the lines make no sense */
    static EquationLibrary parse(List<Line> lines) {
        EquationFacts facts = new EquationFacts();
        for (Line line : lines) {
            facts.accept(line);
        }
        facts.close();
        return new EquationLibrary(
                Map.copyOf(facts.pure),
                Map.copyOf(facts.pseudoPure),
                List.copyOf(facts.pairs),
                Map.copyOf(facts.papers));
    }

    private void accept(Line line) {
        switch (line.keyword()) {
            case "paper" -> {
                if (open == null) {
                    paper(line.fields());
                } else {
                    open.accept(line);
                }
            }
            case "fluid", "pseudo-pure" -> {
                close();
                terms = new ResidualTerms.Builder();
                open = new FluidLines(line.rest(), line.keyword().equals("pseudo-pure"), terms);
            }
            case "departure" -> {
                close();
                terms = new ResidualTerms.Builder();
                departures.put(line.words().get(0), terms);
            }
            case "pair" -> {
                close();
                pair(line);
            }
            case "power" -> terms.power(line.number(0), line.number(1), line.number(2), (int) line.number(3));
            case "gaussian" ->
                terms.gaussian(
                        line.number(0),
                        line.number(1),
                        line.number(2),
                        line.number(3),
                        line.number(4),
                        line.number(5),
                        line.number(6));
            case "double-exponential" ->
                terms.doubleExponential(
                        line.number(0), line.number(1), line.number(2), (int) line.number(3), line.number(4));
            default -> {
                if (open == null) {
                    throw new IllegalStateException("equations.txt: unexpected line " + line);
                }
                open.accept(line);
            }
        }
    }

    private void close() {
        if (open != null) {
            PureFluid fluid = open.build();
            (fluid.pseudoPure() ? pseudoPure : pure).put(fluid.name(), fluid);
            open = null;
        }
    }

    private void paper(List<String> fields) {
        papers.put(fields.get(0), new Paper(fields.get(1), fields.get(2), fields.get(3), fields.get(4), fields.get(5)));
    }

    private void pair(Line line) {
        ResidualTerms.Builder departure = departures.get(line.words().get(7));
        pairs.add(new PairParameters(
                line.words().get(0),
                line.words().get(1),
                line.number(2),
                line.number(3),
                line.number(4),
                line.number(5),
                line.number(6),
                departure == null ? null : departure.build(),
                line.words().get(8)));
    }

    /** The lines of one fluid, collected until the next begins. */
    private static final class FluidLines {
        private final String name;
        private final boolean pseudoPure;
        private final ResidualTerms.Builder terms;
        private final Map<String, Line> lines = new HashMap<>();
        private final List<double[]> powers = new ArrayList<>();
        private final List<double[]> einstein = new ArrayList<>();
        private final Map<String, Line> ancillaries = new LinkedHashMap<>();
        private final Map<String, List<double[]>> coefficients = new HashMap<>();
        private List<double[]> current = new ArrayList<>();

        FluidLines(String name, boolean pseudoPure, ResidualTerms.Builder terms) {
            this.name = name;
            this.pseudoPure = pseudoPure;
            this.terms = terms;
        }

        void accept(Line line) {
            switch (line.keyword()) {
                case "ideal-power" -> powers.add(new double[] {line.number(0), line.number(1)});
                case "ideal-einstein" -> einstein.add(new double[] {line.number(0), line.number(1)});
                case "ancillary" -> {
                    current = new ArrayList<>();
                    ancillaries.put(line.words().get(0), line);
                    coefficients.put(line.words().get(0), current);
                }
                case "coefficient" -> current.add(new double[] {line.number(0), line.number(1)});
                default -> lines.put(line.keyword(), line);
            }
        }

        PureFluid build() {
            Line ideal = line("ideal");
            Map<String, Ancillary> built = new HashMap<>();
            ancillaries.forEach((what, line) ->
                    built.put(what, ancillary(line, coefficients.getOrDefault(what, List.of()))));
            return new PureFluid(
                    name,
                    pseudoPure,
                    line("paper").words(),
                    line("gas-constant").number(0),
                    line("molar-mass").number(0),
                    line("reducing").number(0),
                    line("reducing").number(1),
                    line("critical").number(0),
                    line("critical").number(1),
                    line("acentric").number(0),
                    line("validity").number(0),
                    line("validity").number(1),
                    new IdealTerms(ideal.number(0), ideal.number(1), ideal.number(2), powers, einstein),
                    terms.build(),
                    Map.copyOf(built));
        }

        private Line line(String keyword) {
            Line found = lines.get(keyword);
            if (found == null) {
                throw new IllegalStateException("equations.txt: " + name + " lacks " + keyword);
            }
            return found;
        }

        private static Ancillary ancillary(Line line, List<double[]> coefficients) {
            double[] n = new double[coefficients.size()];
            double[] t = new double[coefficients.size()];
            for (int i = 0; i < n.length; i++) {
                n[i] = coefficients.get(i)[0];
                t[i] = coefficients.get(i)[1];
            }
            Ancillary.Form form = switch (line.words().get(1)) {
                case "exp-scaled" -> Ancillary.Form.EXP_SCALED;
                case "exp" -> Ancillary.Form.EXP;
                case "one-plus" -> Ancillary.Form.ONE_PLUS;
                default ->
                    throw new IllegalStateException(
                            "equations.txt: no such form " + line.words().get(1));
            };
            return new Ancillary(form, line.number(2), line.number(3), n, t);
        }
    }
}
