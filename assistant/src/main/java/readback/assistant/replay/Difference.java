package readback.assistant.replay;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Slot;

/**
 * Where a replayed session first differs from its record.
 *
 * @param event number of the event
 * @param what differs: "meaning", a slot as in "SUCTION_PRESSURE", "verdict", "cautions", "words", "order" of an event
 *     that cannot come there
 */
public record Difference(int event, String what, String recorded, String replayed) {

    /** The first difference between an entry and the turn that its event leads to now. */
    static Optional<Difference> between(Entry entry, Turn turn) {
        Turn.Outcome then = entry.outcome();
        Turn.Outcome now = turn.outcome();
        return first(
                        entry,
                        "meaning",
                        then.understood().line(),
                        now.understood().line())
                .or(() -> changes(entry, then, now))
                .or(() -> first(entry, "verdict", orNone(then.line()), orNone(now.line())))
                .or(() ->
                        first(entry, "cautions", ConstantName.list(then.cautions()), ConstantName.list(now.cautions())))
                .or(() -> first(
                        entry,
                        "end",
                        entry.closed() ? "closed" : "open",
                        turn.state().closed() ? "closed" : "open"));
    }

    /** The first difference in what was said. */
    static Optional<Difference> inWords(Entry entry, List<String> now) {
        return first(entry, "words", String.join(" / ", entry.said()), String.join(" / ", now));
    }

    /** An event that no session has at its place. */
    static Difference outOfOrder(Entry entry) {
        return new Difference(
                entry.number(), "order", entry.outcome().understood().line(), "");
    }

    private static String orNone(String line) {
        return line.isEmpty() ? "none" : line;
    }

    private static Optional<Difference> changes(Entry entry, Turn.Outcome then, Turn.Outcome now) {
        return Stream.concat(then.changes().stream(), now.changes().stream())
                .map(Change::slot)
                .distinct()
                .sorted()
                .flatMap(slot -> first(entry, slot.id(), content(then, slot), content(now, slot)).stream())
                .findFirst();
    }

    private static String content(Turn.Outcome outcome, Slot slot) {
        return outcome.change(slot).map(Change::line).orElse("unchanged");
    }

    private static Optional<Difference> first(Entry entry, String what, String recorded, String replayed) {
        return recorded.equals(replayed)
                ? Optional.empty()
                : Optional.of(new Difference(entry.number(), what, recorded, replayed));
    }

    @Override
    public String toString() {
        return "event " + event + ", " + what + ": recorded \"" + recorded + "\", replayed \"" + replayed + "\"";
    }
}
