package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import readback.calc.fact.FactTable;
import readback.calc.measurement.ChargeMethod;

/**
 * Simulated units of one metering family, sound and with each fault in many sizes: what they show, and how often each
 * trouble is met. Read from simulated-units.txt, which a program of the tests writes, and fault-weights.txt.
 */
final class Population {

    private static final Map<ChargeMethod, Population> ALL = load();

    private final SoundUnit sound;
    private final List<Trouble> troubles;

    private Population(SoundUnit sound, List<Trouble> troubles) {
        this.sound = sound;
        this.troubles = List.copyOf(troubles);
    }

    /**
     * Units with the same thing wrong with them.
     *
     * @param name of what is wrong; a fault may come about in several ways
     * @param weight how often it is met, relative to the others
     * @param units in all sizes
     * @param sample every fourth of them: enough for a weight that is told in words
     */
    record Trouble(String name, Fault fault, double weight, UnitColumns units, UnitColumns sample) {

        private static final int STRIDE = 4;

        static Trouble of(String name, Fault fault, double weight, List<UnitColumns.Row> rows) {
            List<UnitColumns.Row> sample = new ArrayList<>();
            for (int i = 0; i < rows.size(); i += STRIDE) {
                sample.add(rows.get(i));
            }
            return new Trouble(name, fault, weight, UnitColumns.of(rows), UnitColumns.of(sample));
        }
    }

    /** The simulated units of the metering family that the charge method stands for. */
    static Population of(ChargeMethod method) {
        Population population = ALL.get(method);
        if (population == null) {
            throw new IllegalStateException("no simulated units for " + method);
        }
        return population;
    }

    SoundUnit sound() {
        return sound;
    }

    /** Everything that may be wrong, and nothing. */
    List<Trouble> troubles() {
        return troubles;
    }

    /** How many units have the same trouble, at most. */
    int mostUnits() {
        return troubles.stream()
                .mapToInt(trouble -> trouble.units().size())
                .max()
                .orElse(0);
    }

    private static Map<ChargeMethod, Population> load() {
        Map<ChargeMethod, Map<Symptom, double[]>> coefficients = new EnumMap<>(ChargeMethod.class);
        Map<ChargeMethod, Map<String, List<UnitColumns.Row>>> units = new EnumMap<>(ChargeMethod.class);
        List<Finding> order = new ArrayList<>();
        for (List<String> line : FactTable.lines(Population.class, "simulated-units.txt")) {
            String kind = line.get(0);
            if (kind.equals("findings")) {
                line.subList(1, line.size()).forEach(name -> order.add(Finding.valueOf(name)));
                continue;
            }
            ChargeMethod method = ChargeMethod.valueOf(line.get(1));
            if (kind.equals("sound")) {
                coefficients
                        .computeIfAbsent(method, m -> new EnumMap<>(Symptom.class))
                        .put(Symptom.valueOf(line.get(2)), SoundUnit.parsed(line.subList(3, line.size())));
            } else {
                units.computeIfAbsent(method, m -> new LinkedHashMap<>())
                        .computeIfAbsent(line.get(2), name -> new ArrayList<>())
                        .add(unit(line, order));
            }
        }
        Map<ChargeMethod, List<Trouble>> troubles = new EnumMap<>(ChargeMethod.class);
        for (List<String> line : FactTable.lines(Population.class, "fault-weights.txt")) {
            ChargeMethod method = ChargeMethod.valueOf(line.get(0));
            String name = line.get(1);
            troubles.computeIfAbsent(method, m -> new ArrayList<>())
                    .add(Trouble.of(
                            name,
                            Fault.valueOf(line.get(2)),
                            Double.parseDouble(line.get(3)),
                            units.getOrDefault(method, Map.of()).getOrDefault(name, List.of())));
        }
        Map<ChargeMethod, Population> all = new EnumMap<>(ChargeMethod.class);
        troubles.forEach((method, listed) ->
                all.put(method, new Population(new SoundUnit(coefficients.getOrDefault(method, Map.of())), listed)));
        return all;
    }

    /** "unit", method, trouble, charge in thousandths, deviations in tenths of a kelvin, what is found as a bit set. */
    private static UnitColumns.Row unit(List<String> line, List<Finding> order) {
        List<Double> deviations = new ArrayList<>();
        for (String tenths : line.subList(4, line.size() - 1)) {
            deviations.add(Integer.parseInt(tenths) / 10.0);
        }
        int bits = Integer.parseInt(line.get(line.size() - 1));
        int findings = 0;
        for (int i = 0; i < order.size(); i++) {
            findings |= (bits >> i & 1) != 0 ? UnitColumns.bit(order.get(i)) : 0;
        }
        return new UnitColumns.Row(Integer.parseInt(line.get(3)) / 1000.0, deviations, findings);
    }
}
