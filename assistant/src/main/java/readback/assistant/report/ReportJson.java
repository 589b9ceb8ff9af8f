package readback.assistant.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.record.About;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.session.Build;
import readback.calc.charge.Judgement;
import readback.calc.measurement.Estimate;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RefrigerantBalance.Direction;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;

/**
 * A report as one JSON object: {@code session}, {@code startedAt}, {@code zone}, {@code program}, {@code parts},
 * {@code about}, {@code hash}, {@code closed}, {@code verified}, {@code fault}, {@code difference},
 * {@code byAnotherVersion}, {@code reportedWith}, {@code refrigerant}, {@code meteringDevice}, {@code answers},
 * {@code rounds}, {@code results}, {@code moves}, {@code addedKg}, {@code recoveredKg}, {@code leakTest}, {@code work},
 * {@code cautions}, {@code doubts}, {@code notes}, {@code remarks}. Temperature differences are in kelvins, masses in
 * kilograms, moments in ISO 8601; what is not known, or was not said, is null.
 */
public final class ReportJson {

    private static final int PLACES = 4;

    private ReportJson() {}

    /** The object, indented. */
    public static String of(JobReport report) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("session", report.session().header().session());
        node.put("startedAt", report.session().header().startedAt().toString());
        node.put("zone", report.session().header().zone().map(ZoneId::getId).orElse(null));
        node.put("program", report.session().header().program());
        ObjectNode parts = node.putObject("parts");
        new java.util.TreeMap<>(report.session().header().parts()).forEach(parts::put);
        ObjectNode about = node.putObject("about");
        About.ALL.forEach(name -> report.about(name).ifPresent(value -> about.put(name, value)));
        node.put("hash", report.session().hash());
        node.put("closed", report.session().closed());
        node.put("verified", report.verification().identical());
        node.put("fault", report.verification().fault().map(Object::toString).orElse(null));
        node.put(
                "difference",
                report.verification().difference().map(Object::toString).orElse(null));
        node.put("byAnotherVersion", report.verification().byAnotherVersion());
        node.put("reportedWith", Build.ofThisProgram().name());
        node.put(
                "refrigerant", report.last().refrigerant().map(Object::toString).orElse(null));
        node.put(
                "meteringDevice",
                report.last()
                        .system()
                        .map(system -> system.meteringDevice().name())
                        .orElse(null));
        answers(node.putArray("answers"), report);
        rounds(node.putArray("rounds"), report);
        ArrayNode results = node.putArray("results");
        report.results().forEach(result -> {
            ObjectNode each = results.addObject();
            each.put("event", result.event())
                    .put("at", result.at().toString())
                    .put("judged", ConstantName.of(result.outcome().judged()))
                    .put("verdict", result.outcome().name())
                    .put("borderline", result.outcome().borderline())
                    .put("outcome", result.outcome().line());
            figures(each.putArray("figures"), result.figures());
        });
        ArrayNode moves = node.putArray("moves");
        report.moves().moves().forEach(move -> move(moves.addObject(), move));
        node.put(
                "addedKg",
                report.moves().said(Direction.IN)
                        ? rounded(report.moves().balance().added().kilograms())
                        : null);
        node.put(
                "recoveredKg",
                report.moves().said(Direction.OUT)
                        ? rounded(report.moves().balance().recovered().kilograms())
                        : null);
        node.put(
                "leakTest",
                report.answer(Slots.LEAK_TEST)
                        .filter(Content.Option.class::isInstance)
                        .map(Content::line)
                        .orElse(null));
        ArrayNode work = node.putArray("work");
        report.work()
                .forEach(told -> work.addObject()
                        .put("event", told.event())
                        .put("at", told.at().toString())
                        .put("what", told.content().line()));
        ArrayNode cautions = node.putArray("cautions");
        report.cautions().forEach(line -> {
            ObjectNode caution = cautions.addObject();
            caution.put("name", ConstantName.of(line.rule()))
                    .put("event", line.event())
                    .put("needed", line.needed());
            if (line.acknowledged().isPresent()) {
                caution.put("acknowledged", line.acknowledged().getAsInt());
            } else {
                caution.putNull("acknowledged");
            }
        });
        ArrayNode doubts = node.putArray("doubts");
        report.doubts().forEach(doubt -> {
            ObjectNode each = doubts.addObject();
            each.put("event", doubt.event())
                    .put("understood", doubt.understood().line())
                    .put("answer", doubt.answer());
            ArrayNode heard = each.putArray("heard");
            doubt.heard().forEach(heard::add);
        });
        ArrayNode notes = node.putArray("notes");
        report.notes()
                .forEach(note -> notes.addObject().put("event", note.event()).put("words", note.words()));
        ArrayNode remarks = node.putArray("remarks");
        report.remarks()
                .all()
                .forEach(remark -> remarks.addObject()
                        .put("at", remark.at().toString())
                        .put("by", remark.by())
                        .put("text", remark.text())
                        .put("about", remark.about()));
        return node.toPrettyString();
    }

    private static void answers(ArrayNode answers, JobReport report) {
        report.answers().forEach(line -> {
            ObjectNode answer = answers.addObject();
            answer.put("slot", line.slot().id())
                    .put("content", line.content().map(Content::line).orElse(""));
            Optional<Reading> reading = line.content().flatMap(Content::reading).map(Reading::inOneUnit);
            answer.put("value", reading.map(Reading::value).orElse(null));
            answer.put("unit", reading.map(each -> each.unit().symbol()).orElse(null));
            answer.put(
                    "si",
                    reading.map(each -> Figure.of(line.slot().id(), each))
                            .map(Figure::siNumber)
                            .map(BigDecimal::new)
                            .orElse(null));
            answer.put(
                    "siUnit",
                    reading.map(each -> Figure.of(line.slot().id(), each))
                            .map(Figure::siUnit)
                            .orElse(null));
            answer.put("event", line.event()).put("confirmed", line.confirmed());
            line.content()
                    .flatMap(Content::probe)
                    .ifPresent(probe -> answer.putObject("probe")
                            .put("number", probe.probe())
                            .put("channel", probe.channel())
                            .put("raw", probe.raw())
                            .put("measuredAt", probe.measuredAt().toString()));
            ArrayNode earlier = answer.putArray("earlier");
            line.earlier()
                    .forEach(each -> earlier.addObject()
                            .put("event", each.event())
                            .put("content", each.content().line()));
        });
    }

    private static void rounds(ArrayNode rounds, JobReport report) {
        report.rounds().forEach(round -> {
            Judgement judgement = round.judgement();
            ObjectNode node = rounds.addObject();
            node.put("event", round.event()).put("at", round.at().toString());
            node.put("method", judgement.method().name())
                    .put("verdict", round.outcome().name());
            node.put("borderline", judgement.verdict().borderline());
            estimate(node, "superheat", judgement.superheat());
            estimate(node, "subcooling", judgement.subcooling());
            node.put(
                    "targetK",
                    judgement.target().map(target -> rounded(target.value())).orElse(null));
            node.put(
                    "targetSource",
                    judgement.target().map(target -> target.source().name()).orElse(null));
            figures(
                    node.putArray("figures"),
                    round.outcome().figures(report.settings().units()));
            node.put("recorded", round.outcome().line());
        });
    }

    private static void figures(ArrayNode array, List<Figure> figures) {
        figures.forEach(figure -> array.addObject()
                .put("name", figure.name())
                .put("value", figure.value())
                .put("unit", figure.unit())
                .put("si", new BigDecimal(figure.siNumber()))
                .put("siUnit", figure.siUnit()));
    }

    private static void estimate(ObjectNode node, String name, Optional<Estimate> estimate) {
        node.put(name + "K", estimate.map(each -> rounded(each.value())).orElse(null));
        node.put(
                name + "UncertaintyK",
                estimate.map(each -> rounded(each.expandedUncertainty())).orElse(null));
    }

    private static void move(ObjectNode node, ChargeMoves.Move move) {
        node.put("event", move.event()).put("at", move.at().toString());
        node.put("direction", move.movement().direction().name());
        node.put("kg", rounded(move.movement().amount().kilograms()));
        node.put("cylinder", move.cylinder());
    }

    private static BigDecimal rounded(TemperatureDifference difference) {
        return rounded(difference.kelvins());
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(PLACES, java.math.RoundingMode.HALF_UP);
    }
}
