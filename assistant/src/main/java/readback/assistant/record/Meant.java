package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Understood;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Meaning;
import readback.grammar.Reason;

/** The JSON form of what an event was taken to mean, both ways. */
final class Meant {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Meant() {}

    static ObjectNode write(Understood understood) {
        ObjectNode node = NODES.objectNode();
        if (understood instanceof Understood.Occurrence occurrence) {
            return node.put("kind", "occurrence").put("what", occurrence.name());
        }
        if (understood instanceof Understood.Elapsed elapsed) {
            return node.put("kind", "elapsed").put("timer", elapsed.timer());
        }
        if (understood instanceof Understood.ClockChanged changed) {
            return node.put("kind", "clock-changed").put("by", changed.by().toString());
        }
        if (understood instanceof Understood.Meant meant) {
            node.put("kind", "meant").set("meaning", meaning(meant.words()));
            return node;
        }
        if (understood instanceof Understood.Between between) {
            ArrayNode candidates = node.put("kind", "between").putArray("candidates");
            between.candidates().forEach(each -> candidates.add(meaning(each)));
            return node;
        }
        return node.put("kind", "ignored")
                .put("why", ((Understood.Ignored) understood).why().name());
    }

    static Understood read(JsonNode node) {
        String kind = RecordJson.text(node, "kind");
        return switch (kind) {
            case "occurrence" -> Understood.Occurrence.valueOf(RecordJson.text(node, "what"));
            case "elapsed" -> new Understood.Elapsed(RecordJson.text(node, "timer"));
            case "clock-changed" -> new Understood.ClockChanged(Duration.parse(RecordJson.text(node, "by")));
            case "meant" -> new Understood.Meant(meaning(node.path("meaning")));
            case "between" -> {
                List<Meaning> candidates = new ArrayList<>();
                node.path("candidates").forEach(each -> candidates.add(meaning(each)));
                yield new Understood.Between(candidates);
            }
            case "ignored" -> new Understood.Ignored(ignorance(RecordJson.text(node, "why")));
            default -> throw new IllegalArgumentException("nothing is understood as \"" + kind + "\"");
        };
    }

    private static ObjectNode meaning(Meaning meaning) {
        ObjectNode node = NODES.objectNode();
        if (meaning instanceof Meaning.Values values) {
            return readings(node.put("kind", "values"), values.readings());
        }
        if (meaning instanceof Meaning.Correction correction) {
            return readings(node.put("kind", "correction"), correction.readings());
        }
        if (meaning instanceof Meaning.Choice choice) {
            return node.put("kind", "choice").put("choice", choice.choice()).put("option", choice.option());
        }
        if (meaning instanceof Meaning.Ordered ordered) {
            node.put("kind", "order").put("command", ordered.command().name());
            ordered.about().ifPresent(quantity -> node.put("about", quantity.name()));
            return node;
        }
        if (meaning instanceof Meaning.Note note) {
            return node.put("kind", "note").put("words", note.words());
        }
        if (meaning instanceof Meaning.SaturationQuestion question) {
            node.put("kind", "saturation").set("pressure", reading(question.pressure()));
            return node;
        }
        Meaning.NotUnderstood reason = (Meaning.NotUnderstood) meaning;
        node.put("kind", "not-understood").put("where", reason.where()).set("why", reason(reason.why()));
        return node;
    }

    private static ObjectNode reason(Reason reason) {
        ObjectNode node = NODES.objectNode().put("kind", reason.kind().name());
        if (!reason.words().isEmpty()) {
            ArrayNode words = node.putArray("words");
            reason.words().forEach(words::add);
        }
        reason.about().ifPresent(about -> node.put("about", about.name()));
        return reason.readings().isEmpty() ? node : readings(node, reason.readings());
    }

    /** A reason; records of the second schema kept the sentence that was said. */
    private static Reason reason(JsonNode node) {
        if (node.isTextual()) {
            return Reason.of(Reason.Kind.RECORDED_SENTENCE, node.asText());
        }
        List<String> words = new ArrayList<>();
        node.path("words").forEach(each -> words.add(each.asText()));
        return new Reason(
                Reason.Kind.valueOf(RecordJson.text(node, "kind")),
                words,
                Optional.ofNullable(node.get("about")).map(JsonNode::asText).map(Quantity::valueOf),
                readings(node));
    }

    /** Why words were passed over; records of the second schema kept a sentence. */
    private static Decision.Ignorance ignorance(String why) {
        for (Decision.Ignorance each : Decision.Ignorance.values()) {
            if (each.name().equals(why)) {
                return each;
            }
        }
        return EarlierSchemas.ignorance(why);
    }

    private static Meaning meaning(JsonNode node) {
        String kind = RecordJson.text(node, "kind");
        return switch (kind) {
            case "values" -> new Meaning.Values(readings(node));
            case "correction" -> new Meaning.Correction(readings(node));
            case "choice" -> new Meaning.Choice(RecordJson.text(node, "choice"), RecordJson.text(node, "option"));
            case "order" ->
                new Meaning.Ordered(
                        Command.valueOf(RecordJson.text(node, "command")),
                        Optional.ofNullable(node.get("about"))
                                .map(JsonNode::asText)
                                .map(Quantity::valueOf));
            case "note" -> new Meaning.Note(RecordJson.text(node, "words"));
            case "saturation" -> new Meaning.SaturationQuestion(reading(node.path("pressure")));
            case "not-understood" ->
                new Meaning.NotUnderstood(RecordJson.text(node, "where"), reason(node.path("why")));
            default -> throw new IllegalArgumentException("no meaning is a \"" + kind + "\"");
        };
    }

    private static ObjectNode readings(ObjectNode node, List<Reading> readings) {
        ArrayNode array = node.putArray("readings");
        readings.forEach(each -> array.add(reading(each)));
        return node;
    }

    private static List<Reading> readings(JsonNode node) {
        List<Reading> readings = new ArrayList<>();
        node.path("readings").forEach(each -> readings.add(reading(each)));
        return readings;
    }

    /** The value is text: a spoken "50.70" keeps its digits. */
    private static ObjectNode reading(Reading reading) {
        return NODES.objectNode()
                .put("quantity", reading.quantity().name())
                .put("value", reading.value().toPlainString())
                .put("unit", reading.unit().name());
    }

    private static Reading reading(JsonNode node) {
        return new Reading(
                Quantity.valueOf(RecordJson.text(node, "quantity")),
                new BigDecimal(RecordJson.text(node, "value")),
                Unit.valueOf(RecordJson.text(node, "unit")));
    }
}
