package readback.assistant.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/**
 * Follows a session's record and keeps every movement of refrigerant, as the dialogue counts them: one amount in and
 * one out between two measurements, where an amount stated again replaces the one before, and a scratched one is
 * dropped. What was moved stays when the next round of measurements clears the slots. One thread.
 */
public final class ChargeMoves {

    private static final String CYLINDER = "cylinder";

    /** How a meaning begins that takes a value back. */
    private static final String SCRATCH = "scratch";

    private final List<Move> moves = new ArrayList<>();
    /** Where the amount stands that its slot holds now. */
    private final Map<Quantity, Integer> open = new EnumMap<>(Quantity.class);

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
            if (slot.contains(CYLINDER)
                    && !content.isEmpty()
                    && Content.quantity(slot).isEmpty()) {
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
        Integer at = open.get(quantity);
        if (content.isEmpty()) {
            open.remove(quantity);
            if (at != null && entry.outcome().understood().startsWith(SCRATCH)) {
                moves.remove((int) at);
                open.replaceAll((other, index) -> index > at ? index - 1 : index);
            }
            return;
        }
        Content.reading(quantity.name(), content).ifPresent(amount -> {
            Move move = new Move(entry.number(), entry.event().at(), amount, cylinder);
            if (at != null) {
                moves.set(at, move);
            } else {
                open.put(quantity, moves.size());
                moves.add(move);
            }
        });
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
