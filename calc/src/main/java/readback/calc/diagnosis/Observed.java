package readback.calc.diagnosis;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What was measured, as deviations from a sound unit with their joint uncertainty: one gauge's error moves several
 * symptoms, and so does weather that nobody read.
 *
 * @param evidence one for each symptom at most, in the order of the symptoms
 * @param covariance of all symptoms in their order, K², also of those not measured; never changed
 */
@SuppressWarnings("ArrayRecordComponent") // for the numeric kernel, never changed and never compared
record Observed(List<Evidence> evidence, double[][] covariance) {

    Observed {
        evidence = List.copyOf(evidence);
    }

    /** Deviations whose errors have nothing in common. */
    static Observed independent(List<Evidence> evidence) {
        int size = Symptom.values().length;
        double[][] covariance = new double[size][size];
        for (Evidence each : evidence) {
            int at = index(each.symptom());
            covariance[at][at] =
                    each.uncertainty().kelvins() * each.uncertainty().kelvins();
        }
        return new Observed(evidence, covariance);
    }

    @SuppressWarnings("EnumOrdinal") // the order of the symptoms is that of the columns, by their documentation
    static int index(Symptom symptom) {
        return symptom.ordinal();
    }

    Set<Symptom> symptoms() {
        Set<Symptom> symptoms = EnumSet.noneOf(Symptom.class);
        evidence.forEach(each -> symptoms.add(each.symptom()));
        return symptoms;
    }
}
