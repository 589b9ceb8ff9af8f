package readback.grammar.lexicon;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

/**
 * How one quantity is named, in which units it is stated and what its values sound like.
 *
 * @param names the first is the full name
 * @param weakNames used, but less clear
 * @param unitOnlyNames mean this quantity only with one of its units
 * @param units the units in which it may be stated
 * @param us what its values sound like in US units
 * @param metric what its values sound like in metric units
 * @param lowest lowest value that can be
 * @param highest highest value that can be
 * @param usual what is usually stated, as calc has it
 */
public record QuantityWords(
        Quantity quantity,
        List<Phrase> names,
        List<Phrase> weakNames,
        List<Phrase> unitOnlyNames,
        Set<Unit> units,
        List<Sample> us,
        List<Sample> metric,
        Reading lowest,
        Reading highest,
        Grade.Span usual) {

    /** Conversion to SI and back leaves 400 as 399.99999999999994. */
    private static final int LIMIT_DECIMALS = 6;

    public QuantityWords {
        names = List.copyOf(names);
        weakNames = List.copyOf(weakNames);
        unitOnlyNames = List.copyOf(unitOnlyNames);
        units = Set.copyOf(units);
        us = List.copyOf(us);
        metric = List.copyOf(metric);
    }

    /**
     * A range of values as they are stated, for sampling.
     *
     * @param units one unit, or a large and a small one for compounds such as pounds and ounces
     * @param low the lowest value, of the first unit
     * @param high the highest value, of the first unit
     * @param step the distance of values
     * @param weight how often this range is sampled relative to the quantity's others
     */
    public record Sample(List<Unit> units, BigDecimal low, BigDecimal high, BigDecimal step, int weight) {
        public Sample {
            units = List.copyOf(units);
        }

        static Sample parse(String item) {
            String[] fields = item.split(" ", -1);
            int numbers = fields.length - 4;
            List<Unit> units =
                    Arrays.stream(fields, 0, numbers).map(Unit::valueOf).toList();
            return new Sample(
                    units,
                    new BigDecimal(fields[numbers]),
                    new BigDecimal(fields[numbers + 1]),
                    new BigDecimal(fields[numbers + 2]),
                    Integer.parseInt(fields[numbers + 3]));
        }
    }

    /** Whether the value can be at all. */
    public boolean canBe(Reading reading) {
        double value = reading.base();
        double one = lowest.base();
        double other = highest.base();
        return value >= Math.min(one, other) && value <= Math.max(one, other);
    }

    /** Whether the value lies in the span of what is usually stated. */
    public boolean isUsual(Reading reading) {
        double low = usual.unit().toBase(usual.low());
        double high = usual.unit().toBase(usual.high());
        double rounding = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
        double value = reading.base();
        return value >= low - rounding && value <= high + rounding;
    }

    /**
     * Whether the value has no more decimals than values of this unit are stated with: as many as the finest sample,
     * one at least. Where no sample has the unit, any number of them.
     */
    public boolean isStatedSoFinely(Reading reading) {
        return Stream.concat(us.stream(), metric.stream())
                .filter(sample -> sample.units().equals(List.of(reading.unit())))
                .map(sample -> Math.max(1, sample.step().scale()))
                .max(Comparator.naturalOrder())
                .map(most -> reading.value().scale() <= most)
                .orElse(true);
    }

    static QuantityWords parse(Definitions definitions, Quantity quantity) {
        String section = quantity.name();
        Grade.Span possible = Plausibility.possible(quantity);
        Set<Unit> units = new TreeSet<>();
        for (String name : definitions.items(section, "units")) {
            units.add(Unit.valueOf(name));
        }
        if (units.isEmpty()) {
            Arrays.stream(Unit.values())
                    .filter(any -> any.dimension() == quantity.dimension())
                    // no unit that follows a number: a pound, a number and an ounce make it
                    .filter(any -> any != Unit.POUND_AND_OUNCES)
                    .forEach(units::add);
        }
        return new QuantityWords(
                quantity,
                phrases(definitions.required(section, "name")),
                phrases(definitions.items(section, "weak")),
                phrases(definitions.items(section, "unit-only")),
                units,
                definitions.required(section, "us").stream().map(Sample::parse).toList(),
                definitions.required(section, "metric").stream()
                        .map(Sample::parse)
                        .toList(),
                new Reading(quantity, limit(possible.low()), possible.unit()),
                new Reading(quantity, limit(possible.high()), possible.unit()),
                Plausibility.usual(quantity));
    }

    private static BigDecimal limit(double value) {
        return BigDecimal.valueOf(value).setScale(LIMIT_DECIMALS, RoundingMode.HALF_UP);
    }

    /** Phrases that are only understood when typed. */
    static List<Phrase> typed(List<String> items) {
        return items.stream().map(item -> new Phrase(item, false)).toList();
    }

    static List<Phrase> phrases(List<String> items) {
        return items.stream().map(Phrase::of).toList();
    }
}
