package readback.assistant.probe;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Sensor Measurement Lists in JSON, RFC 8428: a pack is resolved, so that each record carries what the base fields
 * before it say (section 4.6). Records of text, truth or data are passed over: probes give numbers.
 */
final class SenmlPack {

    /** Times below this are relative to now: section 4.5.3. */
    private static final double RELATIVE = 0x1.0p28;

    /** The version of RFC 8428; a pack of a later one is refused: section 4.4. */
    private static final int VERSION = 10;

    private static final int MOST_RECORDS = 1_000;

    /** Section 4.5.1. */
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9:./_-]*");

    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(4)
                            .maxNumberLength(64)
                            .build())
                    .build())
            .build();

    private SenmlPack() {}

    /**
     * A resolved record.
     *
     * @param unit as it stands there; empty where neither the record nor a base unit names one
     * @param value with the base value added
     * @param time seconds since the epoch, or relative to now below 2^28, negative in the past
     */
    record Item(String name, Optional<String> unit, BigDecimal value, double time) {

        /** How old the value is, in seconds; never negative. */
        double age(double now) {
            return Math.max(0, time < RELATIVE ? -time : now - time);
        }
    }

    /** What the base fields of the records so far say. */
    private static final class Base {
        private String name = "";
        private @Nullable String unit;
        private double time;
        private BigDecimal value = BigDecimal.ZERO;
        private boolean valued;
    }

    /** The numbers in a pack; empty where it is not one of this version. */
    static Optional<List<Item>> read(String line) {
        try {
            JsonNode pack = JSON.readTree(line);
            if (pack == null || !pack.isArray() || pack.size() > MOST_RECORDS) {
                return Optional.empty();
            }
            List<Item> items = new ArrayList<>();
            Base base = new Base();
            for (JsonNode record : pack) {
                if (!take(record, base, items)) {
                    return Optional.empty();
                }
            }
            return Optional.of(items);
        } catch (JsonProcessingException notJson) {
            return Optional.empty();
        }
    }

    /** Takes a record in; false where the pack has to be refused for it. */
    private static boolean take(JsonNode record, Base base, List<Item> items) {
        if (!record.isObject() || mustBeUnderstood(record) || !rebased(record, base)) {
            return false;
        }
        JsonNode name = record.path("n");
        JsonNode unit = record.path("u");
        JsonNode time = record.path("t");
        JsonNode value = record.path("v");
        boolean wellTyped = (name.isMissingNode() || name.isTextual())
                && (unit.isMissingNode() || unit.isTextual())
                && (time.isMissingNode() || time.isNumber())
                && (value.isMissingNode() || value.isNumber());
        String full = base.name + (name.isTextual() ? name.asText() : "");
        if (!wellTyped || !NAME.matcher(full).matches()) {
            return false;
        }
        boolean other = record.has("vs") || record.has("vb") || record.has("vd") || record.has("s");
        boolean number = value.isNumber() || (base.valued && !other);
        if (number) {
            BigDecimal sum = base.value.add(value.isNumber() ? value.decimalValue() : BigDecimal.ZERO);
            items.add(new Item(
                    full,
                    Optional.ofNullable(unit.isTextual() ? unit.asText() : base.unit),
                    sum,
                    base.time + time.asDouble(0)));
        }
        return true;
    }

    /** Takes the base fields in; false where one is none. */
    private static boolean rebased(JsonNode record, Base base) {
        JsonNode version = record.path("bver");
        JsonNode name = record.path("bn");
        JsonNode unit = record.path("bu");
        JsonNode time = record.path("bt");
        JsonNode value = record.path("bv");
        boolean wellTyped = (version.isMissingNode() || (version.isIntegralNumber() && version.asInt() <= VERSION))
                && (name.isMissingNode() || name.isTextual())
                && (unit.isMissingNode() || unit.isTextual())
                && (time.isMissingNode() || time.isNumber())
                && (value.isMissingNode() || value.isNumber());
        if (!wellTyped || tooLarge(value) || tooLarge(record.path("v"))) {
            return false;
        }
        base.name = name.isTextual() ? name.asText() : base.name;
        base.unit = unit.isTextual() ? unit.asText() : base.unit;
        base.time = time.isNumber() ? time.asDouble() : base.time;
        base.value = value.isNumber() ? value.decimalValue() : base.value;
        base.valued |= value.isNumber();
        return true;
    }

    /** Adding numbers of very different size would take more memory than a line is worth. */
    private static boolean tooLarge(JsonNode number) {
        return number.isNumber()
                && (number.isFloatingPointNumber()
                        ? !Double.isFinite(number.asDouble())
                                || Math.abs(number.decimalValue().scale()) > 400
                        : !number.canConvertToLong());
    }

    /** Fields whose names end in an underscore must be understood, and none is: section 4.4. */
    private static boolean mustBeUnderstood(JsonNode record) {
        for (Map.Entry<String, JsonNode> field : record.properties()) {
            if (field.getKey().endsWith("_")) {
                return true;
            }
        }
        return false;
    }
}
