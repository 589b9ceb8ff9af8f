package readback.calc.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import readback.calc.fact.FactTable;
import readback.calc.measurement.ChargeMethod;

/**
 * One row of fault-patterns.txt, where the sources stand too.
 *
 * @param weight how often it is met, relative to the others
 */
record FaultPattern(ChargeMethod method, Fault fault, double weight, Map<Symptom, Expected> expected) {

    private static final int FIRST_SIGN = 3;

    private static final Map<ChargeMethod, List<FaultPattern>> ALL = load();

    /** Every pattern of the metering family that the charge method stands for. */
    static List<FaultPattern> of(ChargeMethod method) {
        return ALL.getOrDefault(method, List.of());
    }

    Expected expected(Symptom symptom) {
        return expected.getOrDefault(symptom, Expected.ANYTHING);
    }

    private static Map<ChargeMethod, List<FaultPattern>> load() {
        Map<ChargeMethod, List<FaultPattern>> all = new EnumMap<>(ChargeMethod.class);
        Symptom[] symptoms = Symptom.values();
        for (List<String> line : FactTable.lines(FaultPattern.class, "fault-patterns.txt")) {
            Map<Symptom, Expected> expected = new EnumMap<>(Symptom.class);
            for (int i = 0; i < symptoms.length; i++) {
                expected.put(symptoms[i], Expected.of(line.get(FIRST_SIGN + i)));
            }
            ChargeMethod method = ChargeMethod.valueOf(line.get(0));
            all.computeIfAbsent(method, m -> new ArrayList<>())
                    .add(new FaultPattern(
                            method, Fault.valueOf(line.get(1)), Double.parseDouble(line.get(2)), expected));
        }
        return all;
    }
}
