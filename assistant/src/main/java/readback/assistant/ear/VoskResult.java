package readback.assistant.ear;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Comparator;
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
 * added. The confidence of a word is the sum of the confidences of all alternatives that have this word at this time.
 * What the recogniser left out of its list is not counted, so confidences lean high.
 */
final class VoskResult {
    /**
     * Divides differences of scores. 1 takes the scores for true log probabilities; measured to fit the bundled model
     * best: decision 0012.
     */
    private static final double TEMPERATURE = 1.0;

    private static final ObjectMapper JSON = new ObjectMapper();

    private record Timed(String word, double start, double end) {
        boolean same(Timed other) {
            return word.equals(other.word) && start < other.end && other.start < end;
        }
    }

    /** One line of the recogniser's list. */
    private record Alternative(String text, double share, List<Timed> words) {}

    private VoskResult() {}

    /** The utterance of a result with alternatives and word times, or nothing when silence is the likeliest. */
    static Optional<Utterance> utterance(String result) {
        List<Alternative> alternatives = alternatives(read(result).path("alternatives"));
        Map<String, List<Alternative>> byText = new LinkedHashMap<>();
        for (Alternative alternative : alternatives) {
            byText.computeIfAbsent(alternative.text(), text -> new ArrayList<>())
                    .add(alternative);
        }
        List<Hypothesis> hypotheses = byText.values().stream()
                .map(alike -> hypothesis(alike, alternatives))
                .sorted(Comparator.comparingDouble(Hypothesis::confidence).reversed())
                .toList();
        if (hypotheses.isEmpty() || hypotheses.get(0).words().isEmpty()) {
            return Optional.empty();
        }
        // That nothing was said is a possibility that keeps its share, but it is no hypothesis.
        hypotheses = hypotheses.stream().filter(h -> !h.words().isEmpty()).toList();
        List<Hypothesis.Word> words = hypotheses.get(0).details();
        double start = words.isEmpty() ? 0 : words.get(0).start();
        double end = words.isEmpty() ? 0 : words.get(words.size() - 1).end();
        return Optional.of(new Utterance(hypotheses, start, end));
    }

    private static List<Alternative> alternatives(JsonNode list) {
        double best = Double.NEGATIVE_INFINITY;
        for (JsonNode alternative : list) {
            best = Math.max(best, alternative.path("confidence").asDouble());
        }
        double total = 0;
        for (JsonNode alternative : list) {
            total += weight(alternative, best);
        }
        List<Alternative> alternatives = new ArrayList<>();
        for (JsonNode alternative : list) {
            List<Timed> words = new ArrayList<>();
            for (JsonNode word : alternative.path("result")) {
                words.add(new Timed(
                        word.path("word").asText(),
                        word.path("start").asDouble(),
                        word.path("end").asDouble()));
            }
            String text = alternative.path("text").asText().strip();
            alternatives.add(new Alternative(text, weight(alternative, best) / total, words));
        }
        return alternatives;
    }

    private static double weight(JsonNode alternative, double best) {
        return Math.exp((alternative.path("confidence").asDouble() - best) / TEMPERATURE);
    }

    private static Hypothesis hypothesis(List<Alternative> alike, List<Alternative> all) {
        Alternative first = alike.get(0);
        double confidence = alike.stream().mapToDouble(Alternative::share).sum();
        List<Hypothesis.Word> words = first.words().stream()
                .map(word -> new Hypothesis.Word(word.word(), share(word, all), word.start(), word.end()))
                .toList();
        return new Hypothesis(first.text(), Math.min(1, confidence), words);
    }

    private static double share(Timed word, List<Alternative> all) {
        double sum = all.stream()
                .filter(alternative -> alternative.words().stream().anyMatch(word::same))
                .mapToDouble(Alternative::share)
                .sum();
        return Math.min(1, sum);
    }

    /** The words of a partial result. */
    static String partial(String result) {
        return read(result).path("partial").asText().strip();
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("The recogniser wrote something that is not JSON: " + json, e);
        }
    }
}
