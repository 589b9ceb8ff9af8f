package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.number.SpokenNumber;

/**
 * Two numbers in one breath without names: the pressures of both gauges, or dry and wet bulb where one of them is asked
 * for. The larger is the high side, and the dry bulb. Used by one thread, for one call.
 */
final class NumberPairs {

    /** "one eighteen and three forty": less clearly two than with "over". */
    private static final double JOINED_BY_AND = 0.9;

    private static final Set<Quantity> BULBS = Set.of(Quantity.RETURN_WET_BULB, Quantity.RETURN_DRY_BULB);

    /**
     * Two readings.
     *
     * @param end position after the last word
     * @param natural 0 to 1
     */
    record Pair(Reading one, Reading other, int end, double natural) {}

    private final ParseChart utterance;

    NumberPairs(ParseChart utterance) {
        this.utterance = utterance;
    }

    /** The pairs that begin at a place; none where there are not two numbers. */
    List<Pair> at(int from) {
        Optional<ParseChart.NumberAt> run = utterance.number(from);
        if (run.isEmpty()) {
            return List.of();
        }
        List<Pair> pairs = new ArrayList<>(0);
        int end = run.get().end();
        if (!run.get().values().isEmpty()) {
            for (int place : utterance.after(end, Item.Word.OVER)) {
                utterance.number(place).ifPresent(second -> add(run.get(), second, 1, pairs));
            }
            return pairs;
        }
        for (int at = from + 1; at < end - 1; at++) {
            if (utterance.word(at).equals("and")) {
                Optional<ParseChart.NumberAt> first = utterance.numberBetween(from, at);
                Optional<ParseChart.NumberAt> second = utterance.numberBetween(at + 1, end);
                if (first.isPresent() && second.isPresent() && pressures()) {
                    add(first.get(), second.get(), JOINED_BY_AND, pairs);
                }
            }
        }
        return pairs;
    }

    /** "And" joins two pressures only where one of them is asked for. */
    private boolean pressures() {
        Expectation expectation = utterance.expectation();
        return expectation.asks(Quantity.SUCTION_PRESSURE) || expectation.asks(Quantity.LIQUID_PRESSURE);
    }

    private void add(ParseChart.NumberAt first, ParseChart.NumberAt second, double natural, List<Pair> pairs) {
        boolean bulbs =
                utterance.expectation().quantity().filter(BULBS::contains).isPresent();
        Quantity low = bulbs ? Quantity.RETURN_WET_BULB : Quantity.SUCTION_PRESSURE;
        Quantity high = bulbs ? Quantity.RETURN_DRY_BULB : Quantity.LIQUID_PRESSURE;
        int end = end(second.end(), low);
        for (SpokenNumber.Value one : first.values()) {
            for (SpokenNumber.Value other : second.values()) {
                int order = one.value().compareTo(other.value());
                if (order != 0) {
                    boolean rising = order < 0;
                    pairs.add(new Pair(
                            reading(rising ? low : high, one.value()),
                            reading(rising ? high : low, other.value()),
                            end,
                            natural * one.naturalness() * other.naturalness()));
                }
            }
        }
    }

    /** After the unit of the settings, where it is said once for both. */
    private int end(int at, Quantity quantity) {
        int end = at;
        if (at < utterance.length()) {
            for (ParseChart.Match match : utterance.matches(at)) {
                Unit usual = utterance.unsaidUnit(quantity);
                boolean said = match.item() instanceof Item.DefaultUnit
                        || (match.item() instanceof Item.UnitName named && named.unit() == usual);
                end = said ? Math.max(end, match.end()) : end;
            }
        }
        return end;
    }

    private Reading reading(Quantity quantity, BigDecimal value) {
        return new Reading(quantity, value, utterance.unsaidUnit(quantity));
    }
}
