package readback.calc.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import readback.calc.fact.FactTable;

/**
 * How likely a finding is with each fault: a row of findings.txt.
 *
 * @param otherwise with every fault not listed
 */
record FindingLikelihood(Map<Fault, Double> withFault, double otherwise) {

    private static final String OTHERWISE = "OTHERWISE";

    private static final Map<Finding, FindingLikelihood> ALL = load();

    /** The probability that the question is answered as it was, if the fault is there. */
    static double of(Finding finding, boolean answer, Fault fault) {
        FindingLikelihood likelihood = ALL.get(finding);
        if (likelihood == null) {
            throw new IllegalStateException("no likelihood for " + finding);
        }
        double yes = likelihood.withFault.getOrDefault(fault, likelihood.otherwise);
        return answer ? yes : 1 - yes;
    }

    private static Map<Finding, FindingLikelihood> load() {
        Map<Finding, FindingLikelihood> all = new EnumMap<>(Finding.class);
        for (List<String> line : FactTable.lines(FindingLikelihood.class, "findings.txt")) {
            Map<Fault, Double> withFault = new EnumMap<>(Fault.class);
            double otherwise = Double.NaN;
            for (int i = 1; i < line.size(); i += 2) {
                double share = Double.parseDouble(line.get(i + 1)) / 100;
                if (line.get(i).equals(OTHERWISE)) {
                    otherwise = share;
                } else {
                    withFault.put(Fault.valueOf(line.get(i)), share);
                }
            }
            all.put(Finding.valueOf(line.get(0)), new FindingLikelihood(withFault, otherwise));
        }
        return all;
    }
}
