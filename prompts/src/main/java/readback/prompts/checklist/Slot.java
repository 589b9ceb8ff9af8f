package readback.prompts.checklist;

import java.util.Optional;
import readback.calc.quantity.Quantity;

/**
 * A place that an answer fills. Checklists name slots; one that no step fills is told when the program starts.
 *
 * @param id as checklists and records write it: a quantity's constant name, or words joined by hyphens
 */
public record Slot(String id) implements Comparable<Slot> {

    /** The slot that readings of a quantity fill. */
    public static Slot of(Quantity quantity) {
        return new Slot(quantity.name());
    }

    /** The quantity whose readings fill it; empty for choices, questions, and slots that a procedure names itself. */
    public Optional<Quantity> quantity() {
        for (Quantity quantity : Quantity.values()) {
            if (quantity.name().equals(id)) {
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }

    @Override
    public int compareTo(Slot other) {
        return id.compareTo(other.id);
    }

    @Override
    public String toString() {
        return id;
    }
}
