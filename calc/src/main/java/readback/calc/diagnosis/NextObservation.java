package readback.calc.diagnosis;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.measurement.Readings;
import readback.calc.quantity.Quantity;

/** What would tell most about the causes. */
public sealed interface NextObservation {

    /** The same observation without the readings that are there already. */
    NextObservation without(Readings taken);

    /**
     * Whether it can be made: no reading of it is known to be out of reach.
     *
     * @param open questions that the technician did not leave unanswered
     */
    boolean possible(Readings taken, Set<Finding> open);

    /** The readings to be taken; none where something is to be looked for. */
    default List<Quantity> missing() {
        return List.of();
    }

    /** What is to be looked for, if that is what is to be done. */
    default Optional<Finding> lookedFor() {
        return Optional.empty();
    }

    /** How many readings or looks it takes, at least one. */
    int steps();

    /** Whether there is still something to do for it. */
    boolean open();

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

        @Override
        public boolean possible(Readings taken, Set<Finding> open) {
            return missing.stream().noneMatch(taken::cannotBeKnown);
        }

        @Override
        public int steps() {
            return Math.max(1, missing.size());
        }

        @Override
        public boolean open() {
            return !missing.isEmpty();
        }
    }

    /** Look or try, and answer with yes or no. */
    record Look(Finding finding) implements NextObservation {
        @Override
        public Look without(Readings taken) {
            return this;
        }

        @Override
        public boolean possible(Readings taken, Set<Finding> open) {
            return open.contains(finding);
        }

        @Override
        public Optional<Finding> lookedFor() {
            return Optional.of(finding);
        }

        @Override
        public int steps() {
            return 1;
        }

        @Override
        public boolean open() {
            return true;
        }
    }
}
