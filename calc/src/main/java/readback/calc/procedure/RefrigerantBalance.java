package readback.calc.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import readback.calc.quantity.Mass;
import readback.calc.quantity.OutOfRangeException;

/** Every movement of refrigerant during a job, and what remains in the system and left each cylinder. Immutable. */
public record RefrigerantBalance(List<Movement> movements) {

    /** Nothing moved yet. */
    public static final RefrigerantBalance EMPTY = new RefrigerantBalance(List.of());

    /** Seen from the system. */
    public enum Direction {
        IN,
        OUT
    }

    /**
     * One movement.
     *
     * @param cylinder its number, as the technician states it
     * @param amount zero or more
     */
    public record Movement(String cylinder, Direction direction, Mass amount) {

        /** @throws OutOfRangeException for a negative amount */
        public Movement {
            if (amount.kilograms() < 0) {
                throw new OutOfRangeException("amount moved", amount.kilograms(), "kg", "0 kg or more");
            }
        }

        private Mass intoSystem() {
            return direction == Direction.IN ? amount : amount.times(-1);
        }
    }

    public RefrigerantBalance {
        movements = List.copyOf(movements);
    }

    public RefrigerantBalance with(Movement movement) {
        List<Movement> more = new ArrayList<>(movements);
        more.add(movement);
        return new RefrigerantBalance(more);
    }

    public Mass added() {
        return sum(Direction.IN);
    }

    public Mass recovered() {
        return sum(Direction.OUT);
    }

    /** Added less recovered. */
    public Mass net() {
        return added().minus(recovered());
    }

    /** Net amount that each cylinder gave to the system, in order of first use; negative for what it took. */
    public Map<String, Mass> byCylinder() {
        Map<String, Mass> totals = new LinkedHashMap<>();
        for (Movement movement : movements) {
            totals.merge(movement.cylinder(), movement.intoSystem(), Mass::plus);
        }
        return totals;
    }

    private Mass sum(Direction direction) {
        Mass total = Mass.NONE;
        for (Movement movement : movements) {
            if (movement.direction() == direction) {
                total = total.plus(movement.amount());
            }
        }
        return total;
    }
}
