package readback.assistant.replay;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Pending;
import readback.assistant.dialogue.ScaleSlots;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.Understood;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.prompts.checklist.Slot;

/**
 * Follows a session's record and keeps every movement of refrigerant, as the dialogue counts them: one amount in and
 * one out between two measurements, where an amount stated again replaces the one before unless it was said to be more,
 * and a scratched one is dropped. What was moved stays when the next round of measurements clears the slots. One
 * thread.
 */
public final class ChargeMoves {

    /** Moved before the latest measurement. */
    private final List<Move> settled = new ArrayList<>();
    /** Moved since: together they are what the slot holds. */
    private final Map<Quantity, List<Move>> open = new EnumMap<>(Quantity.class);

    /** What each slot holds by now. */
    private final Map<Slot, Content> held = new HashMap<>();

    private Optional<Reading> added = Optional.empty();
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

        private Move from(String number) {
            return cylinder.isEmpty() ? new Move(event, at, amount, number) : this;
        }

        /** The part of the amount that is left when the others are taken off. */
        private Move without(List<Move> others) {
            double rest = amount.base()
                    - others.stream().mapToDouble(other -> other.amount.base()).sum();
            return new Move(event, at, amount.withBase(rest), cylinder);
        }
    }

    /** @param about what the header says about the job: it may name a cylinder */
    public ChargeMoves(Map<String, String> about) {
        cylinder = about.getOrDefault(About.CYLINDER, "");
    }

    /** Takes the next entry. */
    public void follow(Entry entry) {
        entry.outcome()
                .change(Slots.CYLINDER_IN_USE)
                .flatMap(Change::after)
                .ifPresent(content -> takeCylinder(content.line()));
        entry.outcome()
                .changes()
                .forEach(change -> change.after()
                        .ifPresentOrElse(
                                content -> held.put(change.slot(), content), () -> held.remove(change.slot())));
        Optional<Reading> now = added();
        if (entry.outcome().change(Slot.of(Quantity.REFRIGERANT_ADDED)).isPresent() || !now.equals(added)) {
            change(Quantity.REFRIGERANT_ADDED, now, entry);
            added = now;
        }
        entry.outcome()
                .change(Slot.of(Quantity.REFRIGERANT_RECOVERED))
                .ifPresent(recovered ->
                        change(Quantity.REFRIGERANT_RECOVERED, recovered.after().flatMap(Content::reading), entry));
    }

    /** What follows is of this cylinder, and what went before without one being named. */
    private void takeCylinder(String number) {
        if (cylinder.isEmpty()) {
            settled.replaceAll(move -> move.from(number));
            open.values().forEach(moves -> moves.replaceAll(move -> move.from(number)));
        }
        cylinder = number;
    }

    /** What was said to be added, else what the cylinder's scale tells; empty for none. */
    private Optional<Reading> added() {
        Slot said = Slot.of(Quantity.REFRIGERANT_ADDED);
        return held.containsKey(said) ? held(said) : ScaleSlots.wentIn(this::held);
    }

    private Optional<Reading> held(Slot slot) {
        return Optional.ofNullable(held.get(slot)).flatMap(Content::reading);
    }

    /** @param stated empty when the slot was cleared, or filled by something else than a value */
    private void change(Quantity quantity, Optional<Reading> stated, Entry entry) {
        Understood understood = entry.outcome().understood();
        boolean takenBack = understood.orders(Command.SCRATCH_THAT);
        if (!held.containsKey(Slot.of(quantity)) && stated.isEmpty()) {
            List<Move> cleared = open.remove(quantity);
            if (cleared != null && !takenBack) {
                settled.addAll(cleared);
            }
            return;
        }
        stated.ifPresent(amount -> {
            List<Move> standing = open.computeIfAbsent(quantity, any -> new ArrayList<>());
            Move move = new Move(entry.number(), entry.event().at(), amount, cylinder);
            if (understood.meaning().equals(Optional.of(Pending.MovedAgain.SAID_MORE))) {
                standing.add(move.without(standing));
            } else if (takenBack && standing.size() > 1) {
                standing.remove(standing.size() - 1);
            } else {
                standing.clear();
                standing.add(move);
            }
        });
    }

    /** Every movement so far, in order. */
    public List<Move> moves() {
        return Stream.concat(settled.stream(), open.values().stream().flatMap(List::stream))
                .sorted(Comparator.comparingInt(Move::event))
                .toList();
    }

    /** Whether somebody said how much went in, or out, be it none. */
    public boolean said(RefrigerantBalance.Direction direction) {
        return moves().stream().anyMatch(move -> move.movement().direction() == direction);
    }

    /** The movements as a balance. */
    public RefrigerantBalance balance() {
        RefrigerantBalance balance = RefrigerantBalance.EMPTY;
        for (Move move : moves()) {
            balance = balance.with(move.movement());
        }
        return balance;
    }
}
