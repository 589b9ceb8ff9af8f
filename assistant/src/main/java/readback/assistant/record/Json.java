package readback.assistant.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.annotation.JsonSerialize;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.math.BigDecimal;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.ProbeValue;
import readback.assistant.dialogue.outcome.AirflowBySplit;
import readback.assistant.dialogue.outcome.ApplicableTest;
import readback.assistant.dialogue.outcome.Capacity;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.Evacuation;
import readback.assistant.dialogue.outcome.FrozenCoil;
import readback.assistant.dialogue.outcome.FunctionalFigures;
import readback.assistant.dialogue.outcome.HeaterAirflow;
import readback.assistant.dialogue.outcome.Heating;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.PressureAtRest;
import readback.assistant.dialogue.outcome.PressureHold;
import readback.assistant.dialogue.outcome.StatedAirflow;
import readback.assistant.dialogue.outcome.ToWeighIn;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Slot;

/**
 * The JSON form of what the dialogue made: its types as they are, a "kind" for each variant, absent parts left out.
 * What the types do not say, as how a variant is called, stands in the mix-ins here, so that the dialogue knows nothing
 * of JSON.
 */
final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DURATIONS_AS_TIMESTAMPS)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.ALWAYS))
            .addMixIn(Slot.class, OfSlot.class)
            .addMixIn(Reading.class, OfReading.class)
            .addMixIn(ProbeValue.class, OfReading.class)
            .addMixIn(Content.class, OfContent.class)
            .addMixIn(JobOutcome.class, OfOutcome.class)
            .addMixIn(ToWeighIn.Amount.class, OfAmount.class)
            .build();

    private Json() {}

    /** A variant of this name, its parts to be filled in. */
    static ObjectNode kind(String name) {
        return MAPPER.createObjectNode().put("kind", name);
    }

    static JsonNode write(Object value) {
        return MAPPER.valueToTree(value);
    }

    /** @throws IllegalArgumentException if the node is no such value, with where and why */
    static <T> T read(JsonNode node, Class<T> type) {
        try {
            return MAPPER.treeToValue(node, type);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e.getOriginalMessage(), e);
        }
    }

    @SuppressWarnings("unused") // read by Jackson
    private interface OfSlot {
        @JsonValue
        String id();
    }

    @SuppressWarnings("unused") // read by Jackson
    private interface OfReading {
        // Nobody calls it: its annotation is read in place of that of a reading.
        @SuppressWarnings("UnusedMethod")
        @JsonSerialize(using = Digits.class)
        BigDecimal value();
    }

    /** A number as text, without an exponent: a spoken "50.70" keeps its digits. */
    private static final class Digits extends StdScalarSerializer<BigDecimal> {

        private static final long serialVersionUID = 1L;

        Digits() {
            super(BigDecimal.class);
        }

        @Override
        public void serialize(BigDecimal value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(value.toPlainString());
        }
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Content.Value.class, name = "value"),
        @JsonSubTypes.Type(value = Content.Option.class, name = "option"),
        @JsonSubTypes.Type(value = Content.Passed.class, name = "passed"),
        @JsonSubTypes.Type(value = Content.Skipped.class, name = "skipped")
    })
    private interface OfContent {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "of")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = ChargeVerdict.class, name = "charge"),
        @JsonSubTypes.Type(value = AirflowBySplit.class, name = "airflow"),
        @JsonSubTypes.Type(value = StatedAirflow.class, name = "airflow-stated"),
        @JsonSubTypes.Type(value = PressureHold.class, name = "pressure-test"),
        @JsonSubTypes.Type(value = Evacuation.class, name = "evacuation"),
        @JsonSubTypes.Type(value = ToWeighIn.class, name = "weigh-in"),
        @JsonSubTypes.Type(value = WeighedIn.class, name = "weighed-in"),
        @JsonSubTypes.Type(value = FunctionalFigures.class, name = "functional-check"),
        @JsonSubTypes.Type(value = PressureAtRest.class, name = "resting-pressure"),
        @JsonSubTypes.Type(value = FrozenCoil.class, name = "frozen-coil"),
        @JsonSubTypes.Type(value = ApplicableTest.class, name = "applicable-test"),
        @JsonSubTypes.Type(value = HeaterAirflow.class, name = "heater-airflow"),
        @JsonSubTypes.Type(value = Capacity.class, name = "capacity"),
        @JsonSubTypes.Type(value = Heating.class, name = "heating")
    })
    private interface OfOutcome {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = ToWeighIn.Amount.Grams.class, name = "grams"),
        @JsonSubTypes.Type(value = ToWeighIn.Amount.UnknownTube.class, name = "unknown-tube"),
        @JsonSubTypes.Type(value = ToWeighIn.Amount.TooMuchForRooms.class, name = "too-much-for-rooms"),
        @JsonSubTypes.Type(value = ToWeighIn.Amount.NothingLeft.class, name = "nothing-left")
    })
    private interface OfAmount {}
}
