package readback.assistant.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.calc.procedure.Mass;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * Follows a session's record and keeps every movement of refrigerant. A corrected amount replaces the one that it corrects,
 * a scratched one is dropped, and the amounts of an earlier round of measurements stay when the next round clears their
 * slots. One thread.
 */
public final class ChargeMoves {

    private static final String CYLINDER = "cylinder";

    private final List<Move> moves = new ArrayList<>();
    private final Map<Quantity, Integer> open = new HashMap<>();
    private String cylinder;

    /**
     * One movement, as it was stated.
     *
     * @param event number of the event that stated it last
     * @param cylinder its number, empty when none was named
     */
    public record Move(int event, Instant at, Reading amount, String cylinder) {

        /** The movement as the balance of the job takes it. */
        public RefrigerantBalance.Movement movement() {
            return new RefrigerantBalance.Movement(
                    cylinder,
                    amount.quantity() == Quantity.REFRIGERANT_ADDED
                            ? RefrigerantBalance.Direction.IN
                            : RefrigerantBalance.Direction.OUT,
                    Mass.kilograms(Math.max(0, amount.base())));
        }
    }

    /** @param about what the header says about the job: it may name a cylinder */
    public ChargeMoves(Map<String, String> about) {
        cylinder = about.getOrDefault(About.CYLINDER, "");
    }

    /** Takes the next entry. */
    public void follow(Entry entry) {
        Map<String, String> changes = entry.outcome().changes();
        changes.forEach((slot, content) -> {
            if (slot.contains(CYLINDER) && !content.isEmpty() && Content.quantity(slot).isEmpty()) {
                cylinder = content;
            }
        });
        long cleared = changes.values().stream().filter(String::isEmpty).count();
        for (Quantity quantity : List.of(Quantity.REFRIGERANT_ADDED, Quantity.REFRIGERANT_RECOVERED)) {
            String content = changes.get(quantity.name());
            if (content == null) {
                continue;
            }
            if (content.isEmpty()) {
                clear(quantity, cleared == 1);
            } else {
                state(quantity, content, entry);
            }
        }
    }

    /** A slot that is cleared with others starts a new round; one that is cleared alone was scratched. */
    private void clear(Quantity quantity, boolean scratched) {
        Integer at = open.remove(quantity);
        if (scratched && at != null) {
            moves.remove((int) at);
            open.replaceAll((other, index) -> index > at ? index - 1 : index);
        }
    }

    private void state(Quantity quantity, String content, Entry entry) {
        Optional<Reading> amount = Content.reading(quantity.name(), content);
        if (amount.isEmpty()) {
            return;
        }
        Move move = new Move(entry.number(), entry.event().at(), amount.get(), cylinder);
        Integer at = open.get(quantity);
        if (at != null) {
            moves.set(at, move);
        } else {
            open.put(quantity, moves.size());
            moves.add(move);
        }
    }

    /** Every movement so far, in order. */
    public List<Move> moves() {
        return List.copyOf(moves);
    }

    /** The movements as a balance. */
    public RefrigerantBalance balance() {
        RefrigerantBalance balance = RefrigerantBalance.EMPTY;
        for (Move move : moves) {
            balance = balance.with(move.movement());
        }
        return balance;
    }
}
