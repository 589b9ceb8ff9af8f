package readback.grammar;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import readback.calc.name.ConstantName;
import readback.grammar.lexicon.Lexicon;

/**
 * Options that are spoken of among other words, where the utterance as a whole is none: cried out, supposed, or only
 * named. Used by one thread, for one call.
 */
final class Mentions {

    /** Words that were found among others. */
    private static final double SPOTTED = 0.6;

    private final Lexicon lexicon;
    private final ParseChart utterance;
    private final Ways found;

    /** @param found where the meanings are added */
    Mentions(Lexicon lexicon, ParseChart utterance, Ways found) {
        this.lexicon = lexicon;
        this.utterance = utterance;
        this.found = found;
    }

    /** "What do i do if my hose leaks": what to do is asked about, nothing has happened. Tells whether it is so. */
    boolean supposed() {
        if (!utterance.holds(Item.Word.SUPPOSE)) {
            return false;
        }
        for (int begin = 0; begin < utterance.length(); begin++) {
            for (int behind : utterance.after(begin, Item.Word.SUPPOSE)) {
                supposed(behind);
            }
        }
        return !found.isEmpty();
    }

    /** What is named first counts, by the longest words for it: a "gas leak" is about gas. */
    private void supposed(int from) {
        for (int at = from; at < utterance.length() && found.isEmpty(); at++) {
            longest(at, this::supposed)
                    .ifPresent(match ->
                            found.add(new Meaning.Mentioned(supposed(match).orElseThrow()), SPOTTED));
        }
    }

    private Optional<Meaning.Choice> supposed(ParseChart.Match match) {
        if (match.item() instanceof Item.Spot spot && spot.anywhere()) {
            return Optional.of(spot.choice());
        }
        return match.item() instanceof Item.Option option && canBeSupposed(option)
                ? Optional.of(option.choice())
                : Optional.empty();
    }

    private boolean canBeSupposed(Item.Option option) {
        return Optional.ofNullable(lexicon.choices().get(option.set()))
                .filter(set -> set.supposed().containsKey(option.option()))
                .isPresent();
    }

    /**
     * A cry for help among words that mean nothing, "my partner got hurt over here", or the one option of what was
     * asked for, "the sticker says r thirty two", "no, the coil is dirty". Not where a word may deny it; whoever asks
     * "what does a piston cost" or "is the filter supposed to be clean" has not said what is there.
     */
    void spotted() {
        boolean asks =
                utterance.after(0, Item.Word.DEFINE).length > 0 || utterance.after(0, Item.Word.INQUIRE).length > 0;
        Set<Meaning.Choice> options = new HashSet<>();
        for (int at = 0; at < utterance.length(); at++) {
            for (ParseChart.Match match : utterance.matches(at)) {
                if (match.item() instanceof Item.Spot spot && !spot.supposed()) {
                    if (utterance.expectation().asks(spot.set())) {
                        options.add(spot.choice());
                    } else if (spot.anywhere()) {
                        found.add(spot.choice(), SPOTTED);
                    }
                } else if (match.item() instanceof Item.Option option && stands(option, at, match.end())) {
                    options.add(option.choice());
                }
            }
        }
        if (found.isEmpty() && options.size() == 1 && !asks) {
            options.stream().filter(this::undenied).forEach(option -> found.add(option, SPOTTED));
        }
    }

    /** Whether nothing denies the option: a yes or no before it says the same as it does. */
    private boolean undenied(Meaning.Choice option) {
        Optional<Command> first = utterance.expectation().isQuestion() ? answerFirst() : Optional.empty();
        return first.map(answer -> option.option().equals(ConstantName.of(answer)) && !denies(1))
                .orElseGet(() -> !denies(0));
    }

    /** A yes or no of one word that begins the utterance. */
    private Optional<Command> answerFirst() {
        return Arrays.stream(utterance.matches(0))
                .filter(match -> match.end() == 1 && match.item() instanceof Item.Order)
                .map(match -> ((Item.Order) match.item()).command())
                .filter(command -> command == Command.YES || command == Command.NO)
                .findFirst();
    }

    /** Whether an option of the asked set stands for itself: "twenty two" in "one twenty two" is part of a number. */
    private boolean stands(Item.Option option, int at, int end) {
        Expectation expectation = utterance.expectation();
        return expectation.asks(option.set())
                && !option.option().equals(Understanding.UNKNOWN)
                && !expectation.isQuestion()
                && expectation.quantity().isEmpty()
                && (at == 0 || utterance.number(at - 1).isEmpty())
                && utterance.number(end).isEmpty();
    }

    /**
     * The one option of a set that is only spoken of, alone or among other words: "pressure test please". Not where a
     * number is said, where a word may deny it, or where it is the name of the value asked for.
     */
    void mentioned() {
        if (denies(0)) {
            return;
        }
        Set<Meaning> options = new HashSet<>();
        int told = 0;
        for (int at = 0; at < utterance.length(); at++) {
            if (utterance.number(at).isPresent()) {
                return;
            }
            int from = at;
            Optional<ParseChart.Match> name = longest(at, match -> mentioned(match, from));
            // "airflow" in "airflow by heat" is no name of its own
            if (name.isPresent() && name.get().end() > told) {
                told = name.get().end();
                options.add(new Meaning.Mentioned(mentioned(name.get(), from).orElseThrow()));
            }
        }
        if (options.size() == 1) {
            options.forEach(meaning -> found.add(meaning, SPOTTED));
        }
    }

    private Optional<Meaning.Choice> mentioned(ParseChart.Match match, int from) {
        return match.item() instanceof Item.Option option && option.mentioned() && !namesAsked(from, match.end())
                ? Optional.of(option.choice())
                : Optional.empty();
    }

    /** Whether these words are a name of the quantity that is asked for. */
    private boolean namesAsked(int from, int to) {
        return Arrays.stream(utterance.matches(from))
                .anyMatch(match -> match.end() == to
                        && match.item() instanceof Item.Name name
                        && utterance.expectation().asks(name.words().quantity()));
    }

    /** The longest words at a place that mean something. */
    private Optional<ParseChart.Match> longest(int at, Function<ParseChart.Match, Optional<Meaning.Choice>> meaning) {
        return Arrays.stream(utterance.matches(at))
                .filter(match -> meaning.apply(match).isPresent())
                .reduce((shorter, longer) -> longer);
    }

    /** Whether a word from here on may turn what is said into its opposite, or was not heard. */
    private boolean denies(int from) {
        return utterance.says(Vocabulary.UNKNOWN) || utterance.saysAny(lexicon.smallWords("deny"), from);
    }
}
