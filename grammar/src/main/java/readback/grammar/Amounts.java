package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.number.SpokenNumber;

/** The readings that a number with its unit can be, once its quantity is known. Used by one thread, for one call. */
final class Amounts {

    /** The charge of a system is stated in pounds as often as in ounces. */
    private static final double UNIT_MISSED = 0.4;
    /** "three pounds" alone in "three pounds two ounces". */
    private static final double TORN = 0.05;

    /** Only lengths and masses are stated in eighths; elsewhere it was "eight". */
    private static final double EIGHTHS = 0.2;

    private static final Map<Unit, Unit> SMALLER =
            Map.of(Unit.POUND, Unit.OUNCE, Unit.KILOGRAM, Unit.GRAM, Unit.HOUR, Unit.MINUTE, Unit.MINUTE, Unit.SECOND);

    /** Units after which the smaller one need not be said. Nobody says so of grams. */
    private static final Set<Unit> HALF_SAID = Set.of(Unit.POUND, Unit.HOUR, Unit.MINUTE);

    /**
     * A reading of the words from a place on.
     *
     * @param end position after its last word
     * @param natural 0 to 1
     * @param unitSaid false where the unit of the settings is meant
     */
    record Amount(Reading reading, int end, double natural, boolean unitSaid) {}

    private final ParseChart utterance;
    private final Troubles troubles;

    Amounts(ParseChart utterance, Troubles troubles) {
        this.utterance = utterance;
        this.troubles = troubles;
    }

    /** Every reading of a named quantity that the number at a place can be; none if there is no number. */
    List<Amount> of(Item.Name name, int at) {
        Optional<ParseChart.NumberAt> number = utterance.number(at);
        if (number.isEmpty()) {
            return List.of();
        }
        List<Amount> amounts = new ArrayList<>(2);
        for (SpokenNumber.Value value : values(at, number.get())) {
            withUnit(name, value, number.get().end(), amounts);
        }
        return amounts;
    }

    /** Where a number with or without a unit can end that starts at a place. */
    List<Integer> ends(int at) {
        Optional<ParseChart.NumberAt> number = utterance.number(at);
        if (number.isEmpty()) {
            return List.of();
        }
        List<Integer> ends = new ArrayList<>(4);
        int end = number.get().end();
        ends.add(end);
        for (ParseChart.Match match : utterance.matches(end)) {
            if (ParseChart.isUnit(match.item())) {
                add(ends, match.end());
            }
            if (match.item() instanceof Item.UnitName named) {
                Small small = smaller(match.end(), named.unit());
                if (small != null) {
                    add(ends, small.end());
                }
            }
        }
        return ends;
    }

    private static void add(List<Integer> ends, int end) {
        if (!ends.contains(end)) {
            ends.add(end);
        }
    }

    private List<SpokenNumber.Value> values(int at, ParseChart.NumberAt number) {
        if (number.values().isEmpty()) {
            troubles.notANumber(at, number.end());
        }
        return number.values();
    }

    private void withUnit(Item.Name name, SpokenNumber.Value value, int at, List<Amount> amounts) {
        int end = at;
        Unit unit = null;
        boolean foreign = false;
        boolean torn = false;
        for (ParseChart.Match match : utterance.matches(at)) {
            if (!ParseChart.isUnit(match.item())) {
                continue;
            }
            Unit fits = utterance.unit(match.item(), name);
            if (fits != null && match.end() > end) {
                unit = fits;
                end = match.end();
            }
            foreign |= fits == null;
            torn |= match.item() instanceof Item.UnitName said && smaller(match.end(), said.unit()) != null;
        }
        Quantity quantity = name.words().quantity();
        double natural = torn ? value.naturalness() * TORN : value.naturalness();
        if (inEighths(at) && quantity.dimension() != Dimension.LENGTH && quantity.dimension() != Dimension.MASS) {
            natural *= EIGHTHS;
        }
        if (unit != null) {
            amounts.add(new Amount(new Reading(quantity, value.value(), unit), end, natural, true));
            compound(quantity, value, unit, end, amounts);
        } else {
            if (foreign && !name.unitOnly()) {
                troubles.wrongUnit(at, name.words());
            }
            double clear = quantity == Quantity.NAMEPLATE_CHARGE ? natural * UNIT_MISSED : natural;
            Reading reading = new Reading(quantity, value.value(), utterance.unsaidUnit(quantity));
            amounts.add(new Amount(reading, at, clear, false));
        }
    }

    /** Whether the number that ends at a place is a fraction finer than a quarter. */
    private boolean inEighths(int end) {
        String last = utterance.word(end - 1);
        return last.startsWith("eighth") || last.equals("eights") || last.startsWith("sixteenth");
    }

    private record Small(List<SpokenNumber.Value> values, Unit unit, int end) {}

    /**
     * "seven pounds four ounces", "one hour and thirty minutes": pounds stay beside ounces, others are of the smaller
     * unit.
     */
    private void compound(Quantity quantity, SpokenNumber.Value large, Unit unit, int at, List<Amount> amounts) {
        Small small = smaller(at, unit);
        if (small == null) {
            return;
        }
        BigDecimal times =
                BigDecimal.valueOf(Math.round(unit.toBase(1) / small.unit().toBase(1)));
        for (SpokenNumber.Value rest : small.values()) {
            boolean fits = rest.value().signum() >= 0
                    && rest.value().compareTo(times) < 0
                    && large.value().signum() >= 0
                    && large.value().scale() <= 0;
            if (fits) {
                BigDecimal sum = large.value().multiply(times).add(rest.value());
                double natural = large.naturalness() * rest.naturalness();
                amounts.add(new Amount(ofBoth(quantity, sum, small.unit()), small.end(), natural, true));
            }
        }
    }

    /** What was said in a unit and its smaller one, from the number of smaller ones in all. */
    static Reading ofBoth(Quantity quantity, BigDecimal sum, Unit smaller) {
        return smaller == Unit.OUNCE ? Reading.poundsAndOunces(quantity, sum) : new Reading(quantity, sum, smaller);
    }

    /** The number of the next smaller unit that follows a unit, whether or not that unit is said too, or null. */
    private @Nullable Small smaller(int at, Unit unit) {
        Unit smaller = SMALLER.get(unit);
        if (smaller == null || at >= utterance.length()) {
            return null;
        }
        int from = utterance.word(at).equals("and") ? at + 1 : at;
        Optional<ParseChart.NumberAt> number = utterance.number(from);
        if (number.isEmpty() || number.get().values().isEmpty()) {
            return null;
        }
        boolean alone = HALF_SAID.contains(unit);
        for (ParseChart.Match match : utterance.matches(number.get().end())) {
            if (match.item() instanceof Item.UnitName named && named.unit() == smaller) {
                return new Small(number.get().values(), smaller, match.end());
            }
            alone &= !ParseChart.isUnit(match.item());
        }
        List<SpokenNumber.Value> rest = alone ? rest(number.get(), unit, smaller) : List.of();
        return rest.isEmpty() ? null : new Small(rest, smaller, number.get().end());
    }

    /**
     * What a number without a unit of its own can be of the smaller one: "seven pounds eight", "seven pounds eight and
     * a half", "one hour thirty". A part of one is of the larger unit: "seven pounds and a half".
     */
    private List<SpokenNumber.Value> rest(ParseChart.NumberAt number, Unit unit, Unit smaller) {
        BigDecimal whole = BigDecimal.valueOf(Math.round(unit.toBase(1) / smaller.toBase(1)));
        boolean parts = inQuarters(number.end());
        return number.values().stream()
                .filter(value -> parts || value.value().scale() <= 0)
                .map(value -> value.value().compareTo(BigDecimal.ONE) < 0
                        ? new SpokenNumber.Value(
                                value.value().multiply(whole).stripTrailingZeros(), value.naturalness())
                        : value)
                .filter(value -> value.value().signum() > 0 && value.value().compareTo(whole) < 0)
                .toList();
    }

    /** Whether the number that ends at a place is said in halves or quarters. */
    private boolean inQuarters(int end) {
        String last = utterance.word(end - 1);
        return last.equals("half") || last.startsWith("quarter");
    }
}
