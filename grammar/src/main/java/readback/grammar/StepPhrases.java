package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import readback.calc.quantity.Quantity;
import readback.grammar.lexicon.ChoiceSet;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.Phrase;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.NumberStyle;

/**
 * The phrases of one dialogue step with what each means. The asked quantity and the asked choice come most often,
 * because the recogniser counts; everything that can be said at any moment is there.
 */
final class StepPhrases {

    /**
     * A phrase and what it was made from.
     *
     * @param meaning what it must be understood as
     */
    record Sample(String words, Meaning meaning) {}

    // Measured on synthetic voices and on digits of real speakers at 10 dB fan noise: the more the asked number
    // outweighs
    // units and other quantities, the fewer digits are heard as units ("five" as "psi").
    private static final int ASKED_BARE = 3_000;

    /** The most phrases of a step, with unknown speech among them: each is one more way to mishear. Decision 0010. */
    static final int MOST = 5_000;

    private static final int ASKED_NAMED = 500;
    private static final int ASKED_SHORT = 60;
    private static final int OTHER_NAMED = 4;
    private static final int OPEN_NAMED = 40;
    private static final int PAIRS = 16;
    private static final int OVERS = 60;
    private static final int ASIDES = 30;
    private static final int TOGETHER_NAMED = 50;

    private static final Set<Quantity> BOTH_GAUGES = EnumSet.of(Quantity.SUCTION_PRESSURE, Quantity.LIQUID_PRESSURE);

    private static final Set<Quantity> AT_THE_GAUGES = EnumSet.of(
            Quantity.SUCTION_PRESSURE,
            Quantity.LIQUID_PRESSURE,
            Quantity.SUCTION_LINE_TEMPERATURE,
            Quantity.LIQUID_LINE_TEMPERATURE);

    /** Of papers, heaters and supplies: told where they are asked for, and beside the plate, not between readings. */
    private static final Set<Quantity> NOT_BETWEEN_READINGS = EnumSet.of(
            Quantity.PLATE_APPROACH,
            Quantity.SUPPLY_WET_BULB,
            Quantity.LINE_VOLTAGE,
            Quantity.HEATER_POWER,
            Quantity.LIQUID_LIFT,
            Quantity.LINE_CHARGE,
            Quantity.FILTER_DRIER_CHARGE,
            Quantity.ROOM_AREA);

    private static final int CORRECTIONS = 240;

    /**
     * So many words that lead a correction are usual, the first ones: each comes in one of five, the others share the
     * fifth.
     */
    private static final int USUAL_MARKERS = 4;

    /** "One eighteen, no, one nineteen": corrected before the breath is over. */
    private static final int IN_ONE_BREATH = 120;

    private static final int OPTION_REPEATED = 6;
    private static final int ANSWER_REPEATED = 12;
    private static final int PLAIN_ANSWER_REPEATED = 120;
    private static final int INTRODUCED = 1;
    /** The usual form of a command comes more often than its variants. */
    private static final int USUAL_REPEATED = 4;

    /** "Take" where a value is offered: as often as an answer that is meant, and in place of as many bare numbers. */
    private static final int TAKE_REPEATED = 60;

    private static final int TAKE_NAMED = 6;
    private static final int PROBE_NAMED = 2;
    private static final int ABOUT = 15;
    private static final int QUESTIONS = 12;

    private final Lexicon lexicon;
    private final Expectation expectation;
    private final SplittableRandom random;
    private final ReadingPhrases readings;
    private final List<Sample> samples = new ArrayList<>();
    /** Where the bare numbers begin and end among the samples. */
    private int bareFrom;

    private int bareUntil;

    StepPhrases(Lexicon lexicon, Expectation expectation, long seed) {
        this.lexicon = lexicon;
        this.expectation = expectation;
        this.random = new SplittableRandom(seed);
        this.readings = new ReadingPhrases(lexicon, expectation, random);
    }

    /** The phrases of the step, in an order that the seed decides. */
    List<Sample> samples() {
        int numbersLess = probes();
        commands();
        choices();
        quantities(numbersLess);
        pairs();
        overs();
        asides();
        corrections();
        about();
        notes();
        questions();
        supposed();
        fewerNumbers();
        return List.copyOf(samples);
    }

    /** Where there are too many phrases, bare numbers give way: there are thousands, and of other things a few. */
    private void fewerNumbers() {
        int tooMany = Vocabulary.withUnknown(samples.stream().map(Sample::words).toList())
                        .size()
                - MOST;
        if (tooMany > 0) {
            samples.subList(bareUntil - Math.min(tooMany, bareUntil - bareFrom), bareUntil)
                    .clear();
        }
    }

    private void add(String words, Meaning meaning) {
        samples.add(new Sample(words, meaning));
    }

    private void commands() {
        boolean unknownIsOption = !expectation.isQuestion()
                && expectation
                        .choice()
                        .map(lexicon.choices()::get)
                        .filter(set -> set.options().containsKey(Understanding.UNKNOWN))
                        .isPresent();
        for (Map.Entry<String, List<Phrase>> command : lexicon.commands().entrySet()) {
            Command order = Command.valueOf(command.getKey());
            if (order == Command.TAKE || (order == Command.UNKNOWN && unknownIsOption)) {
                continue;
            }
            boolean answer = expectation.answers().contains(order);
            int times = answer ? PLAIN_ANSWER_REPEATED : USUAL_REPEATED;
            for (Phrase phrase : ReadingPhrases.heard(command.getValue())) {
                if (ofAskedSet(phrase)) {
                    continue;
                }
                for (int i = 0; i < times; i++) {
                    add(phrase.words(), new Meaning.Ordered(order));
                }
                // the first phrase of a command is the usual one: yes, no, understood
                times = answer ? ANSWER_REPEATED : 1;
            }
        }
    }

    private void choices() {
        for (ChoiceSet set : lexicon.choices().values()) {
            boolean asked = expectation.choice().filter(set.name()::equals).isPresent();
            List<Phrase> introductions = ReadingPhrases.heard(set.introductions());
            for (Map.Entry<String, List<Phrase>> option : set.options().entrySet()) {
                Meaning.Choice meaning = new Meaning.Choice(set.name(), option.getKey());
                List<Phrase> phrases = ReadingPhrases.heard(option.getValue());
                boolean open = expectation.isQuestion() && option.getKey().equals(Understanding.UNKNOWN);
                for (Phrase phrase : asked && !open ? phrases : List.<Phrase>of()) {
                    for (int i = 0; i < OPTION_REPEATED; i++) {
                        add(phrase.words(), meaning);
                    }
                }
                if (!asked && listened(set)) {
                    phrases.stream()
                            .filter(phrase -> !ofAskedSet(phrase))
                            .forEach(phrase -> add(phrase.words(), meaning));
                }
                if (!asked && mentioned(set)) {
                    phrases.stream()
                            .filter(phrase -> !holdsAsked(phrase) && !saidAnywhere(phrase.words()))
                            .forEach(phrase -> add(phrase.words(), new Meaning.Mentioned(meaning)));
                }
                for (int i = 0; i < INTRODUCED && !introductions.isEmpty() && !phrases.isEmpty(); i++) {
                    add(readings.pick(introductions) + " " + readings.pick(phrases), meaning);
                }
            }
        }
    }

    /** Where a number is asked for, each further phrase is one more way to mishear it. */
    private boolean listened(ChoiceSet set) {
        return set.anywhere() == ChoiceSet.Anywhere.LISTENED
                || (set.anywhere() == ChoiceSet.Anywhere.BETWEEN
                        && expectation.quantity().isEmpty());
    }

    private boolean mentioned(ChoiceSet set) {
        return set.anywhere() == ChoiceSet.Anywhere.MENTIONED
                && expectation.quantity().isEmpty();
    }

    /** What was asked comes before what can be said anywhere: "none" where that is an answer. */
    private boolean ofAskedSet(Phrase phrase) {
        return expectation.choice().map(lexicon.choices()::get).stream()
                .flatMap(set -> set.options().entrySet().stream())
                .filter(option -> !option.getKey().equals(Understanding.UNKNOWN))
                .flatMap(option -> option.getValue().stream())
                .anyMatch(answer -> answer.words().equals(phrase.words()));
    }

    /** Whether an answer is among the words: "leak" in "leak test". */
    private boolean holdsAsked(Phrase phrase) {
        String words = " " + phrase.words() + " ";
        return expectation.choice().map(lexicon.choices()::get).stream()
                .flatMap(set -> set.options().values().stream())
                .flatMap(List::stream)
                .anyMatch(answer -> words.contains(" " + answer.words() + " "));
    }

    /** Whether the words are a question or a cry of their own: "what's the target superheat". */
    private boolean saidAnywhere(String words) {
        return lexicon.choices().values().stream()
                .filter(set ->
                        set.anywhere() != ChoiceSet.Anywhere.NO && set.anywhere() != ChoiceSet.Anywhere.MENTIONED)
                .flatMap(set -> set.options().values().stream())
                .flatMap(List::stream)
                .anyMatch(phrase -> phrase.words().equals(words));
    }

    /**
     * What is said to probes, listened for only where there are some.
     *
     * @return how many bare numbers it is said in place of, so that a step listens for no more phrases than without
     */
    private int probes() {
        ProbesShown probes = expectation.probes();
        if (!probes.offered().isEmpty()) {
            List<Phrase> take = ReadingPhrases.heard(lexicon.commands().getOrDefault(Command.TAKE.name(), List.of()));
            String first = take.get(0).words();
            for (int i = 0; i < TAKE_REPEATED; i++) {
                add(first, new Meaning.Ordered(Command.TAKE));
            }
            take.forEach(phrase -> add(phrase.words(), new Meaning.Ordered(Command.TAKE)));
        }
        String about = ReadingPhrases.heard(lexicon.commandsAbout().getOrDefault(Command.TAKE.name(), List.of()))
                .get(0)
                .words();
        probes.offered().stream().sorted().map(lexicon::words).forEach(offered -> {
            Meaning meaning = new Meaning.Ordered(Command.TAKE, Optional.of(offered.quantity()));
            readings.usualNames(offered, TAKE_NAMED).forEach(name -> {
                add(about + " " + name, meaning);
                add(about + " the " + name, meaning);
            });
        });
        new TreeMap<>(probes.unnamed())
                .forEach((number, candidates) -> candidates.forEach(quantity -> named(number, quantity)));
        return samples.size();
    }

    /** "Probe two is the suction line". */
    private void named(int number, Quantity quantity) {
        String probe = ReadingPhrases.heard(lexicon.smallWords("probe")).get(0).words();
        String measures =
                ReadingPhrases.heard(lexicon.smallWords("measures")).get(0).words();
        NumberStyle.CARDINAL
                .say(BigDecimal.valueOf(number))
                .ifPresent(digit -> readings.usualNames(lexicon.words(quantity), PROBE_NAMED)
                        .forEach(name -> add(
                                String.join(" ", probe, digit, measures, name),
                                new Meaning.ProbeNamed(number, quantity))));
    }

    private void quantities(int numbersLess) {
        Optional<Quantity> asked = expectation.quantity();
        for (QuantityWords quantity : sayable()) {
            boolean isAsked = asked.filter(quantity.quantity()::equals).isPresent();
            int named = isAsked
                    ? ASKED_NAMED
                    : calledOutTogether(quantity.quantity())
                            ? TOGETHER_NAMED
                            : asked.isPresent()
                                            || expectation.choice().isPresent()
                                            || !expectation.answers().isEmpty()
                                    ? OTHER_NAMED
                                    : OPEN_NAMED;
            if (isAsked) {
                bareFrom = samples.size();
                for (int i = 0; i < ASKED_BARE - numbersLess; i++) {
                    said(readings.bare(quantity));
                }
                bareUntil = samples.size();
            }
            for (int i = 0; i < named; i++) {
                said(readings.named(quantity));
            }
            for (int i = 0; i < (isAsked ? ASKED_SHORT : 0); i++) {
                readings.shortened(quantity).ifPresent(this::said);
            }
        }
    }

    /**
     * What can be said now. Instruments and what papers say are stated between readings: where a number is asked for,
     * each further phrase is one more way to mishear it.
     */
    private List<QuantityWords> sayable() {
        return lexicon.quantities().values().stream()
                .filter(words -> expectation.quantity().isEmpty()
                        || !apart(words.quantity())
                        || expectation.quantity().get() == words.quantity()
                        || besidePlate(words.quantity()))
                .toList();
    }

    private static boolean apart(Quantity quantity) {
        return quantity.ofInstrument() || NOT_BETWEEN_READINGS.contains(quantity);
    }

    /** Whoever looks for the subcooling on the plate may find an approach there. */
    private boolean besidePlate(Quantity quantity) {
        return quantity == Quantity.PLATE_APPROACH
                && expectation.quantity().equals(Optional.of(Quantity.PLATE_SUBCOOLING));
    }

    private void said(ReadingPhrases.Said said) {
        add(said.words(), new Meaning.Values(List.of(said.reading())));
    }

    /** Whether it is read at the gauges beside what is asked for, and called out in any order. */
    private boolean calledOutTogether(Quantity quantity) {
        return AT_THE_GAUGES.contains(quantity)
                && expectation.quantity().filter(AT_THE_GAUGES::contains).isPresent();
    }

    /** "Around one eighteen", "my suction is one eighteen". */
    private void asides() {
        expectation.quantity().map(lexicon::words).ifPresent(asked -> {
            for (int i = 0; i < ASIDES; i++) {
                ReadingPhrases.Said said = i % 2 == 0 ? readings.bare(asked) : readings.nameFirst(asked);
                add((i % 2 == 0 ? "around " : "my ") + said.words(), new Meaning.Values(List.of(said.reading())));
            }
        });
    }

    /** "One eighteen over three forty" and "low one eighteen high three forty", where one of them is asked for. */
    private void overs() {
        if (expectation.quantity().filter(BOTH_GAUGES::contains).isEmpty()) {
            return;
        }
        for (int i = 0; i < OVERS; i++) {
            ReadingPhrases.Said low = readings.plain(lexicon.words(Quantity.SUCTION_PRESSURE));
            ReadingPhrases.Said high = readings.plain(lexicon.words(Quantity.LIQUID_PRESSURE));
            if (low.reading().value().compareTo(high.reading().value()) < 0) {
                add(
                        i % 2 == 0
                                ? low.words() + " over " + high.words()
                                : "low " + low.words() + " high " + high.words(),
                        new Meaning.Values(List.of(low.reading(), high.reading())));
            }
        }
    }

    private void pairs() {
        List<QuantityWords> all = sayable();
        for (int i = 0; i < PAIRS; i++) {
            QuantityWords one = all.get(random.nextInt(all.size()));
            QuantityWords other = all.get(random.nextInt(all.size()));
            if (one.quantity() != other.quantity()) {
                ReadingPhrases.Said first = readings.nameFirst(one);
                ReadingPhrases.Said second = readings.nameFirst(other);
                add(
                        first.words() + " " + second.words(),
                        new Meaning.Values(List.of(first.reading(), second.reading())));
            }
        }
    }

    private void corrections() {
        Optional<Quantity> corrected = expectation.last().or(expectation::quantity);
        List<Phrase> markers = ReadingPhrases.heard(lexicon.smallWords("correction"));
        List<QuantityWords> all = sayable();
        for (int i = 0; i < CORRECTIONS; i++) {
            ReadingPhrases.Said said = corrected.isPresent() && i % 3 != 0
                    ? readings.bare(lexicon.words(corrected.get()))
                    : readings.named(all.get(random.nextInt(all.size())));
            add(marker(markers, i) + " " + said.words(), new Meaning.Correction(List.of(said.reading())));
        }
        expectation.quantity().map(lexicon::words).ifPresent(asked -> {
            for (int i = 0; i < IN_ONE_BREATH; i++) {
                ReadingPhrases.Said slip = i % 3 == 0 ? readings.nameFirst(asked) : readings.bare(asked);
                ReadingPhrases.Said meant = readings.bare(asked);
                add(
                        String.join(
                                " ",
                                slip.words(),
                                markers.get(i % USUAL_MARKERS).words(),
                                meant.words()),
                        new Meaning.Values(List.of(meant.reading())));
            }
        });
    }

    /** The usual ones in turn, now and then one of the others. */
    private String marker(List<Phrase> markers, int i) {
        return i % (USUAL_MARKERS + 1) == USUAL_MARKERS
                ? readings.pick(markers.subList(USUAL_MARKERS, markers.size()))
                : markers.get(i % (USUAL_MARKERS + 1)).words();
    }

    private void about() {
        List<QuantityWords> all = sayable();
        List<Map.Entry<String, List<Phrase>>> orders = lexicon.commandsAbout().entrySet().stream()
                .filter(entry -> !entry.getKey().equals(Command.TAKE.name()))
                .filter(entry -> !ReadingPhrases.heard(entry.getValue()).isEmpty())
                .toList();
        for (int i = 0; i < ABOUT; i++) {
            Map.Entry<String, List<Phrase>> order = orders.get(random.nextInt(orders.size()));
            QuantityWords quantity = all.get(random.nextInt(all.size()));
            String the = random.nextInt(3) == 0 ? " the " : " ";
            String words = readings.pick(ReadingPhrases.heard(order.getValue())) + the + readings.name(quantity);
            Meaning.Ordered meaning =
                    new Meaning.Ordered(Command.valueOf(order.getKey()), Optional.of(quantity.quantity()));
            // asked so, what is worked out is meant: a question of its own
            if (!saidAnywhere(words) && !Topics.asksForWorkedOut(meaning)) {
                add(words, meaning);
            }
        }
    }

    private void questions() {
        Quantity pressure = expectation
                .quantity()
                .filter(asked -> asked == Quantity.LIQUID_PRESSURE)
                .orElse(Quantity.SUCTION_PRESSURE);
        for (int i = 0; i < QUESTIONS; i++) {
            ReadingPhrases.Said said = readings.bare(lexicon.words(pressure));
            add(
                    readings.pick(ReadingPhrases.heard(lexicon.smallWords("saturation"))) + " " + said.words(),
                    new Meaning.SaturationQuestion(said.reading()));
        }
    }

    /** "What do i do if my hose leaks", at any step: first in the usual words, then in others. */
    private void supposed() {
        List<Phrase> beginnings = ReadingPhrases.heard(lexicon.smallWords("suppose"));
        for (ChoiceSet set : lexicon.choices().values()) {
            set.supposed().forEach((option, clauses) -> {
                Meaning meaning = new Meaning.Mentioned(new Meaning.Choice(set.name(), option));
                for (Phrase clause : ReadingPhrases.heard(clauses)) {
                    add(beginnings.get(0).words() + " " + clause.words(), meaning);
                    add(readings.pick(beginnings) + " " + clause.words(), meaning);
                }
            });
        }
    }

    private void notes() {
        List<Phrase> markers = ReadingPhrases.heard(lexicon.smallWords("note"));
        for (Phrase remark : ReadingPhrases.heard(lexicon.smallWords("remark"))) {
            add(readings.pick(markers) + " " + remark.words(), new Meaning.Note(remark.words()));
        }
    }
}
