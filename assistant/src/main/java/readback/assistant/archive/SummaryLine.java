package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import readback.assistant.dialogue.outcome.Figure;

/**
 * A summary as one line of JSON, the form that is exported and kept in the index. Its columns, in order:
 * {@code session}, {@code started} (ISO 8601, UTC), {@code zone}, {@code minutes}, {@code refrigerant},
 * {@code metering_device}, {@code technician}, {@code appliance}, {@code place}, {@code customer}, {@code tablet},
 * {@code practice} (empty for real work), {@code full_charge_kg}, {@code verdict}, {@code borderline}, {@code charge},
 * {@code outcomes} (array of {@code judged}, {@code verdict}, {@code borderline}, {@code figures}), {@code doubts},
 * {@code cautions} (array), {@code added_kg}, {@code recovered_kg} (null when nobody said), {@code cylinders} (array of
 * {@code cylinder}, {@code added_kg}, {@code recovered_kg}), {@code leak_test}, {@code work} (array), {@code events},
 * {@code closed}, {@code hash}, {@code fault}.
 */
public final class SummaryLine {

    private static final ObjectMapper JSON = new ObjectMapper()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false);
    private static final int PLACES = 6;

    private SummaryLine() {}

    /** The line, without its end. */
    public static String of(Summary summary) {
        return of(summary, any -> {});
    }

    /**
     * The line with further fields.
     *
     * @param further adds them behind the others
     */
    public static String of(Summary summary, Consumer<ObjectNode> further) {
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
        line.put("customer", summary.customer());
        line.put("tablet", summary.tablet());
        line.put("practice", summary.practice());
        line.put(
                "full_charge_kg",
                summary.fullChargeKilograms().isPresent()
                        ? rounded(summary.fullChargeKilograms().getAsDouble())
                        : null);
        line.put("verdict", summary.verdict());
        line.put("borderline", summary.borderline());
        line.put("charge", summary.charge());
        ArrayNode outcomes = line.putArray("outcomes");
        summary.outcomes().forEach(outcome -> outcome(outcomes.addObject(), outcome));
        line.put("doubts", summary.doubts());
        ArrayNode cautions = line.putArray("cautions");
        summary.cautions().forEach(cautions::add);
        line.put("added_kg", summary.addedSaid() ? rounded(summary.addedKilograms()) : null);
        line.put("recovered_kg", summary.recoveredSaid() ? rounded(summary.recoveredKilograms()) : null);
        ArrayNode cylinders = line.putArray("cylinders");
        summary.moves()
                .forEach(moved -> cylinders
                        .addObject()
                        .put("cylinder", moved.cylinder())
                        .put("added_kg", rounded(moved.addedKilograms()))
                        .put("recovered_kg", rounded(moved.recoveredKilograms())));
        line.put("leak_test", summary.leakTest());
        ArrayNode work = line.putArray("work");
        summary.work().forEach(work::add);
        line.put("events", summary.events());
        line.put("closed", summary.closed());
        line.put("hash", summary.hash());
        line.put("fault", summary.fault());
        further.accept(line);
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
            List<String> work = new ArrayList<>();
            node.path("work").forEach(each -> work.add(each.asText()));
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
                    text(node, "customer"),
                    text(node, "tablet"),
                    node.path("practice").asText(),
                    node.path("full_charge_kg").isNumber()
                            ? OptionalDouble.of(node.path("full_charge_kg").asDouble())
                            : OptionalDouble.empty(),
                    outcomes(node.path("outcomes")),
                    text(node, "charge"),
                    node.path("doubts").asInt(),
                    cautions,
                    moves,
                    text(node, "leak_test"),
                    work,
                    node.path("added_kg").isNumber(),
                    node.path("recovered_kg").isNumber(),
                    node.path("events").asInt(),
                    node.path("closed").asBoolean(),
                    text(node, "hash"),
                    text(node, "fault"));
        } catch (JsonProcessingException | RuntimeException e) {
            throw new IllegalArgumentException("no summary: " + line, e);
        }
    }

    private static void outcome(ObjectNode node, Summary.Outcome outcome) {
        node.put("judged", outcome.judged());
        node.put("verdict", outcome.name());
        node.put("borderline", outcome.borderline());
        ArrayNode figures = node.putArray("figures");
        outcome.figures()
                .forEach(figure -> figures.addObject()
                        .put("name", figure.name())
                        .put("value", figure.value())
                        .put("unit", figure.unit())
                        .put("si", new BigDecimal(figure.siNumber()))
                        .put("si_unit", figure.siUnit()));
    }

    private static List<Summary.Outcome> outcomes(JsonNode array) {
        List<Summary.Outcome> outcomes = new ArrayList<>();
        array.forEach(node -> {
            List<Figure> figures = new ArrayList<>();
            node.path("figures")
                    .forEach(figure -> figures.add(new Figure(
                            text(figure, "name"),
                            new BigDecimal(text(figure, "value")),
                            text(figure, "unit"),
                            figure.path("si").asDouble(),
                            text(figure, "si_unit"))));
            outcomes.add(new Summary.Outcome(
                    text(node, "judged"),
                    text(node, "verdict"),
                    node.path("borderline").asBoolean(),
                    figures));
        });
        return outcomes;
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
