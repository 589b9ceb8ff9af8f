package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.dialogue.Understood;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Decision;
import readback.grammar.Meaning;
import readback.grammar.Reason;

/** The JSON form of what an event was taken to mean, both ways. */
final class Meant {

    private static final Meaning.Cases<ObjectNode> MEANING = new Meaning.Cases<>() {
        @Override
        public ObjectNode values(Meaning.Values values) {
            return readings(Json.kind("values"), values.readings());
        }

        @Override
        public ObjectNode correction(Meaning.Correction correction) {
            return readings(Json.kind("correction"), correction.readings());
        }

        @Override
        public ObjectNode choice(Meaning.Choice choice) {
            return option(Json.kind("choice"), choice);
        }

        @Override
        public ObjectNode choices(Meaning.Choices choices) {
            ObjectNode node = Json.kind("choices");
            ArrayNode array = node.putArray("choices");
            choices.choices().forEach(each -> option(array.addObject(), each));
            return node;
        }

        @Override
        public ObjectNode ordered(Meaning.Ordered ordered) {
            ObjectNode node =
                    Json.kind("order").put("command", ordered.command().name());
            ordered.about().ifPresent(quantity -> node.put("about", quantity.name()));
            return node;
        }

        @Override
        public ObjectNode note(Meaning.Note note) {
            return Json.kind("note").put("words", note.words());
        }

        @Override
        public ObjectNode saturationQuestion(Meaning.SaturationQuestion question) {
            ObjectNode node = Json.kind("saturation");
            node.set("pressure", Json.write(question.pressure()));
            return node;
        }

        @Override
        public ObjectNode probeNamed(Meaning.ProbeNamed named) {
            return Json.kind("probe-named")
                    .put("probe", named.number())
                    .put("measures", named.quantity().name());
        }

        @Override
        public ObjectNode mentioned(Meaning.Mentioned mentioned) {
            return option(Json.kind("mentioned"), mentioned.of());
        }

        @Override
        public ObjectNode notUnderstood(Meaning.NotUnderstood reason) {
            ObjectNode node = Json.kind("not-understood").put("where", reason.where());
            node.set("why", reason(reason.why()));
            return node;
        }
    };

    private static final Understood.Cases<ObjectNode> WRITTEN = new Understood.Cases<>() {
        @Override
        public ObjectNode occurrence(Understood.Occurrence occurrence) {
            return Json.kind("occurrence").put("what", occurrence.name());
        }

        @Override
        public ObjectNode elapsed(Understood.Elapsed elapsed) {
            return Json.kind("elapsed").put("timer", elapsed.timer());
        }

        @Override
        public ObjectNode clockChanged(Understood.ClockChanged changed) {
            return Json.kind("clock-changed").put("by", changed.by().toString());
        }

        @Override
        public ObjectNode meant(Understood.Meant meant) {
            ObjectNode node = Json.kind("meant");
            node.set("meaning", meant.words().fold(MEANING));
            return node;
        }

        @Override
        public ObjectNode between(Understood.Between between) {
            ObjectNode node = Json.kind("between");
            ArrayNode candidates = node.putArray("candidates");
            between.candidates().forEach(each -> candidates.add(each.fold(MEANING)));
            return node;
        }

        @Override
        public ObjectNode ignored(Understood.Ignored ignored) {
            return Json.kind("ignored").put("why", ignored.why().name());
        }
    };

    private Meant() {}

    static ObjectNode write(Understood understood) {
        return understood.fold(WRITTEN);
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

    private static ObjectNode reason(Reason reason) {
        ObjectNode node = Json.kind(reason.kind().name());
        if (!reason.words().isEmpty()) {
            ArrayNode words = node.putArray("words");
            reason.words().forEach(words::add);
        }
        reason.about().ifPresent(about -> node.put("about", about.name()));
        return reason.readings().isEmpty() ? node : readings(node, reason.readings());
    }

    /** A reason; records of the schemas before the fourth kept the sentence that was said. */
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

    /** Why words were passed over; records of the schemas before the fourth kept a sentence. */
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
            case "choice" -> choice(node);
            case "choices" -> {
                List<Meaning.Choice> choices = new ArrayList<>();
                node.path("choices").forEach(each -> choices.add(choice(each)));
                yield new Meaning.Choices(choices);
            }
            case "order" ->
                new Meaning.Ordered(
                        Command.valueOf(RecordJson.text(node, "command")),
                        Optional.ofNullable(node.get("about"))
                                .map(JsonNode::asText)
                                .map(Quantity::valueOf));
            case "note" -> new Meaning.Note(RecordJson.text(node, "words"));
            case "saturation" -> new Meaning.SaturationQuestion(Json.read(node.path("pressure"), Reading.class));
            case "probe-named" ->
                new Meaning.ProbeNamed(node.path("probe").asInt(), Quantity.valueOf(RecordJson.text(node, "measures")));
            case "mentioned" -> new Meaning.Mentioned(choice(node));
            case "not-understood" ->
                new Meaning.NotUnderstood(RecordJson.text(node, "where"), reason(node.path("why")));
            default -> throw new IllegalArgumentException("no meaning is a \"" + kind + "\"");
        };
    }

    private static ObjectNode option(ObjectNode node, Meaning.Choice choice) {
        return node.put("choice", choice.choice()).put("option", choice.option());
    }

    private static Meaning.Choice choice(JsonNode node) {
        return new Meaning.Choice(RecordJson.text(node, "choice"), RecordJson.text(node, "option"));
    }

    private static ObjectNode readings(ObjectNode node, List<Reading> readings) {
        ArrayNode array = node.putArray("readings");
        readings.forEach(each -> array.add(Json.write(each)));
        return node;
    }

    private static List<Reading> readings(JsonNode node) {
        List<Reading> readings = new ArrayList<>();
        node.path("readings").forEach(each -> readings.add(Json.read(each, Reading.class)));
        return readings;
    }
}
