package readback.assistant.replay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import readback.assistant.dialogue.Turn;
import readback.assistant.record.Entry;

/**
 * Where a replayed session first differs from its record.
 *
 * @param event number of the event
 * @param what differs: "meaning", "SUCTION_PRESSURE", "verdict", "cautions", "words"
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
                .or(() -> changes(entry, then.changes(), now.changes()))
                .or(() -> first(
                        entry,
                        "verdict",
                        then.verdict().orElse("none"),
                        now.verdict().orElse("none")))
                .or(() ->
                        first(entry, "cautions", String.join(", ", then.cautions()), String.join(", ", now.cautions())))
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

    private static Optional<Difference> changes(Entry entry, Map<String, String> then, Map<String, String> now) {
        TreeSet<String> slots = new TreeSet<>(then.keySet());
        slots.addAll(now.keySet());
        return slots.stream()
                .flatMap(slot ->
                        first(entry, slot, then.getOrDefault(slot, "unchanged"), now.getOrDefault(slot, "unchanged"))
                                .stream())
                .findFirst();
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
