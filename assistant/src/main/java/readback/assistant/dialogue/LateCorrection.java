package readback.assistant.dialogue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.calc.plausibility.Grade;
import readback.calc.quantity.Reading;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.LateDecimals;
import readback.grammar.Meaning;

/**
 * What comes in one breath behind a value that was already taken, or asked about: decimals correct it, and it answers
 * no question that takes time to be answered.
 */
final class LateCorrection {

    /** Shorter than any question takes to be said and answered. */
    private static final Duration ONE_BREATH = Duration.ofSeconds(2);

    private LateCorrection() {}

    /**
     * Decimals behind the value that was said last, taken or in doubt, where they make no ordinary value of what was
     * asked next, or came before anybody can have heard the next question: they correct it.
     */
    static Optional<Decision> of(
            Draft draft, Decision weighed, Event.Heard heard, Grammar grammar, Expectation expectation) {
        Optional<Decision.Accept> accepted = weighed.accepted();
        boolean ordinary = accepted.stream()
                .flatMap(accept -> accept.meaning().readings().stream())
                .map(draft.assessment()::grade)
                .anyMatch(Grade.Typical.class::isInstance);
        boolean inOneBreath = inOneBreath(draft, heard);
        Optional<Hypothesis> best = heard.hypotheses().stream().findFirst();
        Optional<Reading> saidLast = draft.conversation()
                .pending()
                .flatMap(Pending::doubted)
                .or(() -> draft.sheet().lastReading());
        if (best.isEmpty() || saidLast.isEmpty() || (ordinary && !inOneBreath) || weighed.ignored()) {
            return Optional.empty();
        }
        if (inOneBreath) {
            return LateDecimals.inOneBreath(grammar, best.get(), saidLast.get(), expectation)
                    .or(() -> accepted.filter(LateCorrection::moved)
                            .map(accept -> new Decision.Accept(accept.meaning(), accept.confidence(), true)))
                    .map(Decision.class::cast);
        }
        boolean doubtful = accepted.map(Decision.Accept::doubtful).orElse(true);
        double confidence = accepted.map(Decision.Accept::confidence).orElse(0.0);
        return LateDecimals.of(best.get().words(), saidLast.get())
                .map(whole -> new Decision.Accept(new Meaning.Correction(List.of(whole)), confidence, doubtful));
    }

    /** Whether it tells that refrigerant was moved, which nobody does within a breath. */
    private static boolean moved(Decision.Accept accept) {
        return accept.meaning() instanceof Meaning.Values values
                && values.readings().stream().map(Reading::quantity).anyMatch(Intake.ADDS_UP::contains);
    }

    /** Whether it was spoken so soon behind the value that was taken last that it answers no further question. */
    private static boolean inOneBreath(Draft draft, Event.Heard heard) {
        return heard.source() == Event.Source.VOICE
                && draft.sheet()
                        .last()
                        .flatMap(History.Edit::after)
                        .filter(given ->
                                Duration.between(given.at(), heard.at()).compareTo(ONE_BREATH) <= 0)
                        .isPresent();
    }
}
