package readback.grammar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.lexicon.Lexicon;

/**
 * Every way to understand a whole utterance as readings: names and numbers in either order, units, several in one
 * breath, corrections inside. A word that has no place refuses the way it is on; nothing is skipped but small words,
 * or, where words nobody knows are let pass, a few of them.
 *
 * <p>Used by one thread, for one call.
 */
final class ValueSearch {

    private static final double NUMBER_FIRST = 0.9;
    private static final double CORRECTED = 0.9;
    private static final double FILLER = 0.97;
    private static final double UNKNOWN_WORD = 0.4;
    /** A word that nobody knows is let pass; whatever comes of it has to be confirmed. */
    private static final double LET_PASS = 0.4;

    private static final int MOST_LET_PASS = 5;

    private static final Set<Item.Word> MEANS_LITTLE =
            EnumSet.of(Item.Word.LINK, Item.Word.BEHIND, Item.Word.FILLER, Item.Word.TAIL, Item.Word.OVER);
    /** A name that is that of the asked quantity too, or more clearly that of another. */
    private static final double NOT_ASKED = 0.05;
    /** "Dry bulb" for the air outdoors although it is said beside the humidity indoors. */
    private static final double OUTDOORS = 0.05;
    /** A name taken for the number before it although another number follows: "ninety five, wet bulb sixty seven". */
    private static final double NAME_TORN = 0.05;
    /** Ample for every utterance of the phrases; keeps nonsense from branching without end. */
    private static final int MOST_STEPS = 4_000;

    private final ParseChart utterance;
    private final Lexicon lexicon;
    private final Troubles troubles;
    private final Amounts amounts;
    private final NumberPairs pairs;
    private final LineDisambiguation sides;
    private final int mayPass;
    private final List<Reading> readings = new ArrayList<>(4);
    private final List<LineDisambiguation.Naming> namings = new ArrayList<>(4);
    private final Ways found;
    private int steps;
    private int passed;
    private boolean correcting;

    /** @param found where the meanings are added */
    ValueSearch(ParseChart utterance, Lexicon lexicon, Troubles troubles, Ways found) {
        this(utterance, lexicon, troubles, found, 0);
    }

    /** Finds readings among a few words that nobody knows, too. */
    static Ways amongOtherWords(ParseChart utterance, Lexicon lexicon) {
        Ways found = new Ways();
        new ValueSearch(utterance, lexicon, new Troubles(utterance), found, MOST_LET_PASS).search();
        return found;
    }

    private ValueSearch(ParseChart utterance, Lexicon lexicon, Troubles troubles, Ways found, int mayPass) {
        this.found = found;
        this.mayPass = mayPass;
        this.utterance = utterance;
        this.lexicon = lexicon;
        this.troubles = troubles;
        this.amounts = new Amounts(utterance, troubles);
        this.pairs = new NumberPairs(utterance);
        this.sides = new LineDisambiguation(utterance, lexicon.quantities());
    }

    /** Finds each meaning with the score of its most natural way. */
    void search() {
        explore(0, 1, false);
    }

    /**
     * Goes on at a place.
     *
     * @param replacing whether a correction was just said, so that the next reading replaces an earlier one
     */
    private void explore(int at, double score, boolean replacing) {
        if (steps++ > MOST_STEPS) {
            return;
        }
        if (at == utterance.length()) {
            if (!readings.isEmpty() && !replacing) {
                emit(score);
            }
            return;
        }
        small(at, score, replacing);
        named(at, score, replacing);
        numberFirst(at, score, replacing);
        twoNumbers(at, score, replacing);
        letPass(at, score, replacing);
        troubles.strange(at);
    }

    /** Passes over a word that means nothing anywhere, or a small one that has no place here. */
    private void letPass(int at, double score, boolean replacing) {
        if (passed < mayPass && meansNothing(at)) {
            passed++;
            explore(at + 1, score * LET_PASS, replacing);
            passed--;
        }
    }

    private boolean meansNothing(int at) {
        ParseChart.Match[] matches = utterance.matches(at);
        return utterance.number(at).isEmpty()
                && (matches.length == 0
                        || Arrays.stream(matches)
                                .anyMatch(match -> match.item() instanceof Item.Small small
                                        && MEANS_LITTLE.contains(small.word())));
    }

    /** "Suction is bouncing around one eighteen": the number behind words that are let pass. */
    private void namedFarther(int at, ParseChart.Match match, Item.Name name, double score, boolean replacing) {
        int place = match.end();
        while (place < utterance.length() && place - match.end() <= mayPass - passed && meansNothing(place)) {
            place++;
        }
        int between = place - match.end();
        if (between > 0 && between <= mayPass - passed && place < utterance.length()) {
            passed += between;
            for (Amounts.Amount amount : amounts.of(clear(name), place)) {
                take(amount, naming(at, match, name, amount), score * weight(at, match, name) * LET_PASS, replacing);
            }
            passed -= between;
        }
    }

    private void emit(double score) {
        Meaning meaning = correcting ? new Meaning.Correction(readings) : new Meaning.Values(readings);
        // a correction speaks of what was said before, whatever is asked now
        double share = correcting ? 1 : sides.share(readings, namings);
        boolean indoors = indexOf(Quantity.RELATIVE_HUMIDITY) >= 0 || indexOf(Quantity.RETURN_WET_BULB) >= 0;
        if (indoors && indexOf(Quantity.OUTDOOR_TEMPERATURE) >= 0 && indexOf(Quantity.RETURN_DRY_BULB) < 0) {
            boolean outdoors = utterance.saysAny(lexicon.smallWords("outdoors"))
                    || utterance.expectation().asks(Quantity.OUTDOOR_TEMPERATURE);
            share *= outdoors ? 1 : OUTDOORS;
        }
        if (share > 0) {
            found.add(meaning, score * share);
        }
    }

    private void small(int at, double score, boolean replacing) {
        if (utterance.word(at).equals(Vocabulary.UNKNOWN)) {
            boolean touchesNumber = (at > 0 && utterance.number(at - 1).isPresent())
                    || (at + 1 < utterance.length() && utterance.number(at + 1).isPresent());
            if (touchesNumber) {
                troubles.unheard(at);
            } else {
                explore(at + 1, score * UNKNOWN_WORD, replacing);
            }
            return;
        }
        for (ParseChart.Match match : utterance.matches(at)) {
            if (!(match.item() instanceof Item.Small item)) {
                continue;
            }
            switch (item.word()) {
                case FILLER -> explore(match.end(), score * FILLER, replacing);
                case CORRECTION, CHANGE -> correct(match.end(), item.word(), score, replacing);
                case INSTEAD -> instead(match.end(), score, replacing);
                default -> {}
            }
        }
    }

    private void correct(int end, Item.Word word, double score, boolean replacing) {
        if (replacing) {
            return;
        }
        if (!readings.isEmpty()) {
            if (word == Item.Word.CORRECTION) {
                explore(end, score * CORRECTED, true);
            }
        } else if (!correcting || word == Item.Word.CHANGE) {
            boolean before = correcting;
            correcting = true;
            explore(end, score, false);
            correcting = before;
        }
    }

    /** "Sixty eight, not sixty seven": the value that it replaces. */
    private void instead(int end, double score, boolean replacing) {
        if (readings.isEmpty() || replacing) {
            return;
        }
        Quantity quantity = readings.get(readings.size() - 1).quantity();
        boolean before = correcting;
        correcting = true;
        for (Amounts.Amount amount : amounts.of(new Item.Name(lexicon.words(quantity), 1, false), end)) {
            explore(amount.end(), score, false);
        }
        correcting = before;
    }

    private void named(int at, double score, boolean replacing) {
        for (ParseChart.Match match : utterance.matches(at)) {
            if (match.item() instanceof Item.Name name) {
                for (int place : utterance.afterOptional(match.end(), Item.Word.LINK)) {
                    for (Amounts.Amount amount : amounts.of(clear(name), place)) {
                        take(amount, naming(at, match, name, amount), score * weight(at, match, name), replacing);
                    }
                }
                namedFarther(at, match, name, score, replacing);
            }
        }
    }

    /** A name that can mean several quantities means the one that was asked for. */
    private double weight(int at, ParseChart.Match match, Item.Name name) {
        if (asked(name)) {
            return 1;
        }
        for (ParseChart.Match other : utterance.matches(at)) {
            boolean clearlyAnother = other.end() == match.end()
                    && other.item() instanceof Item.Name rival
                    && !rival.unitOnly()
                    && (asked(rival) || rival.weight() > name.weight());
            if (clearlyAnother) {
                return name.weight() * NOT_ASKED;
            }
        }
        return name.weight();
    }

    /** And then it needs no unit: at "liquid line size?" "liquid line three eighths" is a size. */
    private Item.Name clear(Item.Name name) {
        return name.unitOnly() && asked(name) ? new Item.Name(name.words(), 1, false) : name;
    }

    private boolean asked(Item.Name name) {
        return utterance.expectation().asks(name.words().quantity());
    }

    private void numberFirst(int at, double score, boolean replacing) {
        List<Integer> ends = amounts.ends(at);
        if (ends.isEmpty()) {
            return;
        }
        for (int end : ends) {
            beforeName(at, end, score, replacing);
        }
        Optional<Quantity> quantity = unnamed(replacing);
        if (quantity.isEmpty()) {
            troubles.unnamed(at, ends.get(0));
            return;
        }
        for (Amounts.Amount amount : amounts.of(new Item.Name(lexicon.words(quantity.get()), 1, false), at)) {
            take(amount, Optional.of(LineDisambiguation.Naming.PLAIN), score, replacing);
        }
    }

    /**
     * "one eighteen over three forty", "one eighteen and three forty": what is read together and told apart by size.
     */
    private void twoNumbers(int at, double score, boolean replacing) {
        // "between one ten and one twenty" is no pair
        if (replacing || correcting || passed > 0) {
            return;
        }
        for (NumberPairs.Pair pair : pairs.at(at)) {
            Reading one = pair.one();
            Reading other = pair.other();
            if (indexOf(one.quantity()) < 0 && indexOf(other.quantity()) < 0) {
                readings.add(one);
                readings.add(other);
                namings.add(LineDisambiguation.Naming.PLAIN);
                namings.add(LineDisambiguation.Naming.PLAIN);
                explore(pair.end(), score * pair.natural(), false);
                for (int i = 0; i < 2; i++) {
                    namings.remove(namings.size() - 1);
                    readings.remove(readings.size() - 1);
                }
            }
        }
    }

    /** The quantity that a number without a name is of. */
    private Optional<Quantity> unnamed(boolean replacing) {
        if (replacing) {
            return Optional.of(readings.get(readings.size() - 1).quantity());
        }
        Expectation expectation = utterance.expectation();
        return correcting ? expectation.last().or(expectation::quantity) : expectation.quantity();
    }

    /** "one eighteen psi on the suction", "six ounces added". */
    private void beforeName(int at, int end, double score, boolean replacing) {
        for (int place : utterance.afterOptional(end, Item.Word.BEHIND)) {
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Name name) {
                    double natural = score
                            * NUMBER_FIRST
                            * weight(place, match, name)
                            * (numberAfter(match.end()) ? NAME_TORN : 1);
                    for (Amounts.Amount amount : amounts.of(clear(name), at)) {
                        boolean nameIsUnit = place == end && amount.end() > end && amount.end() <= match.end();
                        if (amount.end() == end || nameIsUnit) {
                            take(
                                    new Amounts.Amount(
                                            amount.reading(), match.end(), amount.natural(), amount.unitSaid()),
                                    naming(place, match, name, amount),
                                    natural,
                                    replacing);
                        }
                    }
                }
            }
        }
    }

    /** Whether a number follows that has no name of its own behind it. */
    private boolean numberAfter(int end) {
        for (int place : utterance.afterOptional(end, Item.Word.LINK)) {
            if (utterance.number(place).isPresent()
                    && amounts.ends(place).stream().noneMatch(this::nameAfter)) {
                return true;
            }
        }
        return false;
    }

    private boolean nameAfter(int end) {
        for (int place : utterance.afterOptional(end, Item.Word.BEHIND)) {
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Name) {
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<LineDisambiguation.Naming> naming(
            int at, ParseChart.Match match, Item.Name name, Amounts.Amount amount) {
        return correcting && name.unitOnly() && !amount.unitSaid()
                ? Optional.empty()
                : sides.naming(at, match, name, amount);
    }

    /** Goes on with a reading; not where its name does not mean it. */
    private void take(
            Amounts.Amount amount, Optional<LineDisambiguation.Naming> naming, double before, boolean replacing) {
        if (naming.isEmpty()) {
            return;
        }
        Reading reading = amount.reading();
        double score = before * amount.natural();
        int same = indexOf(reading.quantity());
        if (replacing) {
            if (same < 0) {
                troubles.correctsNothing(amount.end(), lexicon.words(reading.quantity()));
                return;
            }
            Reading replaced = readings.set(same, reading);
            explore(amount.end(), score, false);
            readings.set(same, replaced);
        } else if (same >= 0) {
            troubles.twice(amount.end(), lexicon.words(reading.quantity()));
        } else {
            readings.add(reading);
            namings.add(naming.get());
            explore(amount.end(), score, false);
            namings.remove(namings.size() - 1);
            readings.remove(readings.size() - 1);
        }
    }

    private int indexOf(Quantity quantity) {
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).quantity() == quantity) {
                return i;
            }
        }
        return -1;
    }
}
