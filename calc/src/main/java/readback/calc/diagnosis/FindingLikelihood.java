package readback.calc.diagnosis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import readback.calc.fact.FactTable;

/**
 * How often a finding is reported: a row of findings.txt.
 *
 * @param there the share of yes where it is there
 * @param notThere the share of yes where it is not
 */
record FindingLikelihood(double there, double notThere) {

    private static final Map<Finding, FindingLikelihood> ALL = load();

    /** The likelihood of one finding. */
    static FindingLikelihood of(Finding finding) {
        FindingLikelihood likelihood = ALL.get(finding);
        if (likelihood == null) {
            throw new IllegalStateException("no likelihood for " + finding);
        }
        return likelihood;
    }

    /** The probability that the question is answered so where the finding is there, or where it is not. */
    double of(boolean answer, boolean isThere) {
        double yes = isThere ? there : notThere;
        return answer ? yes : 1 - yes;
    }

    /** The same where the finding is there with a probability. */
    double of(boolean answer, double isThere) {
        return isThere * of(answer, true) + (1 - isThere) * of(answer, false);
    }

    private static Map<Finding, FindingLikelihood> load() {
        Map<Finding, FindingLikelihood> all = new EnumMap<>(Finding.class);
        for (List<String> line : FactTable.lines(FindingLikelihood.class, "findings.txt")) {
            all.put(
                    Finding.valueOf(line.get(0)),
                    new FindingLikelihood(
                            Double.parseDouble(line.get(1)) / 100, Double.parseDouble(line.get(2)) / 100));
        }
        return all;
    }
}
