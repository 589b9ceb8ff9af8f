package readback.calc.diagnosis;

import java.util.List;

/**
 * Simulated units with the same thing wrong with them, a column for each thing that is known of them, so that one loop
 * goes over all of them. Never changed; the columns are handed out as they are, to the numeric kernel of this package.
 */
final class UnitColumns {

    private final double[] charges;
    private final double[][] deviations;
    private final int[] findings;

    private UnitColumns(List<Row> rows) {
        charges = rows.stream().mapToDouble(Row::charge).toArray();
        findings = rows.stream().mapToInt(Row::findings).toArray();
        deviations = new double[Symptom.values().length][];
        for (int i = 0; i < deviations.length; i++) {
            int column = i;
            deviations[i] = rows.stream()
                    .mapToDouble(row -> row.deviations().get(column))
                    .toArray();
        }
    }

    /**
     * One simulated unit.
     *
     * @param charge share of the nameplate charge that is in it
     * @param deviations of all symptoms in their order, K
     * @param findings what someone who looks or tries would find, by {@link #bit}
     */
    record Row(double charge, List<Double> deviations, int findings) {
        Row {
            deviations = List.copyOf(deviations);
        }
    }

    static UnitColumns of(List<Row> rows) {
        return new UnitColumns(rows);
    }

    /** The bit of a finding; within one run only. */
    @SuppressWarnings("EnumOrdinal") // the file names the order of its own bits
    static int bit(Finding finding) {
        return 1 << finding.ordinal();
    }

    /** The share of the units that show the finding, 0 to 1. */
    double share(Finding finding) {
        int bit = bit(finding);
        int shown = 0;
        for (int found : findings) {
            shown += (found & bit) != 0 ? 1 : 0;
        }
        return (double) shown / findings.length;
    }

    int size() {
        return charges.length;
    }

    /** How far each unit is from a sound one in a symptom, K. */
    double[] deviations(int symptom) {
        return deviations[symptom];
    }

    /** Share of the nameplate charge that is in each unit. */
    double[] charges() {
        return charges;
    }

    /** What someone who looks or tries would find at each unit, by {@link #bit}. */
    int[] findings() {
        return findings;
    }
}
