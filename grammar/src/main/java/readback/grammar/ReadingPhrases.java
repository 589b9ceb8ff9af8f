package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.Phrase;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.NumberStyle;

/**
 * Readings as people say them, sampled from the definitions: name, link, number in one of its styles, unit. Each comes
 * with what it means, so that what is listened for is checked against what is understood.
 *
 * <p>Not thread-safe: holds a random generator.
 */
final class ReadingPhrases {

    /** Words and the reading they state. */
    record Said(String words, Reading reading) {}

    private static final NumberStyle[] STYLES = {
        NumberStyle.GROUPED,
        NumberStyle.GROUPED,
        NumberStyle.GROUPED,
        NumberStyle.GROUPED,
        NumberStyle.DIGITS,
        NumberStyle.DIGITS,
        NumberStyle.DIGITS,
        NumberStyle.CARDINAL,
        NumberStyle.CARDINAL,
        NumberStyle.CARDINAL_WITH_AND
    };
    private static final double UNIT_SAID = 0.2;

    private final Lexicon lexicon;
    private final UnitSetting settings;
    private final SplittableRandom random;
    private final Set<String> contractions;
    /** Names that are short for something else here: "vapor" where the temperature of the suction line is asked for. */
    private final Set<String> taken;
    /** What is asked for; its names mean nothing else here. */
    private final @Nullable QuantityWords asked;

    private final Set<String> askedNames;

    ReadingPhrases(Lexicon lexicon, Expectation expectation, SplittableRandom random) {
        this.lexicon = lexicon;
        this.settings = expectation.units();
        this.random = random;
        this.taken = taken(lexicon, expectation);
        this.asked = expectation.quantity().map(lexicon.quantities()::get).orElse(null);
        this.askedNames = asked == null
                ? Set.of()
                : Stream.of(asked.names(), asked.weakNames())
                        .flatMap(List::stream)
                        .map(Phrase::words)
                        .collect(Collectors.toUnmodifiableSet());
        this.contractions = heard(lexicon.smallWords("contracted")).stream()
                .map(Phrase::words)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Set<String> taken(Lexicon lexicon, Expectation expectation) {
        return LineDisambiguation.askedByShortWords(expectation, lexicon.quantities())
                .map(Quantity::dimension)
                .filter(dimension -> dimension != Dimension.GAUGE_PRESSURE)
                .map(dimension -> lexicon.quantities().values().stream()
                        .filter(words -> words.quantity().dimension() == dimension)
                        .flatMap(words -> words.unitOnlyNames().stream())
                        .map(Phrase::words)
                        .collect(Collectors.toUnmodifiableSet()))
                .orElse(Set.of());
    }

    private List<Phrase> names(QuantityWords quantity) {
        return heard(quantity.names()).stream()
                .filter(phrase -> !taken.contains(phrase.words()))
                .filter(phrase -> quantity.equals(asked) || !askedNames.contains(phrase.words()))
                .toList();
    }

    /** The names that are used most, so many at most. */
    List<String> usualNames(QuantityWords quantity, int most) {
        return names(quantity).stream().limit(most).map(Phrase::words).toList();
    }

    /** A number after words that are short for the asked quantity, none if nothing is: "vapor fifty". */
    Optional<Said> shortened(QuantityWords quantity) {
        List<Phrase> names = heard(quantity.unitOnlyNames()).stream()
                .filter(phrase -> taken.contains(phrase.words()))
                .toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        Amount amount = amount(quantity);
        return Optional.of(amount.with(pick(names) + " " + amount.words()));
    }

    /** A number with or without its unit, and no name. */
    Said bare(QuantityWords quantity) {
        return amount(quantity).said();
    }

    /** A number alone in the unit of the settings. */
    Said plain(QuantityWords quantity) {
        Amount amount = amount(quantity);
        while (amount.unitSaid()) {
            amount = amount(quantity);
        }
        return amount.said();
    }

    /** A number with its name, mostly before it. */
    Said named(QuantityWords quantity) {
        return random.nextInt(10) == 0 ? numberFirst(quantity) : nameFirst(quantity);
    }

    private Said numberFirst(QuantityWords quantity) {
        Amount amount = amount(quantity);
        String on = random.nextBoolean() ? " on the " : " ";
        return amount.with(amount.words() + on + pick(names(quantity)));
    }

    /** The name, then the number. */
    Said nameFirst(QuantityWords quantity) {
        Amount amount = amount(quantity);
        List<Phrase> links = heard(lexicon.smallWords("link"));
        String link = random.nextInt(3) == 0 ? " " + usual(links) + " " : " ";
        if (amount.unitSaid()
                && random.nextInt(8) == 0
                && !heard(quantity.unitOnlyNames()).isEmpty()) {
            return amount.with(pick(heard(quantity.unitOnlyNames())) + link + amount.words());
        }
        String name = name(quantity);
        String contracted = name.substring(name.lastIndexOf(' ') + 1) + "'s";
        boolean draws = random.nextInt(3) == 0 && contractions.contains(contracted);
        return amount.with(draws ? name + "'s " + amount.words() : name + link + amount.words());
    }

    /** A name that means this quantity without a unit; the full name twice as often as another. */
    String name(QuantityWords quantity) {
        List<Phrase> names = names(quantity);
        return random.nextInt(4) == 0 ? names.get(0).words() : pick(names);
    }

    private record Amount(String words, Reading reading, boolean unitSaid) {

        Said said() {
            return new Said(words, reading);
        }

        Said with(String all) {
            return new Said(all, reading);
        }
    }

    private Amount amount(QuantityWords quantity) {
        QuantityWords.Sample sample = sample(quantity);
        BigDecimal value = value(sample);
        if (sample.units().size() == 2) {
            return compound(quantity, sample, value);
        }
        Unit unit = sample.units().get(0);
        boolean usual = unit == settings.unitOf(quantity.quantity());
        boolean said = !usual || random.nextDouble() < UNIT_SAID;
        String words = number(value) + (said ? " " + unit(unit, usual) : "");
        return new Amount(words, new Reading(quantity.quantity(), value, unit), said);
    }

    private Amount compound(QuantityWords quantity, QuantityWords.Sample sample, BigDecimal large) {
        Unit first = sample.units().get(0);
        Unit second = sample.units().get(1);
        long times = Math.round(first.toBase(1) / second.toBase(1));
        BigDecimal small = BigDecimal.valueOf(random.nextLong(1, times));
        String words = number(large) + " " + unit(first, false) + (random.nextInt(4) == 0 ? " and " : " ")
                + number(small) + " " + unit(second, false);
        BigDecimal sum = large.multiply(BigDecimal.valueOf(times)).add(small);
        return new Amount(words, Amounts.ofBoth(quantity.quantity(), sum, second), true);
    }

    private QuantityWords.Sample sample(QuantityWords quantity) {
        boolean metric = settings.temperature() == Unit.CELSIUS;
        List<QuantityWords.Sample> samples = metric ? quantity.metric() : quantity.us();
        int total = samples.stream().mapToInt(QuantityWords.Sample::weight).sum();
        int at = random.nextInt(total);
        for (QuantityWords.Sample sample : samples) {
            at -= sample.weight();
            if (at < 0) {
                return sample;
            }
        }
        return samples.get(0);
    }

    private BigDecimal value(QuantityWords.Sample sample) {
        int steps = sample.high()
                .subtract(sample.low())
                .divideToIntegralValue(sample.step())
                .intValueExact();
        BigDecimal value = sample.low().add(sample.step().multiply(BigDecimal.valueOf(random.nextInt(steps + 1))));
        boolean keepsZero = sample.step().scale() == 1 && random.nextInt(4) == 0;
        return keepsZero ? value : plain(value);
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private String number(BigDecimal value) {
        boolean eighths = value.scale() >= 1 && random.nextInt(value.scale() == 1 ? 3 : 10) != 0;
        Optional<String> fraction = eighths && !endsInZero(value) ? NumberStyle.FRACTION.say(value) : Optional.empty();
        return fraction.or(() -> style(value).say(value))
                .map(this::colloquial)
                .orElseGet(() -> colloquial(NumberStyle.CARDINAL.say(value).orElseThrow()));
    }

    /** "six two" for 62 is rare: people say digits one by one where there are three or more. */
    private NumberStyle style(BigDecimal value) {
        NumberStyle style = STYLES[random.nextInt(STYLES.length)];
        boolean two = value.precision() - value.scale() <= 2;
        return style == NumberStyle.DIGITS && two && random.nextInt(6) != 0 ? NumberStyle.CARDINAL : style;
    }

    private static boolean endsInZero(BigDecimal value) {
        return value.toPlainString().endsWith("0");
    }

    private String colloquial(String words) {
        String said = words;
        if (said.startsWith("zero point ") && random.nextBoolean()) {
            said = random.nextInt(4) == 0 ? "oh" + said.substring("zero".length()) : said.substring("zero ".length());
        }
        if (!said.startsWith("zero") && said.length() > 4 && random.nextInt(5) < 2) {
            said = said.replace(" zero", " oh");
        }
        return random.nextInt(25) == 0 ? said.replaceAll("\\bnine\\b", "niner") : said;
    }

    private String unit(Unit unit, boolean usual) {
        List<Phrase> phrases = heard(lexicon.units().getOrDefault(unit, List.of()));
        boolean degrees =
                unit.dimension() == Dimension.TEMPERATURE || unit.dimension() == Dimension.TEMPERATURE_DIFFERENCE;
        if (degrees && usual && random.nextInt(4) != 0) {
            return lexicon.defaultUnit().get(0).words();
        }
        // the first way is the usual one
        return random.nextInt(3) == 0 ? pick(phrases) : phrases.get(0).words();
    }

    /** The first phrases are the usual ones. */
    private String usual(List<Phrase> phrases) {
        return phrases.get(Math.min(random.nextInt(phrases.size()), random.nextInt(phrases.size())))
                .words();
    }

    String pick(List<Phrase> phrases) {
        return phrases.get(random.nextInt(phrases.size())).words();
    }

    static List<Phrase> heard(List<Phrase> phrases) {
        List<Phrase> heard = new ArrayList<>(phrases.size());
        for (Phrase phrase : phrases) {
            if (phrase.heard()) {
                heard.add(phrase);
            }
        }
        return heard;
    }
}
