package readback.grammar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.Phrase;
import readback.grammar.number.NumberParser;

/**
 * What words mean in a situation, and what should be listened for in it. Both come from the same definitions, so
 * whatever is listened for is understood.
 *
 * <p>Pure: no clock, no sound, no memory of earlier utterances. Immutable and safe for any thread.
 */
public final class Grammar {

    /** Seconds since the last talk of others where there was none. */
    public static final double NO_TALK = Double.POSITIVE_INFINITY;

    /** Any seed serves; this one is the date of the first phrases. */
    private static final long SEED = 20_261_125;

    /** A second meaning with this share of the first one's score leaves no doubt. */
    private static final double CLEARLY_LESS = 0.2;

    private final Lexicon lexicon;
    private final PhraseTree phrases;
    private final Choices choices;
    private final Confusions confusions = Confusions.measured();

    private Grammar(Lexicon lexicon) {
        this.lexicon = lexicon;
        this.phrases = new PhraseTree(lexicon);
        this.choices = new Choices(lexicon);
    }

    /**
     * The grammar of this module's definitions. Costs some milliseconds: make one and keep it.
     *
     * @throws IllegalStateException if a definition is missing or malformed
     */
    public static Grammar standard() {
        return new Grammar(Lexicon.standard(AcousticModel.bundled().words()));
    }

    /**
     * How often each order that is heard over the voice counts beside unknown speech. What is left of an echo makes
     * orders look like other words, and the voice never was taken for an order. Decision 0019.
     */
    private static final int ORDERS_OVER_VOICE = 64;

    /**
     * Every meaning that the words admit, best first; one {@link Meaning.NotUnderstood} that says where and why if they
     * admit none. Values that cannot be are listed too: {@link #decide} refuses them.
     *
     * @param words as heard or typed; figures, punctuation and capitals are allowed
     */
    public List<Interpretation> understand(String words, Expectation expectation) {
        List<String> tokens = Tokens.of(words, phrases);
        return new Understanding(lexicon, new ParseChart(tokens, expectation, phrases)).interpretations();
    }

    /**
     * The readings among words of which a few are not known, where they can be told without a doubt: "suction gauge
     * there reads one eighteen". Empty where a word may deny them.
     */
    Optional<Interpretation> amongOtherWords(String words, Expectation expectation) {
        ParseChart utterance = new ParseChart(Tokens.of(words, phrases), expectation, phrases);
        if (utterance.saysAny(lexicon.smallWords("deny"))) {
            return Optional.empty();
        }
        List<Interpretation> found =
                ValueSearch.amongOtherWords(utterance, lexicon).ranked();
        boolean clear = found.size() == 1
                || (found.size() > 1
                        && found.get(1).score() < CLEARLY_LESS * found.get(0).score());
        return clear ? Optional.of(found.get(0)) : Optional.empty();
    }

    /**
     * What is listened for while the program itself speaks: the few orders that stop it or answer it, many times, and
     * unknown speech once. All are understood at every step.
     */
    public List<String> ordersOverVoice() {
        List<String> phrases = new ArrayList<>();
        for (Phrase order : lexicon.overVoice()) {
            phrases.addAll(Collections.nCopies(ORDERS_OVER_VOICE, order.words()));
        }
        phrases.add(Vocabulary.UNKNOWN);
        return phrases;
    }

    /**
     * What to do with an utterance: whether it was meant for us at all, its alternatives, how sure the recogniser is of
     * each word, and what can be.
     *
     * @param hypotheses best first
     * @param sinceTalk seconds of quiet between talk that was not meant for us and this utterance; {@link #NO_TALK}
     *     where something else came before it
     */
    public Decision decide(List<Hypothesis> hypotheses, Expectation expectation, Prior prior, double sinceTalk) {
        Decision decision = heard(hypotheses, expectation, prior, sinceTalk);
        // who is asked for a number and says one is never left without an answer
        return decision.ignored()
                        && expectation.quantity().isPresent()
                        && hypotheses.stream().limit(1).anyMatch(Grammar::soundsLikeNumber)
                ? new Decision.AskAgain(Meaning.NotUnderstood.of(Reason.Kind.NUMBER_UNCLEAR))
                : decision.accepted()
                        .filter(accept -> sinceTalk < Acceptance.TALK_NEAR)
                        .filter(accept -> stray(accept.meaning(), expectation))
                        .filter(accept ->
                                hypotheses.stream().limit(1).noneMatch(best -> phrases.holdsName(best.words())))
                        .<Decision>map(accept -> new Decision.Accept(accept.meaning(), accept.confidence(), true))
                        .orElse(decision);
    }

    /** Whether it is values of which none was asked for; whoever corrects one means it. */
    private static boolean stray(Meaning meaning, Expectation expectation) {
        return meaning instanceof Meaning.Values values
                && values.readings().stream()
                        .map(Reading::quantity)
                        .noneMatch(quantity -> expectation.quantity().equals(Optional.of(quantity)));
    }

    /** Whether it holds number words, and not more words that are unknown: those are talk of others. */
    private static boolean soundsLikeNumber(Hypothesis hypothesis) {
        List<String> words = List.of(hypothesis.words().split(" ", -1));
        int numbers = new NumberParser(words).count();
        return numbers > 0 && numbers >= Collections.frequency(words, Vocabulary.UNKNOWN);
    }

    private Decision heard(List<Hypothesis> hypotheses, Expectation expectation, Prior prior, double sinceTalk) {
        Decision decision = new Weighing(this, lexicon, confusions, expectation, prior).decide(hypotheses);
        Acceptance acceptance = Acceptance.of(hypotheses);
        if (decision.ignored() || acceptance.granted(Acceptance.needed(sinceTalk))) {
            return decision;
        }
        return new Decision.Ignore(
                acceptance.granted(Acceptance.LEAST) ? Decision.Ignorance.AMID_TALK : Decision.Ignorance.NOT_FOR_US);
    }

    /** The same where nobody was talking before. */
    public Decision decide(List<Hypothesis> hypotheses, Expectation expectation, Prior prior) {
        return decide(hypotheses, expectation, prior, NO_TALK);
    }

    /** Words that take what a probe offers of a quantity. */
    public String taking(Quantity quantity) {
        List<Phrase> take = lexicon.commandsAbout().getOrDefault(Command.TAKE.name(), List.of());
        return take.get(0).words() + " "
                + lexicon.words(quantity).names().get(0).words();
    }

    /** What to listen for; the same for the same expectation, always. */
    public Vocabulary vocabulary(Expectation expectation) {
        List<String> said = new ArrayList<>();
        for (StepPhrases.Sample sample : samples(expectation, SEED)) {
            said.add(sample.words());
        }
        // the recogniser does not care, but a reader of the list sees more of it this way
        Collections.shuffle(said, new Random(SEED));
        List<String> listenedFor = Vocabulary.withUnknown(said);
        return Vocabulary.of(
                expectation.step(),
                listenedFor,
                Completion.ofStep(this, listenedFor, expectation),
                hypotheses -> doubted(hypotheses, expectation));
    }

    private boolean doubted(List<Hypothesis> hypotheses, Expectation expectation) {
        return decide(hypotheses, expectation, Prior.indifferent())
                .accepted()
                .filter(accept -> !accept.doubtful())
                .isEmpty();
    }

    /** The sets of choices that can be asked for. */
    public Choices choices() {
        return choices;
    }

    /** Phrases of a step with what each means. */
    List<StepPhrases.Sample> samples(Expectation expectation, long seed) {
        return new StepPhrases(lexicon, expectation, seed).samples();
    }

    Lexicon lexicon() {
        return lexicon;
    }
}
