package readback.grammar;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.lexicon.ChoiceSet;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.number.SpokenNumber;

/** All meanings of one utterance in one situation. Used by one thread, for one call. */
final class Understanding {

    private static final double POLITE = 0.9;
    /** An option where another set was asked for, or none. */
    private static final double INTRODUCED = 0.95;

    private static final Set<Quantity> WORKED_OUT =
            EnumSet.of(Quantity.PLATE_SUPERHEAT, Quantity.PLATE_SUBCOOLING, Quantity.TEMPERATURE_SPLIT);

    /** A question made of words that ask and a topic. */
    private static final double TOPIC = 0.9;
    /** Words that were found among others. */
    private static final double SPOTTED = 0.6;

    /** Sets of the rating plate and the coil, asked one after the other and told in one breath. */
    private static final Set<String> TOGETHER = Set.of("refrigerant", "metering-device");

    /** The option of a set that says that it is not known. */
    static final String UNKNOWN = "unknown";

    private final Lexicon lexicon;
    private final ParseChart utterance;
    private final Troubles troubles;
    private final Ways found = new Ways();
    private final Ways topics = new Ways();
    /** Whether the utterance is, word for word, an option that is understood anywhere. */
    private boolean inFull;

    Understanding(Lexicon lexicon, ParseChart utterance) {
        this.lexicon = lexicon;
        this.utterance = utterance;
        this.troubles = new Troubles(utterance);
    }

    /** Best first; one {@link Meaning.NotUnderstood} if there is no other. */
    List<Interpretation> interpretations() {
        if (utterance.length() == 0) {
            return List.of(new Interpretation(Meaning.NotUnderstood.of(Reason.Kind.NOTHING_HEARD), 0));
        }
        if (note() || probeNamed() || supposed()) {
            return found.ranked();
        }
        whole(0, 1, false);
        if (found.isEmpty()) {
            together();
        }
        if (found.isEmpty()) {
            // "what now" is asked for help, not "what" with a small word after it
            whole(0, 1, true);
        }
        topics();
        // "what's my target superheat" is a question of its own, not one about a value of that name; so is "no plate"
        found.removeIf(this::impliedByWhole);
        saturationQuestion();
        new ValueSearch(utterance, lexicon, troubles, found).search();
        if (found.isEmpty()) {
            spot();
        }
        if (found.isEmpty()) {
            mentioned();
        }
        if (found.isEmpty()) {
            return List.of(new Interpretation(troubles.reason(), 0));
        }
        return found.ranked();
    }

    private boolean note() {
        int end = 0;
        for (ParseChart.Match match : utterance.matches(0)) {
            if (utterance.isSmall(match, Item.Word.NOTE)) {
                end = match.end();
            }
        }
        if (end == 0 || end == utterance.length()) {
            return false;
        }
        found.add(new Meaning.Note(utterance.words(end, utterance.length())), 1);
        return true;
    }

    /** "Probe two is the suction line". */
    private boolean probeNamed() {
        after(0, Item.Word.PROBE)
                .forEach(at -> utterance
                        .number(at)
                        .ifPresent(number -> number.values().stream()
                                .flatMap(value -> wholeNumber(value.value()).stream())
                                .forEach(probe ->
                                        after(number.end(), Item.Word.MEASURES).forEach(is -> named(probe, is)))));
        return !found.isEmpty();
    }

    private static Optional<Integer> wholeNumber(BigDecimal value) {
        boolean whole = value.stripTrailingZeros().scale() <= 0 && value.abs().compareTo(BigDecimal.TEN) < 0;
        return whole && value.signum() > 0 ? Optional.of(value.intValue()) : Optional.empty();
    }

    /** The places behind a small word that starts here. */
    private Stream<Integer> after(int at, Item.Word word) {
        return at == utterance.length()
                ? Stream.empty()
                : utterance.matches(at).stream()
                        .filter(match -> utterance.isSmall(match, word) && match.end() < utterance.length())
                        .map(ParseChart.Match::end);
    }

    private void named(int probe, int at) {
        for (ParseChart.Match match : utterance.matches(at)) {
            if (match.item() instanceof Item.Name name && !name.unitOnly() && match.end() == utterance.length()) {
                found.add(new Meaning.ProbeNamed(probe, name.words().quantity()), name.weight());
            }
        }
    }

    /** "What do i do if my hose leaks": what to do is asked about, nothing has happened. */
    private boolean supposed() {
        for (int begin = 0; begin < utterance.length(); begin++) {
            after(begin, Item.Word.SUPPOSE).forEach(this::supposed);
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
        if (match.item() instanceof Item.Spot spot && anywhere(spot)) {
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
     * The one option of a set that is only spoken of, alone or among other words: "pressure test please". Not where a
     * number is said, where a word may deny it, or where it is the name of the value asked for.
     */
    private void mentioned() {
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

    /** The longest words at a place that mean something. */
    private Optional<ParseChart.Match> longest(int at, Function<ParseChart.Match, Optional<Meaning.Choice>> meaning) {
        return utterance.matches(at).stream()
                .filter(match -> meaning.apply(match).isPresent())
                .reduce((shorter, longer) -> longer);
    }

    /** Whether these words are a name of the quantity that is asked for. */
    private boolean namesAsked(int from, int to) {
        return utterance.matches(from).stream()
                .filter(match -> match.end() == to && match.item() instanceof Item.Name)
                .map(match -> ((Item.Name) match.item()).words().quantity())
                .anyMatch(quantity -> utterance.expectation().quantity().equals(Optional.of(quantity)));
    }

    private boolean impliedByWhole(Meaning meaning) {
        if (meaning instanceof Meaning.Choice choice) {
            // what was asked comes before what can be said anywhere
            return !asked(choice) && found.any(other -> other instanceof Meaning.Choice rival && asked(rival));
        }
        return meaning instanceof Meaning.Ordered ordered
                && ordered.about().isPresent()
                && (inFull || found.any(new Meaning.Ordered(ordered.command())::equals));
    }

    private boolean asked(Meaning.Choice choice) {
        return utterance.expectation().choice().filter(choice.choice()::equals).isPresent();
    }

    /** An option of what was asked and one of what is asked beside it, and nothing else: "four ten a txv". */
    private void together() {
        if (utterance.expectation().choice().filter(TOGETHER::contains).isEmpty()) {
            return;
        }
        for (int begin : utterance.afterOptional(0, Item.Word.FILLER)) {
            for (ParseChart.Match first : utterance.matches(begin)) {
                if (first.item() instanceof Item.Option one) {
                    together(one, first.end());
                }
            }
        }
    }

    private void together(Item.Option one, int end) {
        for (int begin : utterance.afterOptional(end, Item.Word.FILLER)) {
            for (ParseChart.Match second : utterance.matches(begin)) {
                if (second.end() == utterance.length() && second.item() instanceof Item.Option other) {
                    together(one, other);
                }
            }
        }
    }

    private void together(Item.Option one, Item.Option other) {
        boolean both = TOGETHER.contains(one.set())
                && TOGETHER.contains(other.set())
                && !one.set().equals(other.set());
        boolean known = !one.option().equals(UNKNOWN) && !other.option().equals(UNKNOWN);
        if (both && known && (asked(one) || asked(other))) {
            found.add(
                    new Meaning.Choices(List.of(
                            new Meaning.Choice(one.set(), one.option()),
                            new Meaning.Choice(other.set(), other.option()))),
                    INTRODUCED);
        }
    }

    /**
     * Commands and options that take the utterance from here to its end.
     *
     * @param loosely whether small words may stand before and after
     */
    private void whole(int at, double score, boolean loosely) {
        if (at >= utterance.length()) {
            return;
        }
        @Nullable Whole reader = null;
        for (ParseChart.Match match : utterance.matches(at)) {
            // several phrases of the same words are read alike
            if (reader == null || reader.end != match.end()) {
                reader = new Whole(match.end(), score, loosely);
            }
            match.item().read(reader);
        }
    }

    /** Takes a phrase as the beginning of a command or an option. */
    private final class Whole implements Item.Reader {

        private final int end;
        private final double score;
        private final boolean loosely;
        private final boolean last;
        private final double polite;

        Whole(int end, double score, boolean loosely) {
            this.end = end;
            this.score = score;
            this.loosely = loosely;
            this.last = end == utterance.length() || (loosely && nothingAfter(end));
            this.polite = end == utterance.length() ? score : score * POLITE;
        }

        @Override
        public void name(Item.Name name) {
            // begins a value, or says that there is none: "plate subcooling unknown"
            if (!name.unitOnly()) {
                withoutValue(name, end, score);
            }
        }

        @Override
        public void unitName(Item.UnitName unit) {
            // belongs to a value
        }

        @Override
        public void defaultUnit(Item.DefaultUnit unit) {
            // belongs to a value
        }

        @Override
        public void order(Item.Order order) {
            if (last) {
                Understanding.this.order(order.command(), polite);
            }
        }

        @Override
        public void orderAbout(Item.OrderAbout about) {
            about(about.command(), end, score);
        }

        @Override
        public void option(Item.Option option) {
            boolean asked = asked(option);
            if (last && (asked || option.anywhere())) {
                found.add(option.choice(), asked ? polite : polite * INTRODUCED);
                inFull |= option.anywhere() && end == utterance.length() && score == 1;
            }
        }

        @Override
        public void introduction(Item.Introduction introduction) {
            introduced(introduction.set(), end, score);
        }

        @Override
        public void small(Item.Small small) {
            if (small.word() == Item.Word.ASK) {
                Understanding.this.topic(end, score);
            }
            if (loosely && small.word() == Item.Word.FILLER) {
                whole(end, score * POLITE, true);
            }
        }

        @Override
        public void topic(Item.Topic topic) {
            // needs words that ask for it
        }

        @Override
        public void spot(Item.Spot spot) {
            // looked for where nothing else is understood
        }
    }

    /** "What's my superheat right now". */
    private void topic(int at, double score) {
        for (int place : utterance.afterOptional(at, Item.Word.FILLER)) {
            if (place >= utterance.length()) {
                continue;
            }
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Topic topic && onlyTail(match.end())) {
                    topics.add(new Meaning.Choice(topic.set(), topic.option()), score * TOPIC);
                }
            }
        }
    }

    /** A question for what is worked out comes before one for a value of that name; any other value comes first. */
    private void topics() {
        if (topics.isEmpty()) {
            return;
        }
        found.removeIf(meaning -> meaning instanceof Meaning.Ordered ordered && asksForWorkedOut(ordered));
        boolean asked = found.any(meaning ->
                meaning instanceof Meaning.Ordered ordered && ordered.about().isPresent());
        if (!asked) {
            found.addAll(topics);
        }
    }

    /** "What was the superheat": the one that was worked out, not that of the rating plate. */
    static boolean asksForWorkedOut(Meaning.Ordered ordered) {
        return ordered.command() == Command.SAY_AGAIN
                && ordered.about().filter(WORKED_OUT::contains).isPresent();
    }

    private boolean onlyTail(int at) {
        if (at == utterance.length()) {
            return true;
        }
        for (ParseChart.Match match : utterance.matches(at)) {
            boolean small = utterance.isSmall(match, Item.Word.TAIL) || utterance.isSmall(match, Item.Word.FILLER);
            if (small && onlyTail(match.end())) {
                return true;
            }
        }
        return false;
    }

    /**
     * A cry for help among words that mean nothing, "my partner got hurt over here", or the one option of what was
     * asked for, "the sticker says r thirty two", "no, the coil is dirty". Not where a word may deny it.
     */
    private void spot() {
        Set<Meaning.Choice> options = new HashSet<>();
        for (int at = 0; at < utterance.length(); at++) {
            for (ParseChart.Match match : utterance.matches(at)) {
                if (match.item() instanceof Item.Spot spot && !spot.supposed()) {
                    if (asked(spot.choice())) {
                        options.add(spot.choice());
                    } else if (anywhere(spot)) {
                        found.add(spot.choice(), SPOTTED);
                    }
                } else if (match.item() instanceof Item.Option option && stands(option, at, match.end())) {
                    options.add(option.choice());
                }
            }
        }
        if (found.isEmpty() && options.size() == 1) {
            options.stream().filter(this::undenied).forEach(option -> found.add(option, SPOTTED));
        }
    }

    private boolean anywhere(Item.Spot spot) {
        return lexicon.choices().get(spot.set()).anywhere() != ChoiceSet.Anywhere.NO;
    }

    /** Whether nothing denies the option: a yes or no before it says the same as it does. */
    private boolean undenied(Meaning.Choice option) {
        Optional<Command> first = utterance.expectation().isQuestion() ? answerFirst() : Optional.empty();
        return first.map(answer -> option.option().equals(ConstantName.of(answer)) && !denies(1))
                .orElseGet(() -> !denies(0));
    }

    /** A yes or no of one word that begins the utterance. */
    private Optional<Command> answerFirst() {
        return utterance.matches(0).stream()
                .filter(match -> match.end() == 1 && match.item() instanceof Item.Order)
                .map(match -> ((Item.Order) match.item()).command())
                .filter(command -> command == Command.YES || command == Command.NO)
                .findFirst();
    }

    /** Whether a word from here on may turn what is said into its opposite, or was not heard. */
    private boolean denies(int from) {
        return utterance.says(Vocabulary.UNKNOWN) || utterance.saysAny(lexicon.smallWords("deny"), from);
    }

    /** Whether an option of the asked set stands for itself: "twenty two" in "one twenty two" is part of a number. */
    private boolean stands(Item.Option option, int at, int end) {
        return asked(option)
                && !option.option().equals(UNKNOWN)
                && !utterance.expectation().isQuestion()
                && utterance.expectation().quantity().isEmpty()
                && (at == 0 || utterance.number(at - 1).isEmpty())
                && (end == utterance.length() || utterance.number(end).isEmpty());
    }

    /** Whether only small words follow: "say again please". */
    private boolean nothingAfter(int at) {
        if (at == utterance.length()) {
            return true;
        }
        for (ParseChart.Match match : utterance.matches(at)) {
            if (utterance.isSmall(match, Item.Word.FILLER) && nothingAfter(match.end())) {
                return true;
            }
        }
        return false;
    }

    private boolean asked(Item.Option option) {
        boolean asked =
                utterance.expectation().choice().filter(option.set()::equals).isPresent();
        // "don't know" leaves the question open, not the choice
        return asked
                && !(option.option().equals(UNKNOWN) && utterance.expectation().isQuestion());
    }

    private void order(Command command, double score) {
        boolean isOption = command == Command.UNKNOWN
                && !utterance.expectation().isQuestion()
                && utterance
                        .expectation()
                        .choice()
                        .map(lexicon.choices()::get)
                        .filter(set -> set.options().containsKey(UNKNOWN))
                        .isPresent();
        if (!isOption) {
            found.add(new Meaning.Ordered(command), score);
        }
    }

    private void about(Command command, int at, double score) {
        for (int place : utterance.afterOptional(at, Item.Word.FILLER)) {
            if (place >= utterance.length()) {
                continue;
            }
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Name name && !name.unitOnly() && match.end() == utterance.length()) {
                    found.add(
                            new Meaning.Ordered(
                                    command, Optional.of(name.words().quantity())),
                            score * name.weight());
                }
            }
        }
    }

    private void withoutValue(Item.Name name, int at, double score) {
        for (int place : utterance.afterOptional(at, Item.Word.LINK)) {
            if (place >= utterance.length()) {
                continue;
            }
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Order order
                        && (order.command() == Command.UNKNOWN || order.command() == Command.SKIP)
                        && match.end() == utterance.length()) {
                    found.add(
                            new Meaning.Ordered(
                                    order.command(), Optional.of(name.words().quantity())),
                            score * name.weight());
                }
            }
        }
    }

    private void introduced(String set, int at, double score) {
        for (int place : utterance.afterOptional(at, Item.Word.FILLER)) {
            if (place >= utterance.length()) {
                continue;
            }
            for (ParseChart.Match match : utterance.matches(place)) {
                if (match.item() instanceof Item.Option option
                        && option.set().equals(set)
                        && match.end() == utterance.length()) {
                    found.add(new Meaning.Choice(set, option.option()), score * INTRODUCED);
                }
            }
        }
    }

    private void saturationQuestion() {
        for (ParseChart.Match match : utterance.matches(0)) {
            if (utterance.isSmall(match, Item.Word.SATURATION) && match.end() < utterance.length()) {
                utterance.number(match.end()).ifPresent(number -> saturationAt(match.end(), number));
            }
        }
    }

    private void saturationAt(int at, ParseChart.NumberAt number) {
        if (number.values().isEmpty()) {
            troubles.notANumber(at, number.end());
            return;
        }
        Quantity pressure = utterance
                .expectation()
                .quantity()
                .filter(asked -> asked == Quantity.LIQUID_PRESSURE)
                .orElse(Quantity.SUCTION_PRESSURE);
        Optional<Unit> unit = unitToEnd(number.end(), pressure);
        if (unit.isPresent()) {
            for (SpokenNumber.Value value : number.values()) {
                found.add(
                        new Meaning.SaturationQuestion(new Reading(pressure, value.value(), unit.get())),
                        value.naturalness());
            }
        }
    }

    private Optional<Unit> unitToEnd(int at, Quantity pressure) {
        if (at == utterance.length()) {
            return Optional.of(utterance.unsaidUnit(pressure));
        }
        return utterance.matches(at).stream()
                .filter(match -> match.end() == utterance.length())
                .filter(match -> match.item() instanceof Item.UnitName)
                .map(match -> ((Item.UnitName) match.item()).unit())
                .filter(unit -> unit.dimension() == Dimension.GAUGE_PRESSURE && unit != Unit.INCH_WATER)
                .findFirst();
    }
}
