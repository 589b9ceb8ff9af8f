package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.calc.quantity.Reading;
import readback.grammar.Prior.Grade;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.QuantityWords;

/**
 * Weighs the alternatives of one utterance against each other: how likely each was heard, how natural it is to say it so,
 * and whether its values can be. Used by one thread, for one call.
 */
final class Weighing {

    /** Below it a value is taken only after an explicit yes. */
    private static final double SURE = 0.75;
    /** Below it nothing is taken. */
    private static final double HEARD = 0.3;
    /** An alternative value with at least this share of the best one's weight is asked about. */
    private static final double RIVAL = 0.25;

    private static final double UNUSUAL = 0.4;
    /** Ways of saying a value below this are odd enough to ask. */
    private static final double NATURAL = 0.55;

    private static final int MOST_CANDIDATES = 3;

    private final Grammar grammar;
    private final Lexicon lexicon;
    private final Expectation expectation;
    private final Prior prior;

    private record Candidate(Meaning meaning, double weight, double natural, Grade grade) {}

    Weighing(Grammar grammar, Lexicon lexicon, Expectation expectation, Prior prior) {
        this.grammar = grammar;
        this.lexicon = lexicon;
        this.expectation = expectation;
        this.prior = prior;
    }

    Decision decide(List<Hypothesis> hypotheses) {
        List<Hypothesis> said = hypotheses.stream()
                .filter(hypothesis -> !hypothesis.words().isBlank())
                .toList();
        if (said.isEmpty()) {
            return new Decision.Ignore("Nothing was said.");
        }
        if (said.get(0).words().replace(Vocabulary.UNKNOWN, "").isBlank()) {
            return new Decision.Ignore("The words are not in the vocabulary.");
        }
        double total = said.stream().mapToDouble(Hypothesis::confidence).sum();
        Map<Meaning, Candidate> candidates = new LinkedHashMap<>();
        Optional<Meaning.NotUnderstood> refused = Optional.empty();
        for (Hypothesis hypothesis : said) {
            double share = total > 0 ? hypothesis.confidence() / total : 1.0 / said.size();
            List<Interpretation> meanings = grammar.understand(hypothesis.words(), expectation);
            double sum = meanings.stream().mapToDouble(Interpretation::score).sum();
            for (Interpretation meaning : meanings) {
                if (meaning.meaning() instanceof Meaning.NotUnderstood reason) {
                    refused = refused.or(() -> Optional.of(reason));
                } else {
                    add(candidates, meaning, share * meaning.score() / sum);
                }
            }
        }
        return decide(List.copyOf(candidates.values()), weakestWord(said.get(0)), refused);
    }

    private void add(Map<Meaning, Candidate> candidates, Interpretation interpretation, double weight) {
        Meaning meaning = interpretation.meaning();
        Candidate before = candidates.get(meaning);
        candidates.put(
                meaning,
                before == null
                        ? new Candidate(meaning, weight, interpretation.score(), grade(meaning))
                        : new Candidate(
                                meaning,
                                before.weight() + weight,
                                Math.max(before.natural(), interpretation.score()),
                                before.grade()));
    }

    private Decision decide(List<Candidate> all, double weakest, Optional<Meaning.NotUnderstood> refused) {
        List<Candidate> possible = all.stream()
                .filter(candidate -> candidate.grade() != Grade.IMPOSSIBLE)
                .sorted(Comparator.comparingDouble(Weighing::weight).reversed())
                .toList();
        if (possible.isEmpty()) {
            return new Decision.AskAgain(
                    all.isEmpty()
                            ? refused.orElseThrow()
                            : impossible(all.get(0).meaning()));
        }
        Candidate best = possible.get(0);
        List<Meaning> rivals = new ArrayList<>();
        for (Candidate candidate : possible) {
            boolean rival = weight(candidate) >= RIVAL * weight(best)
                    && candidate.meaning().getClass() == best.meaning().getClass();
            if (rival && rivals.size() < MOST_CANDIDATES) {
                rivals.add(candidate.meaning());
            }
        }
        if (rivals.size() > 1) {
            return new Decision.AskBetween(rivals);
        }
        double confidence = Math.min(1, best.weight()) * weakest;
        if (confidence < HEARD) {
            return new Decision.AskAgain(
                    new Meaning.NotUnderstood(words(best), "I could not hear that clearly. Say it again."));
        }
        boolean doubtful = confidence < SURE || best.grade() == Grade.UNUSUAL || best.natural() < NATURAL;
        return new Decision.Accept(best.meaning(), confidence, doubtful);
    }

    private static String words(Candidate candidate) {
        return candidate.meaning().toString();
    }

    private static double weight(Candidate candidate) {
        return candidate.weight() * (candidate.grade() == Grade.UNUSUAL ? UNUSUAL : 1);
    }

    private static double weakestWord(Hypothesis hypothesis) {
        return hypothesis.details().stream()
                .mapToDouble(Hypothesis.Word::confidence)
                .min()
                .orElse(1);
    }

    private Grade grade(Meaning meaning) {
        Grade worst = Grade.TYPICAL;
        for (Reading reading : readings(meaning)) {
            Grade grade = words(reading).canBe(reading) ? prior.of(reading) : Grade.IMPOSSIBLE;
            if (grade.compareTo(worst) > 0) {
                worst = grade;
            }
        }
        return worst;
    }

    private static List<Reading> readings(Meaning meaning) {
        if (meaning instanceof Meaning.Values values) {
            return values.readings();
        }
        return meaning instanceof Meaning.Correction correction ? correction.readings() : List.of();
    }

    private QuantityWords words(Reading reading) {
        QuantityWords words = lexicon.quantities().get(reading.quantity());
        if (words == null) {
            throw new IllegalStateException("no definition of " + reading.quantity());
        }
        return words;
    }

    private Meaning.NotUnderstood impossible(Meaning meaning) {
        for (Reading reading : readings(meaning)) {
            QuantityWords words = words(reading);
            boolean possible = words.canBe(reading);
            if (!possible || prior.of(reading) == Grade.IMPOSSIBLE) {
                String value =
                        reading.value().toPlainString() + " " + reading.unit().symbol();
                String name = words.names().get(0).words();
                String range = possible
                        ? ""
                        : ", only " + limit(words.lowest()) + " to " + limit(words.highest()) + " "
                                + words.lowest().unit().symbol();
                return new Meaning.NotUnderstood(value, "The " + name + " cannot be " + value + range + ".");
            }
        }
        return new Meaning.NotUnderstood("", "That cannot be.");
    }

    private static String limit(Reading reading) {
        BigDecimal value = reading.value();
        return value.toPlainString();
    }
}
