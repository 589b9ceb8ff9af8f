package readback.grammar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;
import readback.grammar.lexicon.Phrase;
import readback.grammar.number.NumberParser;
import readback.grammar.number.SpokenNumber;

/**
 * The words of one utterance and what each place of it can be, found once for all that read it. Used by one thread, for
 * one call.
 */
final class ParseChart {

    /**
     * A phrase of the lexicon at a place.
     *
     * @param end position after its last word
     */
    record Match(Item item, int end) {}

    /**
     * A run of number words at a place.
     *
     * @param values what it is worth as one number, none if it is not one
     * @param end position after its last word
     */
    record NumberAt(List<SpokenNumber.Value> values, int end) {}

    private static final int[] NOWHERE = {};
    private static final Match[] NOTHING = {};

    private final List<String> words;
    private final NumberParser numberWords;
    private final Expectation expectation;
    private final Match[][] matches;
    private final Set<Item.Word> smallWords = EnumSet.noneOf(Item.Word.class);
    /** What was found so far; null where nobody looked. */
    private final @Nullable Optional<NumberAt>[] numbers;

    @SuppressWarnings({"unchecked", "rawtypes"})
    ParseChart(List<String> words, Expectation expectation, PhraseTree phrases) {
        this.words = words;
        this.numberWords = new NumberParser(words);
        this.expectation = expectation;
        this.matches = new Match[words.size() + 1][];
        List<Match> found = new ArrayList<>();
        for (int from = 0; from <= words.size(); from++) {
            find(from, phrases, found);
            matches[from] = found.toArray(NOTHING);
            found.clear();
        }
        this.numbers = new Optional[words.size() + 1];
    }

    private void find(int from, PhraseTree phrases, List<Match> found) {
        PhraseTree.Node node = phrases.root();
        for (int at = from; at < words.size(); at++) {
            node = node.after(words.get(at));
            if (node == null) {
                return;
            }
            for (Item item : node.items()) {
                found.add(new Match(item, at + 1));
                if (item instanceof Item.Small small) {
                    smallWords.add(small.word());
                }
            }
        }
    }

    /** Why the number words of a place are not one number. */
    SpokenNumber.NotANumber refusal(int from, int to) {
        SpokenNumber read = numberWords.read(from, to);
        if (read instanceof SpokenNumber.NotANumber refused) {
            return refused;
        }
        throw new IllegalStateException("a number was refused: " + words(from, to));
    }

    int length() {
        return words.size();
    }

    Expectation expectation() {
        return expectation;
    }

    String word(int at) {
        return words.get(at);
    }

    /** Whether this is one of the words. */
    boolean says(String word) {
        return words.contains(word);
    }

    /** Whether one of these, a word each, is among the words. */
    boolean saysAny(List<Phrase> any) {
        return saysAny(any, 0);
    }

    /** The same among the words from here on. */
    boolean saysAny(List<Phrase> any, int from) {
        List<String> rest = words.subList(from, words.size());
        return any.stream().map(Phrase::words).anyMatch(rest::contains);
    }

    String words(int from, int to) {
        return String.join(" ", words.subList(from, to));
    }

    /** Every phrase that starts at a place, shorter ones first; none at the end. */
    Match[] matches(int from) {
        return matches[from];
    }

    /** Whether a small word of this kind stands anywhere. */
    boolean holds(Item.Word word) {
        return smallWords.contains(word);
    }

    /** The number that starts at a place: the whole run of number words, or nothing if none starts there. */
    Optional<NumberAt> number(int from) {
        Optional<NumberAt> known = numbers[from];
        if (known == null) {
            int end = numberWords.endOfRun(from);
            known = end == from ? Optional.empty() : Optional.of(new NumberAt(numberWords.values(from, end), end));
            numbers[from] = known;
        }
        return known;
    }

    /** The number of the words between two places; nothing if they are not one. */
    Optional<NumberAt> numberBetween(int from, int to) {
        if (from >= to || numberWords.endOfRun(from) < to) {
            return Optional.empty();
        }
        List<SpokenNumber.Value> values = numberWords.values(from, to);
        return values.isEmpty() ? Optional.empty() : Optional.of(new NumberAt(values, to));
    }

    boolean isSmall(Match match, Item.Word word) {
        return match.item() instanceof Item.Small small && small.word() == word;
    }

    /** The places after a small word that starts here, longest first, and this place itself last. */
    int[] afterOptional(int from, Item.Word word) {
        int[] after = after(from, word);
        int[] places = Arrays.copyOf(after, after.length + 1);
        places[after.length] = from;
        return places;
    }

    /** The places after a small word that starts here, longest first. */
    int[] after(int from, Item.Word word) {
        if (!holds(word)) {
            return NOWHERE;
        }
        int small = 0;
        for (Match match : matches(from)) {
            small += isSmall(match, word) ? 1 : 0;
        }
        int[] places = new int[small];
        for (Match match : matches(from)) {
            if (isSmall(match, word)) {
                small--;
                places[small] = match.end();
            }
        }
        return places;
    }

    /** The unit that a unit item means for a quantity, or null if it does not measure it. */
    @Nullable Unit unit(Item item, Item.Name name) {
        Quantity quantity = name.words().quantity();
        if (item instanceof Item.UnitName named) {
            boolean fits = named.unit().dimension() == quantity.dimension()
                    && name.words().units().contains(named.unit());
            return fits ? named.unit() : null;
        }
        boolean degrees = quantity.dimension() == Dimension.TEMPERATURE
                || quantity.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
        return item instanceof Item.DefaultUnit && degrees ? expectation.units().unitOf(quantity) : null;
    }

    static boolean isUnit(Item item) {
        return item instanceof Item.UnitName || item instanceof Item.DefaultUnit;
    }

    /** The unit of a quantity when none is said. */
    Unit unsaidUnit(Quantity quantity) {
        return expectation.units().unitOf(quantity);
    }
}
