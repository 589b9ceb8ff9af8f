package readback.assistant.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Delivery;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.Tutor;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.caution.CautionRule;
import readback.calc.measurement.Limits;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.JobId;

/**
 * The JSON form of header and entries, both ways. A line that cannot be read gives an {@link IllegalArgumentException}.
 */
final class RecordJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private RecordJson() {}

    static String header(Header header) {
        ObjectNode line = JSON.createObjectNode();
        line.put("type", "header");
        line.put("schema", header.schema());
        line.put("readback", header.program());
        line.put("session", header.session());
        line.put("startedAt", header.startedAt().toString());
        header.zone().ifPresent(zone -> line.put("zone", zone.getId()));
        ObjectNode parts = line.putObject("parts");
        new TreeMap<>(header.parts()).forEach(parts::put);
        if (!header.about().isEmpty()) {
            ObjectNode about = line.putObject("about");
            header.about().forEach(about::put);
        }
        line.put("prev", Chain.START);
        return write(line);
    }

    static Header header(JsonNode line) {
        if (!"header".equals(line.path("type").asText())) {
            throw new IllegalArgumentException("the first line is no header");
        }
        int schema = line.path("schema").asInt();
        if (schema < EarlierSchemas.FIRST || schema > Header.SCHEMA) {
            throw new IllegalArgumentException("schema " + schema + " is not known to this version");
        }
        return new Header(
                schema,
                text(line, "session"),
                Instant.parse(text(line, "startedAt")),
                Optional.ofNullable(line.get("zone")).map(JsonNode::asText).map(ZoneId::of),
                text(line, "readback"),
                texts(line.path("parts")),
                texts(line.path("about")));
    }

    static String entry(Entry entry, String previousHash) {
        ObjectNode line = JSON.createObjectNode();
        line.put("type", "event");
        line.put("n", entry.number());
        line.put("at", entry.event().at().toString());
        line.set("event", entry.event().fold(EVENT));
        ObjectNode outcome = line.putObject("outcome");
        outcome.set("understood", Meant.write(entry.outcome().understood()));
        ArrayNode changes = outcome.putArray("changes");
        entry.outcome().changes().forEach(change -> changes.add(Json.write(change)));
        ArrayNode standing = outcome.putArray("standing");
        entry.outcome().standing().forEach(each -> standing.add(Json.write(each)));
        ArrayNode cautions = outcome.putArray("cautions");
        entry.outcome().cautions().forEach(rule -> cautions.add(ConstantName.of(rule)));
        entry.said().forEach(line.putArray("said")::add);
        if (!entry.spoken().isEmpty()) {
            entry.spoken().forEach(line.putArray("spoken")::add);
        }
        entry.audio()
                .ifPresent(audio ->
                        line.putObject("audio").put("file", audio.file()).put("sha256", audio.sha256()));
        if (entry.closed()) {
            line.put("closed", true);
        }
        line.put("prev", previousHash);
        return write(line);
    }

    static Entry entry(JsonNode line) {
        JsonNode outcome = line.path("outcome");
        return new Entry(
                line.path("n").asInt(),
                event(line.path("event"), Instant.parse(text(line, "at"))),
                new Turn.Outcome(
                        understood(outcome.get("understood")),
                        changes(outcome.path("changes")),
                        standing(outcome),
                        cautions(outcome.path("cautions"))),
                strings(line.path("said")),
                strings(line.path("spoken")),
                line.path("closed").asBoolean(),
                Optional.ofNullable(line.get("audio"))
                        .map(audio -> new AudioClip(text(audio, "file"), text(audio, "sha256"))));
    }

    private static Understood understood(@Nullable JsonNode node) {
        if (node == null) {
            throw new IllegalArgumentException("\"understood\" is missing");
        }
        return node.isTextual() ? EarlierSchemas.understood(node.asText()) : Meant.read(node);
    }

    private static List<Change> changes(JsonNode node) {
        List<Change> changes = new ArrayList<>();
        if (node.isObject()) {
            node.properties()
                    .forEach(field -> changes.add(EarlierSchemas.change(
                            field.getKey(), field.getValue().asText())));
        } else {
            node.forEach(each -> changes.add(Json.read(each, Change.class)));
        }
        return changes;
    }

    private static List<CautionRule> cautions(JsonNode node) {
        return strings(node).stream()
                .map(name -> ConstantName.find(CautionRule.class, name)
                        .orElseThrow(() -> new IllegalArgumentException("no caution: \"" + name + "\"")))
                .toList();
    }

    private static List<JobOutcome> standing(JsonNode outcome) {
        if (outcome.has("verdict")) {
            return EarlierSchemas.outcomes(text(outcome, "verdict"));
        }
        List<JobOutcome> standing = new ArrayList<>();
        outcome.path("standing").forEach(each -> standing.add(Json.read(each, JobOutcome.class)));
        return standing;
    }

    /** The hash of the line before, as this line states it. */
    static String previous(JsonNode line) {
        return line.path("prev").asText();
    }

    private static final Event.Cases<ObjectNode> EVENT = new Event.Cases<>() {
        @Override
        public ObjectNode started(Event.Started started) {
            ObjectNode node = Json.kind("started");
            node.set("settings", settings(started.settings()));
            return node;
        }

        @Override
        public ObjectNode heard(Event.Heard heard) {
            ObjectNode node = Json.kind("heard").put("source", heard.source().name());
            ArrayNode hypotheses = node.putArray("hypotheses");
            heard.hypotheses().forEach(each -> hypotheses.add(hypothesis(each)));
            return node;
        }

        @Override
        public ObjectNode timerElapsed(Event.TimerElapsed elapsed) {
            return Json.kind("timer").put("timer", elapsed.timer());
        }

        @Override
        public ObjectNode deviceLost(Event.DeviceLost lost) {
            return Json.kind("device-lost").put("device", lost.device());
        }

        @Override
        public ObjectNode deviceFound(Event.DeviceFound found) {
            return Json.kind("device-found").put("device", found.device());
        }

        @Override
        public ObjectNode clockChanged(Event.ClockChanged changed) {
            return Json.kind("clock-changed").put("by", changed.by().toString());
        }

        @Override
        public ObjectNode measured(Event.Measured measured) {
            ObjectNode node = Json.kind("measured");
            ArrayNode reports = node.putArray("reports");
            measured.reports().forEach(report -> reports.add(Json.write(report)));
            return node;
        }

        @Override
        public ObjectNode resumed(Event.Resumed resumed) {
            return Json.kind("resumed");
        }

        @Override
        public ObjectNode ended(Event.Ended ended) {
            return Json.kind("ended");
        }
    };

    private static Event event(JsonNode node, Instant at) {
        String kind = text(node, "kind");
        return switch (kind) {
            case "started" -> new Event.Started(at, settings(node.path("settings")));
            case "heard" -> {
                List<Hypothesis> hypotheses = new ArrayList<>();
                node.path("hypotheses").forEach(each -> hypotheses.add(hypothesis(each)));
                yield new Event.Heard(at, Event.Source.valueOf(text(node, "source")), hypotheses);
            }
            case "timer" -> new Event.TimerElapsed(at, text(node, "timer"));
            case "device-lost" -> new Event.DeviceLost(at, text(node, "device"));
            case "device-found" -> new Event.DeviceFound(at, text(node, "device"));
            case "clock-changed" -> new Event.ClockChanged(at, Duration.parse(text(node, "by")));
            case "measured" -> {
                List<ProbeReport> reports = new ArrayList<>();
                node.path("reports").forEach(each -> reports.add(Json.read(each, ProbeReport.class)));
                yield new Event.Measured(at, reports);
            }
            case "resumed" -> new Event.Resumed(at);
            case "ended" -> new Event.Ended(at);
            default -> throw new IllegalArgumentException("an event of the unknown kind " + kind);
        };
    }

    private static ObjectNode hypothesis(Hypothesis hypothesis) {
        ObjectNode node = JSON.createObjectNode();
        node.put("words", hypothesis.words());
        node.put("confidence", hypothesis.confidence());
        if (!hypothesis.details().isEmpty()) {
            ArrayNode details = node.putArray("details");
            hypothesis
                    .details()
                    .forEach(word -> details.addObject()
                            .put("word", word.word())
                            .put("confidence", word.confidence())
                            .put("start", word.start())
                            .put("end", word.end()));
        }
        return node;
    }

    private static Hypothesis hypothesis(JsonNode node) {
        List<Hypothesis.Word> details = new ArrayList<>();
        node.path("details")
                .forEach(word -> details.add(new Hypothesis.Word(
                        text(word, "word"),
                        word.path("confidence").asDouble(),
                        word.path("start").asDouble(),
                        word.path("end").asDouble())));
        return new Hypothesis(text(node, "words"), node.path("confidence").asDouble(), details);
    }

    private static ObjectNode settings(SessionSettings settings) {
        ObjectNode node = JSON.createObjectNode();
        node.put("job", settings.job().id());
        node.put("pressureUnit", settings.units().pressure().name());
        node.put("temperatureUnit", settings.units().temperature().name());
        node.put("brief", settings.brief());
        for (Reading known : settings.known()) {
            ObjectNode reading = known.quantity() == Quantity.ALTITUDE
                    ? node.putObject("altitude")
                    : node.withArray("instruments")
                            .addObject()
                            .put("quantity", known.quantity().name());
            reading.put("value", known.value()).put("unit", known.unit().name());
        }
        node.put("limits", settings.limits().name());
        settings.refrigerant().ifPresent(refrigerant -> node.put("refrigerant", refrigerant));
        settings.technician().ifPresent(technician -> node.put("technician", technician));
        settings.site().ifPresent(site -> node.put("site", site));
        settings.understood().stream()
                .sorted()
                .forEach(rule -> node.withArray("understood").add(rule.name()));
        if (!settings.delivery().equals(Delivery.PLAIN)) {
            node.putObject("delivery")
                    .put("volume", settings.delivery().volume())
                    .put("speed", settings.delivery().speed());
        }
        if (settings.tutor() != Tutor.GUIDE) {
            node.put("tutor", settings.tutor().name());
        }
        return node;
    }

    private static SessionSettings settings(JsonNode node) {
        return new SessionSettings(
                new JobId(text(node, "job")),
                new UnitSetting(Unit.valueOf(text(node, "pressureUnit")), Unit.valueOf(text(node, "temperatureUnit"))),
                node.path("brief").asBoolean(),
                known(node),
                Limits.valueOf(text(node, "limits")),
                Optional.ofNullable(node.get("refrigerant")).map(JsonNode::asText),
                Optional.ofNullable(node.get("technician")).map(JsonNode::asText),
                Optional.ofNullable(node.get("site")).map(JsonNode::asText),
                cautionsUnderstood(node),
                Optional.ofNullable(node.get("delivery"))
                        .map(delivery -> new Delivery(
                                delivery.path("volume").asInt(),
                                delivery.path("speed").asInt()))
                        .orElse(Delivery.PLAIN),
                Optional.ofNullable(node.get("tutor"))
                        .map(JsonNode::asText)
                        .map(Tutor::valueOf)
                        .orElse(Tutor.GUIDE));
    }

    private static Set<CautionRule> cautionsUnderstood(JsonNode settings) {
        Set<CautionRule> understood = EnumSet.noneOf(CautionRule.class);
        settings.path("understood").forEach(each -> understood.add(CautionRule.valueOf(each.asText())));
        return understood;
    }

    private static List<Reading> known(JsonNode settings) {
        List<Reading> known = new ArrayList<>();
        Optional.ofNullable(settings.get("altitude"))
                .ifPresent(altitude -> known.add(reading(Quantity.ALTITUDE, altitude)));
        settings.path("instruments")
                .forEach(each -> known.add(reading(Quantity.valueOf(text(each, "quantity")), each)));
        return known;
    }

    private static Reading reading(Quantity quantity, JsonNode node) {
        return new Reading(quantity, new BigDecimal(text(node, "value")), Unit.valueOf(text(node, "unit")));
    }

    private static Map<String, String> texts(JsonNode object) {
        Map<String, String> texts = new LinkedHashMap<>();
        object.properties()
                .forEach(field -> texts.put(field.getKey(), field.getValue().asText()));
        return texts;
    }

    private static List<String> strings(JsonNode array) {
        List<String> strings = new ArrayList<>();
        array.forEach(each -> strings.add(each.asText()));
        return strings;
    }

    static String text(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null) {
            throw new IllegalArgumentException("\"" + name + "\" is missing");
        }
        return value.asText();
    }

    static JsonNode read(String line) {
        try {
            return JSON.readTree(line);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not valid JSON: " + e.getOriginalMessage(), e);
        }
    }

    static String write(ObjectNode node) {
        try {
            return JSON.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }
}
