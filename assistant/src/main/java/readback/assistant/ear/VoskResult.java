package readback.assistant.ear;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.grammar.Hypothesis;

/**
 * Reads what the recogniser writes.
 *
 * <p>Its alternatives carry unnormalised log scores, larger for better. They become confidences by the softmax at
 * {@link #TEMPERATURE}; alternatives that differ only in the timing of their words are one, with their confidences
 * added. What the recogniser left out of its list is not counted, so a list of one alternative has confidence 1: weigh
 * the confidences of the words as well.
 */
final class VoskResult {
    /**
     * Divides differences of scores. 1 would take the scores for true log probabilities.
     */
    static final double TEMPERATURE = 1.0;

    private static final ObjectMapper JSON = new ObjectMapper();

    private VoskResult() {}

    /**
     * The utterance of two results over the same sound, or nothing when no word was heard.
     *
     * @param alternatives result of a recogniser with alternatives and word times
     * @param words result of a recogniser without alternatives, with word confidences
     */
    static Optional<Utterance> utterance(String alternatives, String words) {
        List<Hypothesis.Word> sure = details(read(words).path("result"));
        Map<String, Double> scores = new LinkedHashMap<>();
        Map<String, List<Hypothesis.Word>> timings = new LinkedHashMap<>();
        for (JsonNode alternative : read(alternatives).path("alternatives")) {
            String text = alternative.path("text").asText().strip();
            double score = alternative.path("confidence").asDouble() / TEMPERATURE;
            scores.merge(text, score, VoskResult::logAdd);
            timings.putIfAbsent(text, details(alternative.path("result")));
        }
        // That nothing was said is a possibility that takes its share, but no hypothesis.
        double best = scores.values().stream().mapToDouble(s -> s).max().orElse(0);
        double total =
                scores.values().stream().mapToDouble(s -> Math.exp(s - best)).sum();
        List<Hypothesis> hypotheses = new ArrayList<>();
        scores.forEach((text, score) -> {
            if (!text.isEmpty()) {
                boolean same = text.equals(joined(sure));
                hypotheses.add(new Hypothesis(text, Math.exp(score - best) / total, same ? sure : List.of()));
            }
        });
        hypotheses.sort((a, b) -> Double.compare(b.confidence(), a.confidence()));
        if (hypotheses.isEmpty()) {
            return Optional.empty();
        }
        List<Hypothesis.Word> times = timings.getOrDefault(hypotheses.get(0).words(), List.of());
        double start = times.isEmpty() ? 0 : times.get(0).start();
        double end = times.isEmpty() ? start : times.get(times.size() - 1).end();
        return Optional.of(new Utterance(hypotheses, start, end));
    }

    /** The words of a partial result. */
    static String partial(String result) {
        return read(result).path("partial").asText().strip();
    }

    private static double logAdd(double a, double b) {
        return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
    }

    private static String joined(List<Hypothesis.Word> words) {
        return String.join(" ", words.stream().map(Hypothesis.Word::word).toList());
    }

    private static List<Hypothesis.Word> details(JsonNode result) {
        List<Hypothesis.Word> words = new ArrayList<>();
        for (JsonNode word : result) {
            words.add(new Hypothesis.Word(
                    word.path("word").asText(),
                    Math.min(1, Math.max(0, word.path("conf").asDouble(0))),
                    word.path("start").asDouble(),
                    word.path("end").asDouble()));
        }
        return words;
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("The recogniser wrote something that is not JSON: " + json, e);
        }
    }
}
