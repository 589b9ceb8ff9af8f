package readback.calc.diagnosis;

import java.util.List;
import java.util.Optional;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;

/** What would best tell the two leading causes apart. */
public sealed interface NextObservation {

    /** The same observation without the readings that are there already. */
    NextObservation without(Readings taken);

    /** The readings to be taken; none where something is to be looked for. */
    default List<Quantity> missing() {
        return List.of();
    }

    /** What is to be looked for, if that is what is to be done. */
    default Optional<Finding> lookedFor() {
        return Optional.empty();
    }

    /**
     * Take readings.
     *
     * @param missing the readings still needed for the symptom; empty when one of those taken contradicts another and
     *     must be taken again
     */
    record Measure(Symptom symptom, List<Quantity> missing) implements NextObservation {
        public Measure {
            missing = List.copyOf(missing);
        }

        @Override
        public Measure without(Readings taken) {
            return new Measure(
                    symptom,
                    missing.stream().filter(quantity -> !taken.has(quantity)).toList());
        }
    }

    /** Look or try, and answer with yes or no. */
    record Look(Finding finding) implements NextObservation {
        @Override
        public Look without(Readings taken) {
            return this;
        }

        @Override
        public Optional<Finding> lookedFor() {
            return Optional.of(finding);
        }
    }
}
