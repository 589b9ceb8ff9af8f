package readback.assistant.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.calc.procedure.Mass;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * Follows a session's record and keeps every movement of refrigerant. Every amount stated counts, also when its slot is
 * filled already, for charge is moved in small steps; a correction replaces the amount stated last, a scratched amount is
 * dropped, and amounts stay when the next round of measurements clears their slots. One thread.
 */
public final class ChargeMoves {

    private static final String CYLINDER = "cylinder";

    /** How a meaning begins that replaces a value, and one that takes a value back. */
    private static final String CORRECTION = "correction: ";

    private static final String SCRATCH = "scratch";

    private final List<Move> moves = new ArrayList<>();
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
        for (Quantity quantity : List.of(Quantity.REFRIGERANT_ADDED, Quantity.REFRIGERANT_RECOVERED)) {
            String content = changes.get(quantity.name());
            if (content != null) {
                change(quantity, content, entry);
            }
        }
    }

    private void change(Quantity quantity, String content, Entry entry) {
        String understood = entry.outcome().understood();
        if (understood.startsWith(SCRATCH)) {
            // What the slot falls back to was counted when it was stated.
            drop(quantity);
        } else {
            Content.reading(quantity.name(), content).ifPresent(amount -> {
                if (understood.startsWith(CORRECTION)) {
                    drop(quantity);
                }
                moves.add(new Move(entry.number(), entry.event().at(), amount, cylinder));
            });
        }
    }

    private void drop(Quantity quantity) {
        for (int i = moves.size() - 1; i >= 0; i--) {
            if (moves.get(i).amount().quantity() == quantity) {
                moves.remove(i);
                return;
            }
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
