package readback.grammar;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.number.SpokenNumber;

/** All meanings of one utterance in one situation. Used by one thread, for one call. */
final class Understanding {

    private static final double POLITE = 0.9;
    /** An option where another set was asked for, or none. */
    private static final double INTRODUCED = 0.95;

    /** Sets of the rating plate and the coil, asked one after the other and told in one breath. */
    private static final Set<String> TOGETHER = Set.of("refrigerant", "metering-device");

    /** The option of a set that says that it is not known. */
    static final String UNKNOWN = "unknown";

    private final Lexicon lexicon;
    private final ParseChart utterance;
    private final Troubles troubles;
    private final Mentions mentions;
    private final Ways found = new Ways();
    private final Topics topics;
    /** Whether the utterance is, word for word, an option that is understood anywhere. */
    private boolean inFull;

    Understanding(Lexicon lexicon, ParseChart utterance) {
        this.lexicon = lexicon;
        this.utterance = utterance;
        this.troubles = new Troubles(utterance);
        this.topics = new Topics(utterance);
        this.mentions = new Mentions(lexicon, utterance, found);
    }

    /** Best first; one {@link Meaning.NotUnderstood} if there is no other. */
    List<Interpretation> interpretations() {
        if (utterance.length() == 0) {
            return List.of(new Interpretation(Meaning.NotUnderstood.of(Reason.Kind.NOTHING_HEARD), 0));
        }
        if (note() || probeNamed() || mentions.supposed()) {
            return found.ranked();
        }
        whole(0, 1, false);
        if (found.isEmpty()) {
            together();
        }
        if (found.isEmpty() && utterance.holds(Item.Word.FILLER)) {
            // "what now" is asked for help, not "what" with a small word after it
            whole(0, 1, true);
        }
        topics.into(found, inFull);
        // "what's my target superheat" is a question of its own, not one about a value of that name; so is "no plate"
        found.removeIf(this::impliedByWhole);
        saturationQuestion();
        new ValueSearch(utterance, lexicon, troubles, found).search();
        if (found.isEmpty()) {
            mentions.spotted();
        }
        if (found.isEmpty()) {
            mentions.mentioned();
        }
        if (found.isEmpty()) {
            return List.of(new Interpretation(troubles.reason(), 0));
        }
        return found.ranked();
    }

    private boolean note() {
        int[] behind = utterance.after(0, Item.Word.NOTE);
        if (behind.length == 0 || behind[0] == utterance.length()) {
            return false;
        }
        found.add(new Meaning.Note(utterance.words(behind[0], utterance.length())), 1);
        return true;
    }

    /** "Probe two is the suction line". */
    private boolean probeNamed() {
        for (int at : utterance.after(0, Item.Word.PROBE)) {
            utterance.number(at).ifPresent(this::probeNamed);
        }
        return !found.isEmpty();
    }

    private void probeNamed(ParseChart.NumberAt number) {
        for (int at : utterance.after(number.end(), Item.Word.MEASURES)) {
            for (SpokenNumber.Value value : number.values()) {
                wholeNumber(value.value()).ifPresent(probe -> named(probe, at));
            }
        }
    }

    private static Optional<Integer> wholeNumber(BigDecimal value) {
        boolean whole = value.stripTrailingZeros().scale() <= 0 && value.abs().compareTo(BigDecimal.TEN) < 0;
        return whole && value.signum() > 0 ? Optional.of(value.intValue()) : Optional.empty();
    }

    private void named(int probe, int at) {
        for (ParseChart.Match match : utterance.matches(at)) {
            if (match.item() instanceof Item.Name name && !name.unitOnly() && match.end() == utterance.length()) {
                found.add(new Meaning.ProbeNamed(probe, name.words().quantity()), name.weight());
            }
        }
    }

    private boolean impliedByWhole(Meaning meaning) {
        if (meaning instanceof Meaning.Choice choice) {
            // what was asked comes before what can be said anywhere
            return !ofAskedSet(choice)
                    && found.any(other -> other instanceof Meaning.Choice rival && ofAskedSet(rival));
        }
        return meaning instanceof Meaning.Ordered ordered
                && ordered.about().isPresent()
                && (inFull || found.any(new Meaning.Ordered(ordered.command())::equals));
    }

    private boolean ofAskedSet(Meaning.Choice choice) {
        return utterance.expectation().asks(choice.choice());
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
                topics.asked(end, score);
            }
            if (small.word() == Item.Word.DEFINE) {
                topics.defined(end, score);
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
        // "don't know" leaves the question open, not the choice
        return utterance.expectation().asks(option.set())
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
        for (int at : utterance.after(0, Item.Word.SATURATION)) {
            utterance.number(at).ifPresent(number -> saturationAt(at, number));
        }
    }

    private void saturationAt(int at, ParseChart.NumberAt number) {
        if (number.values().isEmpty()) {
            troubles.notANumber(at, number.end());
            return;
        }
        Quantity pressure = utterance.expectation().asks(Quantity.LIQUID_PRESSURE)
                ? Quantity.LIQUID_PRESSURE
                : Quantity.SUCTION_PRESSURE;
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
        return Arrays.stream(utterance.matches(at))
                .filter(match -> match.end() == utterance.length())
                .filter(match -> match.item() instanceof Item.UnitName)
                .map(match -> ((Item.UnitName) match.item()).unit())
                .filter(unit -> unit.dimension() == Dimension.GAUGE_PRESSURE && unit != Unit.INCH_WATER)
                .findFirst();
    }
}
