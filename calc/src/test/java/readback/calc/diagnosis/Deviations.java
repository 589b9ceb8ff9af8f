package readback.calc.diagnosis;

import readback.calc.quantity.TemperatureDifference;

/** Deviations as ordinary instruments show them. */
final class Deviations {

    /** °F, what a gauge and a probe leave together. */
    private static final double ORDINARY = 1.3;

    private Deviations() {}

    /** Measured minus expected, °F. */
    static Evidence deviation(Symptom symptom, double fahrenheit) {
        return new Evidence(
                symptom, TemperatureDifference.fahrenheit(fahrenheit), TemperatureDifference.fahrenheit(ORDINARY));
    }
}
