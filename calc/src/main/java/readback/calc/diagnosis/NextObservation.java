package readback.calc.diagnosis;

import java.util.List;
import readback.calc.quantity.Quantity;

/** What would best tell the two leading causes apart. */
public sealed interface NextObservation {

    /**
     * Take readings.
     *
     * @param missing the readings still needed for the symptom
     */
    record Measure(Symptom symptom, List<Quantity> missing) implements NextObservation {
        public Measure {
            missing = List.copyOf(missing);
        }
    }

    /** Look or try, and answer with yes or no. */
    record Look(Finding finding) implements NextObservation {}
}
