package readback.calc.diagnosis;

import readback.calc.quantity.TemperatureDifference;

/**
 * What a sound system shows.
 *
 * @param spread standard deviation among sound systems, above zero
 */
record Baseline(TemperatureDifference mean, TemperatureDifference spread) {

    static Baseline fahrenheit(double mean, double spread) {
        return new Baseline(TemperatureDifference.fahrenheit(mean), TemperatureDifference.fahrenheit(spread));
    }

    /** Evidence from a value that is measured with the given standard uncertainty. */
    Evidence compare(Symptom symptom, TemperatureDifference measured, TemperatureDifference uncertainty) {
        return Evidence.of(
                symptom,
                measured.minus(mean),
                TemperatureDifference.kelvins(Math.hypot(spread.kelvins(), uncertainty.kelvins())));
    }
}
