package readback.grammar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import readback.calc.quantity.Reading;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.NumberParser;

/**
 * How far the words that were heard so far are from being all that is said, judged by what they mean at a step: "one
 * one" is no usual suction pressure, but "one one eight" is, so more will come. Immutable and safe for any thread.
 */
public final class Completion {

    /** How much of an utterance has been said. */
    public enum Extent {
        /** It is the beginning of something and nothing by itself: "suction", "one one". */
        BEGUN,
        /**
         * It is a usual value, and one more word would make another one of it: "sixty". Or it is none, and one more
         * word would make a value of it that is rare: "three zero" of a discharge temperature.
         */
        MAY_GO_ON,
        /** It is a value to which only decimals can be added: "sixty two". */
        MAY_GET_DECIMALS,
        /** Nothing is expected after it. */
        WHOLE
    }

    /** Of how natural the words are, a way to understand them has this part at least, or it is not meant. */
    private static final double MEANT = 0.5;

    private static final List<String> NUMBER_WORDS = numberWords();

    private static final List<String> DECIMALS = List.of("point five");

    private static final int ANY = -1;

    private final PhraseCompletion phrases;
    private final Function<String, List<Interpretation>> understanding;
    private final Predicate<Reading> usual;
    private final Predicate<Reading> possible;

    private Completion(
            PhraseCompletion phrases,
            Function<String, List<Interpretation>> understanding,
            Predicate<Reading> usual,
            Predicate<Reading> possible) {
        this.phrases = phrases;
        this.understanding = understanding;
        this.usual = usual;
        this.possible = possible;
    }

    /** Judged by the phrases alone, where they belong to no step. */
    public static Completion ofPhrases(Collection<String> phrases) {
        return new Completion(new PhraseCompletion(phrases), words -> List.of(), reading -> false, reading -> false);
    }

    /** Judged by the phrases of the step and by what words mean at it. */
    static Completion ofStep(Grammar grammar, Collection<String> phrases, Expectation expectation) {
        return new Completion(
                new PhraseCompletion(phrases),
                words -> grammar.understand(words, expectation),
                stated(grammar, QuantityWords::isUsual),
                stated(grammar, QuantityWords::canBe));
    }

    private static Predicate<Reading> stated(Grammar grammar, BiPredicate<QuantityWords, Reading> value) {
        return reading -> {
            QuantityWords words = grammar.lexicon().words(reading.quantity());
            return value.test(words, reading) && words.isStatedSoFinely(reading);
        };
    }

    /**
     * How much of an utterance these words are.
     *
     * @param words as the recogniser has them, in lower case, separated by single spaces
     */
    public Extent of(String words) {
        // talk of others is not waited for
        if (words.endsWith(Vocabulary.UNKNOWN)) {
            return Extent.WHOLE;
        }
        List<Interpretation> ways = understanding.apply(words);
        int values = ways.isEmpty() ? 0 : ways.get(0).meaning().readings().size();
        if (values == 0) {
            boolean understood = ways.stream().anyMatch(way -> way.meaning().understood());
            boolean begun = phrases.open(words) || (!understood && makes(usual, words, NUMBER_WORDS, ANY, 0));
            return begun ? Extent.BEGUN : Extent.WHOLE;
        }
        double natural = ways.get(0).score();
        boolean isUsual = isOne(usual, ways, values, natural);
        boolean makesUsual = makes(usual, words, NUMBER_WORDS, values, natural);
        if (!isUsual && makesUsual) {
            return Extent.BEGUN;
        }
        // what is not usual and makes nothing usual may still be rare
        Predicate<Reading> such = isUsual ? usual : possible;
        boolean hasDecimals =
                ways.get(0).meaning().readings().get(values - 1).value().scale() > 0;
        if (makesUsual || (!isUsual && makes(possible, words, NUMBER_WORDS, values, natural))) {
            return hasDecimals ? Extent.MAY_GET_DECIMALS : Extent.MAY_GO_ON;
        }
        return makes(such, words, DECIMALS, values, natural) ? Extent.MAY_GET_DECIMALS : Extent.WHOLE;
    }

    /** Whether one of these, said next, makes such a value of the last one. */
    private boolean makes(Predicate<Reading> such, String words, List<String> next, int values, double natural) {
        return next.stream().anyMatch(more -> isOne(such, understanding.apply(words + ' ' + more), values, natural));
    }

    /**
     * Whether one of the ways to understand the words that are natural enough has so many values, and the last one is
     * such.
     */
    private boolean isOne(Predicate<Reading> such, List<Interpretation> ways, int values, double natural) {
        return ways.stream().filter(way -> way.score() > MEANT * natural).anyMatch(way -> {
            List<Reading> readings = way.meaning().readings();
            boolean asMany = values == ANY ? !readings.isEmpty() : readings.size() == values;
            return asMany && such.test(readings.get(readings.size() - 1));
        });
    }

    private static List<String> numberWords() {
        List<String> words = new ArrayList<>(NumberParser.cardinals());
        // what begins with a single digit may need two more
        words.addAll(List.of("zero zero", "five zero", "five five"));
        return List.copyOf(words);
    }
}
