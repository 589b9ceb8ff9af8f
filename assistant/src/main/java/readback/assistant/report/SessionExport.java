package readback.assistant.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.archive.Summary;
import readback.assistant.archive.SummaryLine;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.replay.WorkDone;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Slot;

/**
 * A session for other programs, from its record alone: who, where and on what, the last reading of every slot, every
 * verdict that was announced, every movement of refrigerant, and every part that was put in. As one line of JSON, or as
 * rows of a table.
 */
public final class SessionExport {

    /** The columns of the table. */
    public static final List<String> COLUMNS = List.of(
            "session",
            "started",
            "customer",
            "place",
            "appliance",
            "technician",
            "tablet",
            "event",
            "at",
            "kind",
            "name",
            "content",
            "value",
            "unit",
            "si_value",
            "si_unit",
            "cylinder");

    private final Summary summary;
    private final Map<Slot, Stated> readings = new LinkedHashMap<>();
    private final List<Reached> reached = new ArrayList<>();
    private final ChargeMoves moves;
    private final WorkDone work = new WorkDone();

    /** The last reading of a slot. */
    public record Stated(Entry entry, Figure figure) {}

    /** An outcome when it was announced. */
    public record Reached(Entry entry, JobOutcome outcome) {}

    private SessionExport(Summary summary, RecordedSession session) {
        this.summary = summary;
        this.moves = new ChargeMoves(session.header().about());
        List<JobOutcome> standing = List.of();
        for (Entry entry : session.entries()) {
            moves.follow(entry);
            work.follow(entry);
            entry.outcome()
                    .changes()
                    .forEach(change -> change.after()
                            .flatMap(Content::reading)
                            .ifPresentOrElse(
                                    reading -> readings.put(
                                            change.slot(),
                                            new Stated(
                                                    entry,
                                                    Figure.of(change.slot().id(), reading))),
                                    () -> readings.remove(change.slot())));
            List<JobOutcome> known = standing;
            entry.outcome().standing().stream()
                    .filter(outcome -> !known.contains(outcome))
                    .forEach(outcome -> reached.add(new Reached(entry, outcome)));
            standing = entry.outcome().standing();
        }
    }

    /** What is exported of a session. */
    public static SessionExport of(Summary summary, RecordedSession session) {
        return new SessionExport(summary, session);
    }

    /** The last reading of every slot, in the order in which the slots were filled first. */
    public List<Stated> readings() {
        return List.copyOf(readings.values());
    }

    /** Every verdict that was announced, in order. */
    public List<Reached> verdicts() {
        return List.copyOf(reached);
    }

    /** Every movement of refrigerant, in order. */
    public List<ChargeMoves.Move> moves() {
        return moves.moves();
    }

    /**
     * One line of JSON: that of {@link SummaryLine} with {@code readings} ({@code event}, {@code name}, {@code value},
     * {@code unit}, {@code si}, {@code si_unit}), {@code verdicts} ({@code event}, {@code at}, {@code judged},
     * {@code verdict}, {@code line}) and {@code moves} ({@code event}, {@code at}, {@code direction}, {@code kg},
     * {@code cylinder}).
     */
    public String line() {
        return SummaryLine.of(summary, line -> {
            ArrayNode stated = line.putArray("readings");
            readings.values().forEach(each -> reading(stated.addObject(), each));
            ArrayNode verdicts = line.putArray("verdicts");
            reached.forEach(each -> verdicts.addObject()
                    .put("event", each.entry().number())
                    .put("at", each.entry().event().at().toString())
                    .put("judged", ConstantName.of(each.outcome().judged()))
                    .put("verdict", each.outcome().name())
                    .put("line", each.outcome().line()));
            ArrayNode moved = line.putArray("moves");
            moves.moves()
                    .forEach(each -> moved.addObject()
                            .put("event", each.event())
                            .put("at", each.at().toString())
                            .put("direction", ConstantName.of(each.movement().direction()))
                            .put(
                                    "kg",
                                    new BigDecimal(Figure.of("", each.amount()).siNumber()))
                            .put("cylinder", each.cylinder()));
        });
    }

    private static void reading(ObjectNode node, Stated stated) {
        node.put("event", stated.entry().number())
                .put("name", stated.figure().name())
                .put("value", stated.figure().value())
                .put("unit", stated.figure().unit())
                .put("si", new BigDecimal(stated.figure().siNumber()))
                .put("si_unit", stated.figure().siUnit());
    }

    /** Adds a row for every reading, verdict, piece of work and movement to a table with {@link #COLUMNS}. */
    public void rows(Csv csv) {
        readings.values()
                .forEach(each -> row(
                        csv,
                        each.entry().number(),
                        each.entry().event().at().toString(),
                        "reading",
                        each.figure().name(),
                        each.figure().shown(),
                        Optional.of(each.figure()),
                        ""));
        reached.forEach(each -> row(
                csv,
                each.entry().number(),
                each.entry().event().at().toString(),
                "verdict",
                ConstantName.of(each.outcome().judged()),
                each.outcome().line(),
                Optional.empty(),
                ""));
        work.all()
                .forEach(each -> row(
                        csv,
                        each.event(),
                        each.at().toString(),
                        "work",
                        each.content().line(),
                        each.content().line(),
                        Optional.empty(),
                        ""));
        moves.moves().forEach(each -> {
            Figure amount = Figure.of("", each.amount());
            row(
                    csv,
                    each.event(),
                    each.at().toString(),
                    "move",
                    ConstantName.of(each.movement().direction()),
                    amount.shown(),
                    Optional.of(amount),
                    each.cylinder());
        });
    }

    private void row(
            Csv csv,
            int event,
            String at,
            String kind,
            String name,
            String content,
            Optional<Figure> figure,
            String cylinder) {
        csv.row()
                .text(summary.session())
                .text(summary.started().toString())
                .text(summary.customer())
                .text(summary.place())
                .text(summary.appliance())
                .text(summary.technician())
                .text(summary.tablet())
                .number(String.valueOf(event))
                .text(at)
                .text(kind)
                .text(name)
                .text(content)
                .number(figure.map(each -> each.value().toPlainString()).orElse(""))
                .text(figure.map(Figure::unit).orElse(""))
                .number(figure.map(Figure::siNumber).orElse(""))
                .text(figure.map(Figure::siUnit).orElse(""))
                .text(cylinder)
                .end();
    }
}
