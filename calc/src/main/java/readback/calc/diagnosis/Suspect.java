package readback.calc.diagnosis;

import java.util.List;
import java.util.Optional;

/**
 * A fault with what speaks for and against it.
 *
 * @param probability among all faults that are told apart here, 0 to 1
 * @param supporting the strongest first
 * @param opposing the strongest first
 */
public record Suspect(Fault fault, double probability, List<Clue> supporting, List<Clue> opposing) {

    /** One piece of evidence and how much it weighs. */
    public sealed interface Clue {

        /** Natural logarithm of how much likelier the observation is with the fault than if nothing were known. */
        double weight();

        /** The measured symptom, if it is one. */
        default Optional<Evidence> measured() {
            return Optional.empty();
        }

        /** A measured symptom. */
        record Measured(Evidence evidence, double weight) implements Clue {
            @Override
            public Optional<Evidence> measured() {
                return Optional.of(evidence);
            }
        }

        /** A question answered with yes or no. */
        record Seen(Finding finding, boolean answer, double weight) implements Clue {}
    }

    public Suspect {
        supporting = List.copyOf(supporting);
        opposing = List.copyOf(opposing);
    }
}
