package readback.calc.diagnosis;

import readback.calc.quantity.TemperatureDifference;

/**
 * How far a symptom lies from what a sound unit would show in the same weather.
 *
 * @param deviation measured minus expected
 * @param uncertainty standard uncertainty of instruments and weather, zero or more
 */
public record Evidence(Symptom symptom, TemperatureDifference deviation, TemperatureDifference uncertainty) {

    /** @throws IllegalArgumentException if the uncertainty is negative */
    public Evidence {
        if (uncertainty.kelvins() < 0) {
            throw new IllegalArgumentException("uncertainty of " + symptom + " is below zero: " + uncertainty);
        }
    }

    /** Whether the measured value lies above the expected one. */
    public boolean above() {
        return deviation.kelvins() > 0;
    }
}
