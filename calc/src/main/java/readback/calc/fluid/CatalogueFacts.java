package readback.calc.fluid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import readback.calc.fluid.FactLines.Line;

/** Reads {@code refrigerants.txt}; the file's own header describes its lines. Used once by one thread. */
final class CatalogueFacts {

    private final List<RefrigerantFacts> supported = new ArrayList<>();
    private final List<Unsupported> unsupported = new ArrayList<>();
    private @Nullable Entry open;

    private CatalogueFacts() {}

    /** The whole file. */
    record Contents(List<RefrigerantFacts> supported, List<Unsupported> unsupported) {}

    /** A refrigerant that is known by name only, and why. */
    record Unsupported(String designation, String why, List<String> spokenNames) {}

    static Contents load() {
        return parse(FactLines.read("refrigerants.txt"));
    }

    /** @throws IllegalStateException if the lines make no sense */
    static Contents parse(List<Line> lines) {
        CatalogueFacts facts = new CatalogueFacts();
        for (Line line : lines) {
            facts.accept(line);
        }
        facts.close();
        return new Contents(List.copyOf(facts.supported), List.copyOf(facts.unsupported));
    }

    private void accept(Line line) {
        switch (line.keyword()) {
            case "refrigerant" -> {
                close();
                open = new Entry(line.rest());
            }
            case "unsupported" -> {
                close();
                List<String> fields = line.fields();
                unsupported.add(new Unsupported(
                        fields.get(0),
                        fields.get(1),
                        Arrays.stream(fields.get(2).split(";", -1))
                                .map(String::strip)
                                .toList()));
            }
            default -> {
                if (open == null) {
                    throw new IllegalStateException("refrigerants.txt: unexpected line " + line);
                }
                open.accept(line);
            }
        }
    }

    private void close() {
        if (open != null) {
            supported.add(open.build());
            open = null;
        }
    }

    /** The lines of one refrigerant. */
    private static final class Entry {
        private final String designation;
        private final List<Ingredient> composition = new ArrayList<>();
        private final List<String> spoken = new ArrayList<>();
        private final Map<String, Double> gwp = new HashMap<>();
        private final Map<String, Line> lines = new HashMap<>();

        Entry(String designation) {
            this.designation = designation;
        }

        void accept(Line line) {
            switch (line.keyword()) {
                case "contains" -> composition.add(new Ingredient(line.words().get(0), line.number(1)));
                case "spoken" -> spoken.add(line.rest());
                case "gwp" -> gwp.put(line.words().get(0), line.number(1));
                default -> lines.put(line.keyword(), line);
            }
        }

        RefrigerantFacts build() {
            return new RefrigerantFacts(
                    designation,
                    RefrigerantFacts.Kind.valueOf(
                            line("equation").rest().toUpperCase(Locale.ROOT).replace('-', '_')),
                    SafetyClass.valueOf(line("class").rest()),
                    List.copyOf(composition),
                    line("critical").number(0),
                    line("critical").number(1),
                    potential("AR4"),
                    potential("AR5"),
                    line("odp").number(0),
                    List.copyOf(spoken));
        }

        private double potential(String edition) {
            Double found = gwp.get(edition);
            if (found == null) {
                throw new IllegalStateException("refrigerants.txt: " + designation + " lacks gwp " + edition);
            }
            return found;
        }

        private Line line(String keyword) {
            Line found = lines.get(keyword);
            if (found == null) {
                throw new IllegalStateException("refrigerants.txt: " + designation + " lacks " + keyword);
            }
            return found;
        }
    }
}
