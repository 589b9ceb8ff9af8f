package readback.calc.diagnosis;

import readback.calc.quantity.TemperatureDifference;

/**
 * How far a symptom lies from what a sound system would show.
 *
 * @param deviations measured minus expected, in standard uncertainties of that difference
 */
public record Evidence(Symptom symptom, double deviations) {

    /** @throws IllegalArgumentException if not a number */
    public Evidence {
        if (Double.isNaN(deviations)) {
            throw new IllegalArgumentException("evidence on " + symptom + " is not a number");
        }
    }

    /**
     * Evidence from a difference.
     *
     * @param uncertainty standard uncertainty of measurement and expectation together, above zero
     */
    public static Evidence of(Symptom symptom, TemperatureDifference deviation, TemperatureDifference uncertainty) {
        return new Evidence(symptom, deviation.kelvins() / uncertainty.kelvins());
    }
}
