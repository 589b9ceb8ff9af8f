package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import readback.assistant.dialogue.Assessment;
import readback.assistant.dialogue.State;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.charge.Judgement;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.checklist.Judged;

/**
 * A session's result as one JSON object. Temperatures and differences in degrees Fahrenheit, pressures in psig, other
 * values in the quantity's usual unit, all as plain numbers; what is not known is null. The verdict is the one that was
 * announced and still stands: what was worked out and never said is none.
 */
final class Result {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Result() {}

    static String json(State state, boolean complete) {
        Assessment assessment = state.assessment();
        Optional<JobOutcome> announced = state.announced(Judged.CHARGE).filter(said -> state.told(Judged.CHARGE));
        ObjectNode result = JSON.createObjectNode();
        Optional<Judgement> judgement = assessment.judgement();
        text(result, "method", judgement.map(each -> ConstantName.of(each.method())));
        text(result, "refrigerant", assessment.refrigerant().map(Refrigerant::designation));
        text(
                result,
                "meteringDevice",
                assessment.system().map(SystemUnderTest::meteringDevice).map(ConstantName::of));
        ObjectNode readings = result.putObject("readings");
        assessment.readings().asMap().forEach((quantity, reading) -> readings.put(camel(quantity), usual(reading)));
        number(
                result,
                "evaporatingSaturation",
                judgement.flatMap(Judgement::evaporatingSaturation).map(Result::fahrenheit));
        number(
                result,
                "condensingSaturation",
                judgement.flatMap(Judgement::condensingSaturation).map(Result::fahrenheit));
        estimate(result, "superheat", judgement.flatMap(Judgement::superheat));
        estimate(result, "subcooling", judgement.flatMap(Judgement::subcooling));
        number(result, "target", judgement.flatMap(Judgement::target).map(target -> fahrenheit(target.value())));
        text(
                result,
                "targetSource",
                judgement.flatMap(Judgement::target).map(target -> ConstantName.of(target.source())));
        text(result, "verdict", announced.map(JobOutcome::name));
        result.put("borderline", announced.filter(JobOutcome::borderline).isPresent());
        text(
                result,
                "valve",
                judgement
                        .flatMap(Judgement::valveCheck)
                        .map(check -> ConstantName.of(check.superheat().position())));
        ArrayNode cautions = result.putArray("cautions");
        judgement.ifPresent(each -> each.cautions().forEach(caution -> cautions.add(ConstantName.of(caution.rule()))));
        ArrayNode contradictions = result.putArray("contradictions");
        judgement.ifPresent(
                each -> each.contradictions().forEach(found -> contradictions.add(ConstantName.of(found.kind()))));
        ArrayNode conditions = result.putArray("failedConditions");
        judgement.ifPresent(
                each -> each.conditions().forEach(failed -> conditions.add(ConstantName.of(failed.condition()))));
        ArrayNode missing = result.putArray("missing");
        judgement.ifPresent(each -> each.missing().forEach(quantity -> missing.add(camel(quantity))));
        result.put("complete", complete);
        return result.toString();
    }

    private static void estimate(ObjectNode node, String field, Optional<Estimate> estimate) {
        number(node, field, estimate.map(each -> fahrenheit(each.value())));
        number(node, field + "Uncertainty", estimate.map(each -> fahrenheit(each.expandedUncertainty())));
    }

    private static void text(ObjectNode node, String field, Optional<String> value) {
        node.put(field, value.orElse(null));
    }

    private static void number(ObjectNode node, String field, Optional<BigDecimal> value) {
        node.put(field, value.orElse(null));
    }

    private static BigDecimal usual(Reading reading) {
        return reading.unit() == reading.quantity().usualUnit()
                ? reading.value()
                : rounded(reading.in(reading.quantity().usualUnit()));
    }

    private static BigDecimal fahrenheit(Temperature temperature) {
        return rounded(temperature.fahrenheit());
    }

    private static BigDecimal fahrenheit(TemperatureDifference difference) {
        return rounded(difference.fahrenheit());
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    }

    /** SUCTION_PRESSURE as suctionPressure. */
    static String camel(Enum<?> constant) {
        StringBuilder camel = new StringBuilder();
        for (String word : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
            camel.append(camel.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return camel.toString();
    }
}
