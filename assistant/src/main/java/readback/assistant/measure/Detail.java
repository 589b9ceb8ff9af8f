package readback.assistant.measure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import readback.assistant.ear.Utterance;
import readback.calc.name.ConstantName;
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

    static String of(Clip clip, String noise, String step, List<Utterance> heard, String outcome, Decision decision) {
        String meant = clip.meant().map(Object::toString).orElse("");
        return line(
                clip.file().getFileName().toString(),
                clip.speaker(),
                noise,
                step,
                clip.words(),
                meant,
                outcome,
                decision,
                heard);
    }

    /** Of a value that was put together; nobody in particular said it. */
    static String of(Said said, String noise, Attempt attempt) {
        return line(
                "",
                "",
                noise,
                said.expectation().step(),
                said.words(),
                said.name(),
                ConstantName.of(attempt.outcome()),
                attempt.decision(),
                attempt.heard());
    }

    private static String line(
            String file,
            String speaker,
            String noise,
            String step,
            String said,
            String meant,
            String outcome,
            Decision decision,
            List<Utterance> utterances) {
        String heard = utterances.stream()
                .map(utterance -> utterance.alternatives().stream()
                        .map(Detail::alternative)
                        .collect(Collectors.joining("|")))
                .collect(Collectors.joining("||"));
        return String.join("\t", file, speaker, noise, step, said, meant, outcome, decision.toString(), heard);
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
