package readback.grammar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Number words that the bundled model takes for each other, measured: what was said in how many of the cases in which
 * something was heard. Immutable.
 */
final class Confusions {

    /**
     * Something else that may have been said.
     *
     * @param heard the words of the hypothesis
     * @param said the words that may have been said instead
     * @param share of the cases in which these words were heard, 0 to 1
     */
    record Confusion(List<String> heard, List<String> said, double share) {}

    /**
     * As if words had been heard so many times more, and rightly: what was heard twice and was wrong twice says little
     * of how often it is wrong. Decision 0009.
     */
    private static final double MORE = 10;

    private final Map<String, List<Confusion>> byFirstWord = new HashMap<>();

    Confusions(List<Confusion> confusions) {
        for (Confusion confusion : confusions) {
            byFirstWord
                    .computeIfAbsent(confusion.heard().get(0), word -> new ArrayList<>())
                    .add(confusion);
        }
    }

    /** The table in this module's resources. */
    static Confusions measured() {
        InputStream stream = Confusions.class.getResourceAsStream("confusions.csv");
        if (stream == null) {
            throw new IllegalStateException("the installation is incomplete: confusions.csv is missing");
        }
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<Confusion> confusions = new ArrayList<>();
            List<String> lines =
                    reader.lines().filter(line -> !line.startsWith("#")).toList();
            for (String line : lines.subList(1, lines.size())) {
                String[] fields = line.split(",", -1);
                confusions.add(new Confusion(
                        words(fields[0]),
                        words(fields[1]),
                        Double.parseDouble(fields[2]) / (Double.parseDouble(fields[3]) + MORE)));
            }
            return new Confusions(confusions);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read confusions.csv", e);
        }
    }

    private static List<String> words(String field) {
        return Arrays.asList(field.split(" ", -1));
    }

    /**
     * Another utterance that may have been said.
     *
     * @param share of the cases in which the words were heard, 0 to 1
     */
    record Alternative(String words, double share) {}

    /** Of what was measured, this much remains where the recogniser is sure of a word. */
    private static final double LEAST = 0.2;
    /** From this doubt about a word on, the whole measured share counts. */
    private static final double UNSURE = 0.1;

    /**
     * Every utterance that differs from the heard one by one confusion. The surer the recogniser is of the words in
     * question, the smaller the share.
     */
    List<Alternative> alternatives(Hypothesis hypothesis) {
        return alternatives(hypothesis, true);
    }

    /**
     * The same for a hypothesis that means nothing: something else was said, however sure the recogniser is of its
     * words.
     */
    List<Alternative> instead(Hypothesis hypothesis) {
        return alternatives(hypothesis, false);
    }

    private List<Alternative> alternatives(Hypothesis hypothesis, boolean believed) {
        List<String> words = words(hypothesis.words());
        List<Alternative> alternatives = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            for (Confusion confusion : byFirstWord.getOrDefault(words.get(at), List.of())) {
                int end = at + confusion.heard().size();
                if (end <= words.size() && words.subList(at, end).equals(confusion.heard())) {
                    List<String> said = new ArrayList<>(words.subList(0, at));
                    said.addAll(confusion.said());
                    said.addAll(words.subList(end, words.size()));
                    double doubt = believed ? doubt(hypothesis, at, end) : 1;
                    alternatives.add(new Alternative(String.join(" ", said), confusion.share() * doubt));
                }
            }
        }
        return alternatives;
    }

    private static double doubt(Hypothesis hypothesis, int from, int to) {
        double sure = 1;
        List<Hypothesis.Word> details = hypothesis.details();
        for (int at = from; at < Math.min(to, details.size()); at++) {
            sure = Math.min(sure, details.get(at).confidence());
        }
        return Math.min(1, Math.max(LEAST, (1 - sure) / UNSURE));
    }
}
