package readback.assistant.measure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import readback.assistant.ear.Utterance;
import readback.grammar.Decision;
import readback.grammar.Hypothesis;

/** One value that was measured, as a line of a table: what was said, what was heard and what would have been done. */
public final class Detail {

    /**
     * The columns, tab separated. Utterances are separated by "||", alternatives by "|"; an alternative is its words,
     * its confidence and those of its words, separated by semicolons.
     */
    public static final String HEADER = "file\tspeaker\tnoise\tstep\tsaid\tmeant\toutcome\tdecision\theard";

    private Detail() {}

    static String of(
            Clip clip, String noise, String step, List<Utterance> utterances, String outcome, Decision decision) {
        String heard = utterances.stream()
                .map(utterance -> utterance.alternatives().stream()
                        .map(Detail::alternative)
                        .collect(Collectors.joining("|")))
                .collect(Collectors.joining("||"));
        return String.join(
                "\t",
                clip.file().getFileName().toString(),
                clip.speaker(),
                noise,
                step,
                clip.words(),
                clip.meant().map(Object::toString).orElse(""),
                outcome,
                decision.toString(),
                heard);
    }

    private static String alternative(Hypothesis hypothesis) {
        return hypothesis.words()
                + hypothesis.details().stream()
                        .map(Hypothesis.Word::confidence)
                        .map(Detail::share)
                        .collect(Collectors.joining("", share(hypothesis.confidence()), ""));
    }

    private static String share(double confidence) {
        return String.format(Locale.ROOT, ";%.4f", confidence);
    }
}
