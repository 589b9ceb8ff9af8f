package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * A summary as one line of JSON, the form that is exported and kept in the index. Its columns, in order:
 * {@code session}, {@code started} (ISO 8601, UTC), {@code zone}, {@code minutes}, {@code refrigerant},
 * {@code metering_device}, {@code technician}, {@code appliance}, {@code place}, {@code verdict}, {@code borderline},
 * {@code doubts}, {@code cautions} (array), {@code added_kg}, {@code recovered_kg}, {@code cylinders} (array of
 * {@code cylinder}, {@code added_kg}, {@code recovered_kg}), {@code events}, {@code closed}, {@code hash},
 * {@code fault}.
 */
public final class SummaryLine {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PLACES = 6;

    private SummaryLine() {}

    /** The line, without its end. */
    public static String of(Summary summary) {
        ObjectNode line = JSON.createObjectNode();
        line.put("session", summary.session());
        line.put("started", summary.started().toString());
        line.put("zone", summary.zone().getId());
        line.put("minutes", rounded(summary.minutes()));
        line.put("refrigerant", summary.refrigerant());
        line.put("metering_device", summary.meteringDevice());
        line.put("technician", summary.technician());
        line.put("appliance", summary.appliance());
        line.put("place", summary.place());
        line.put("verdict", summary.verdict());
        line.put("borderline", summary.borderline());
        line.put("doubts", summary.doubts());
        ArrayNode cautions = line.putArray("cautions");
        summary.cautions().forEach(cautions::add);
        line.put("added_kg", rounded(summary.addedKilograms()));
        line.put("recovered_kg", rounded(summary.recoveredKilograms()));
        ArrayNode cylinders = line.putArray("cylinders");
        summary.moves()
                .forEach(moved -> cylinders
                        .addObject()
                        .put("cylinder", moved.cylinder())
                        .put("added_kg", rounded(moved.addedKilograms()))
                        .put("recovered_kg", rounded(moved.recoveredKilograms())));
        line.put("events", summary.events());
        line.put("closed", summary.closed());
        line.put("hash", summary.hash());
        line.put("fault", summary.fault());
        try {
            return JSON.writeValueAsString(line);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    /** @throws IllegalArgumentException for a line that {@link #of} did not make */
    static Summary read(String line) {
        try {
            JsonNode node = JSON.readTree(line);
            List<String> cautions = new ArrayList<>();
            node.path("cautions").forEach(each -> cautions.add(each.asText()));
            List<Summary.Moved> moves = new ArrayList<>();
            node.path("cylinders")
                    .forEach(each -> moves.add(new Summary.Moved(
                            each.path("cylinder").asText(),
                            each.path("added_kg").asDouble(),
                            each.path("recovered_kg").asDouble())));
            return new Summary(
                    text(node, "session"),
                    Instant.parse(text(node, "started")),
                    ZoneId.of(text(node, "zone")),
                    node.path("minutes").asDouble(),
                    text(node, "refrigerant"),
                    text(node, "metering_device"),
                    text(node, "technician"),
                    text(node, "appliance"),
                    text(node, "place"),
                    text(node, "verdict"),
                    node.path("borderline").asBoolean(),
                    node.path("doubts").asInt(),
                    cautions,
                    moves,
                    node.path("events").asInt(),
                    node.path("closed").asBoolean(),
                    text(node, "hash"),
                    text(node, "fault"));
        } catch (JsonProcessingException | RuntimeException e) {
            throw new IllegalArgumentException("no summary: " + line, e);
        }
    }

    private static String text(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null) {
            throw new IllegalArgumentException("\"" + name + "\" is missing");
        }
        return value.asText();
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_UP);
    }
}
