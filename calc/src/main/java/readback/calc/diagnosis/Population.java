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
     * @param units in all sizes; an array, which is never changed, because everything goes over all of them
     */
    @SuppressWarnings("ArrayRecordComponent") // for the numeric kernel, never changed and never compared
    record Trouble(String name, Fault fault, double weight, Unit[] units) {}

    /**
     * One simulated unit.
     *
     * @param charge share of the nameplate charge that is in it
     * @param deviations of all symptoms in their order, K
     * @param findings what someone who looks or tries would find, a bit for each finding in their order
     */
    @SuppressWarnings("ArrayRecordComponent") // for the numeric kernel, never changed and never compared
    record Unit(double charge, double[] deviations, int findings) {

        boolean shows(Finding finding) {
            return (findings & bit(finding)) != 0;
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

    private static Map<ChargeMethod, Population> load() {
        Map<ChargeMethod, Map<Symptom, double[]>> coefficients = new EnumMap<>(ChargeMethod.class);
        Map<ChargeMethod, Map<String, List<Unit>>> units = new EnumMap<>(ChargeMethod.class);
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
                    .add(new Trouble(
                            name,
                            Fault.valueOf(line.get(2)),
                            Double.parseDouble(line.get(3)),
                            units.getOrDefault(method, Map.of())
                                    .getOrDefault(name, List.of())
                                    .toArray(Unit[]::new)));
        }
        Map<ChargeMethod, Population> all = new EnumMap<>(ChargeMethod.class);
        troubles.forEach((method, listed) ->
                all.put(method, new Population(new SoundUnit(coefficients.getOrDefault(method, Map.of())), listed)));
        return all;
    }

    @SuppressWarnings("EnumOrdinal") // within one run only; the file names the order of its own bits
    private static int bit(Finding finding) {
        return 1 << finding.ordinal();
    }

    /** "unit", method, trouble, charge in thousandths, deviations in tenths of a kelvin, what is found as a bit set. */
    private static Unit unit(List<String> line, List<Finding> order) {
        double[] deviations = new double[Symptom.values().length];
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] = Integer.parseInt(line.get(4 + i)) / 10.0;
        }
        int bits = Integer.parseInt(line.get(4 + deviations.length));
        int findings = 0;
        for (int i = 0; i < order.size(); i++) {
            findings |= (bits >> i & 1) != 0 ? bit(order.get(i)) : 0;
        }
        return new Unit(Integer.parseInt(line.get(3)) / 1000.0, deviations, findings);
    }
}
