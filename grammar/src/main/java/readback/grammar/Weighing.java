package readback.grammar;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.Prior.Grade;
import readback.grammar.lexicon.Lexicon;
import readback.grammar.lexicon.QuantityWords;
import readback.grammar.number.NumberParser;

/**
 * Weighs what may have been meant by one utterance: the recogniser's alternatives by their confidence, what the model
 * is known to confuse with the best one, how natural it is to say the meaning so, and whether its values can be. Used
 * by one thread, for one call.
 *
 * <p>The limits were chosen on synthetic speech with fan noise and on digits of real speakers so that a wrong value
 * taken without a question is rare, and the share of readings taken at once as large as that allows: decision 0009.
 */
final class Weighing {

    /** The least share among all meanings with which a value is taken without a question. */
    static final double SURE = 0.75;
    /** The same for an order that changes or ends something. */
    private static final double SURE_ORDER = 0.8;
    /** The same for an order that only makes us speak or wait. */
    private static final double HARMLESS = 0.55;
    /** The least share of everything heard, understood or not, with which a meaning is taken without a question. */
    private static final double HEARD = 0.5;
    /** The same for the order that ends the session: what a misheard word closed is over. */
    private static final double HEARD_END = 0.7;
    /** Below this share of everything heard, nothing is taken. */
    private static final double FAINT = 0.2;
    /** A second value with at least this share of the first one's weight is asked about. */
    private static final double RIVAL = 0.1;
    /** A value that the recogniser is known to confuse with the best one is asked about from this share on. */
    private static final double CONFUSED = 0.005;
    /** Confusions that make up less of what was heard do not explain it alone. */
    private static final double CONFUSED_ENOUGH = 0.2;
    /** How much rarer an unusual value is than a typical one. */
    private static final double UNUSUAL = 0.4;
    /** Ways of saying a value that are odder than this are asked about. */
    private static final double NATURAL = 0.45;

    /** A value with this share of the best one's weight beside it leaves doubt, however odd its words are. */
    private static final double BESIDE = 0.25;
    /** How natural a number is that seems to lack a digit, or to have a letter in its place. */
    private static final double CUT = 0.4;

    private static final int MOST_CANDIDATES = 3;

    private final Grammar grammar;
    private final Lexicon lexicon;
    private final Confusions confusions;
    private final Expectation expectation;
    private final Prior prior;
    private final Map<Meaning, Candidate> candidates = new LinkedHashMap<>();
    private Optional<Meaning.NotUnderstood> refused = Optional.empty();
    /** Whether the recogniser itself offers a value that it is known to confuse with the best one. */
    private boolean confused;
    /** Whether there is no doubt about the words. */
    private boolean typed;

    /**
     * @param heard share of everything heard
     * @param natural best score of an interpretation
     * @param supposed whether nobody heard it, and it is only known to be taken for what was heard
     */
    private record Candidate(Meaning meaning, double heard, double natural, Grade grade, boolean supposed) {

        double weight() {
            return grade == Grade.UNUSUAL ? heard * UNUSUAL : heard;
        }
    }

    Weighing(Grammar grammar, Lexicon lexicon, Confusions confusions, Expectation expectation, Prior prior) {
        this.grammar = grammar;
        this.lexicon = lexicon;
        this.confusions = confusions;
        this.expectation = expectation;
        this.prior = prior;
    }

    Decision decide(List<Hypothesis> hypotheses) {
        List<Hypothesis> said = new ArrayList<>(hypotheses.size());
        double confidences = 0;
        for (Hypothesis hypothesis : hypotheses) {
            if (!hypothesis.words().isBlank()) {
                said.add(hypothesis);
                confidences += hypothesis.confidence();
            }
        }
        if (said.isEmpty()) {
            return new Decision.Ignore(Decision.Ignorance.NOTHING_SAID);
        }
        if (said.get(0).words().replace(Vocabulary.UNKNOWN, "").isBlank()) {
            return new Decision.Ignore(Decision.Ignorance.UNKNOWN_WORDS);
        }
        double total = Math.max(1, confidences);
        typed = said.size() == 1
                && said.get(0).details().isEmpty()
                && said.get(0).confidence() >= 1;
        for (Hypothesis hypothesis : said) {
            hear(hypothesis, hypothesis.confidence() / total);
        }
        if (candidates.isEmpty()) {
            return mostlyUnknown(said.get(0))
                    ? new Decision.Ignore(Decision.Ignorance.MOSTLY_UNKNOWN_WORDS)
                    : new Decision.AskAgain(refused.orElseThrow());
        }
        if (!typed) {
            suspect(said.get(0), total);
        }
        return decision();
    }

    private static boolean mostlyUnknown(Hypothesis hypothesis) {
        String[] words = hypothesis.words().split(" ", -1);
        int unknown = 0;
        for (String word : words) {
            unknown += word.equals(Vocabulary.UNKNOWN) ? 1 : 0;
        }
        return 2 * unknown >= words.length;
    }

    private void hear(Hypothesis hypothesis, double share) {
        String words = hypothesis.words();
        List<Interpretation> meanings = grammar.understand(words, expectation);
        if (meanings.stream().noneMatch(each -> each.meaning().understood())) {
            if (typed) {
                grammar.amongOtherWords(words, expectation).ifPresent(each -> add(each, share, false));
            } else {
                hearInstead(hypothesis, share);
            }
        }
        double sum = 0;
        for (Interpretation interpretation : meanings) {
            sum += interpretation.score();
        }
        List<String> tokens = List.of(words.split(" ", -1));
        NumberParser numbers = new NumberParser(tokens);
        boolean broken = brokenOff(tokens, numbers);
        boolean alone = twoDigitsAlone(numbers, tokens.size());
        for (Interpretation interpretation : meanings) {
            if (interpretation.meaning() instanceof Meaning.NotUnderstood reason) {
                refused = refused.or(() -> Optional.of(reason));
            } else {
                double heard = share * interpretation.score() / sum;
                List<Reading> readings = interpretation.meaning().readings();
                boolean odd = !typed
                        && !readings.isEmpty()
                        && (broken || (alone && mayLackDigit(readings)) || endsInThree(tokens, readings));
                double natural = odd ? Math.min(CUT, interpretation.score()) : interpretation.score();
                add(new Interpretation(interpretation.meaning(), natural), heard, false);
            }
        }
    }

    /** Words that mean nothing were not said: what the model is known to take for them shares their weight. */
    private void hearInstead(Hypothesis hypothesis, double share) {
        Map<Interpretation, Double> possible = new LinkedHashMap<>();
        for (Confusions.Alternative alternative : confusions.instead(hypothesis)) {
            Interpretation other =
                    grammar.understand(alternative.words(), expectation).get(0);
            if (!other.meaning().readings().isEmpty()) {
                possible.merge(other, alternative.share(), Double::sum);
            }
        }
        double sum = possible.values().stream().mapToDouble(Double::doubleValue).sum();
        possible.forEach((other, often) -> add(other, share * often / Math.max(sum, CONFUSED_ENOUGH), false));
    }

    /**
     * Whether a digit may have been lost: "a" before a number, which "eight" is heard as, or nothing behind "a" or
     * "and".
     */
    private static boolean brokenOff(List<String> tokens, NumberParser numbers) {
        String last = tokens.get(tokens.size() - 1);
        if (last.equals("a") || last.equals("and")) {
            return true;
        }
        for (int at = 0; at + 1 < tokens.size(); at++) {
            boolean article = tokens.get(at).equals("a") && numbers.endOfRun(at) == at;
            if (article && numbers.endOfRun(at + 1) > at + 1) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether a number is two digits, which are rather said as a cardinal: "six nine" may be all of "six nine nine".
     */
    private static boolean twoDigitsAlone(NumberParser numbers, int words) {
        int at = 0;
        while (at < words) {
            int end = numbers.endOfRun(at);
            if (end == at + 2 && numbers.isDigit(at) && numbers.isDigit(at + 1)) {
                return true;
            }
            at = Math.max(end, at + 1);
        }
        return false;
    }

    /**
     * Whether a value is in degrees Celsius where Fahrenheit is set, by a bare letter at its end: "four c" is what
     * "four three" is heard as.
     */
    private boolean endsInThree(List<String> tokens, List<Reading> readings) {
        int last = tokens.size() - 1;
        boolean letter = last > 0
                && tokens.get(last).equals("c")
                && !tokens.get(last - 1).equals("degrees");
        Unit unit = readings.get(readings.size() - 1).unit();
        return letter && unit == Unit.CELSIUS && expectation.units().temperature() != unit;
    }

    /**
     * Whether one digit more, anywhere, makes a usual value of what stands in two digits: 69 psig may be 169, but 55 °F
     * of a suction line is no part of any.
     */
    private boolean mayLackDigit(List<Reading> readings) {
        List<Reading> ofTwo = readings.stream()
                .filter(reading -> reading.value().scale() <= 0
                        && reading.value().signum() > 0
                        && reading.value().toBigInteger().toString().length() == 2)
                .toList();
        return ofTwo.isEmpty() || ofTwo.stream().anyMatch(this::usualWithOneMore);
    }

    private boolean usualWithOneMore(Reading reading) {
        int value = reading.value().intValueExact();
        return IntStream.rangeClosed(0, 9)
                .flatMap(digit -> IntStream.of(
                        value * 10 + digit, value / 10 * 100 + digit * 10 + value % 10, digit * 100 + value))
                .filter(longer -> longer >= 100)
                .mapToObj(longer -> new Reading(reading.quantity(), BigDecimal.valueOf(longer), reading.unit()))
                .anyMatch(longer -> grade(longer) == Grade.TYPICAL);
    }

    /** Where "done" answers what was asked, "yes" says the same; but "understood" is never a yes. */
    private Meaning asAnswer(Meaning meaning) {
        Meaning done = new Meaning.Ordered(Command.DONE);
        boolean agreement = meaning.equals(done) || meaning.equals(new Meaning.Ordered(Command.YES));
        return agreement && expectation.answers().contains(Command.DONE) ? done : meaning;
    }

    private void add(Interpretation interpretation, double heard, boolean supposed) {
        Meaning meaning = asAnswer(interpretation.meaning());
        double natural = interpretation.score();
        Candidate before = candidates.get(said(meaning));
        if (before == null) {
            candidates.put(said(meaning), new Candidate(meaning, heard, natural, grade(meaning), supposed));
        } else {
            double both = supposed ? Math.max(before.heard(), heard) : before.heard() + heard;
            candidates.put(
                    said(meaning),
                    new Candidate(
                            before.meaning(),
                            both,
                            Math.max(before.natural(), natural),
                            before.grade(),
                            before.supposed() && supposed));
        }
    }

    /** What candidates are told apart by: 50.7 and 50.70 are one value. */
    private static Meaning said(Meaning meaning) {
        return meaning.mapped(
                reading -> new Reading(reading.quantity(), reading.value().stripTrailingZeros(), reading.unit()));
    }

    /** Adds what the model is known to take for the words of the best hypothesis, where it is a value too. */
    private void suspect(Hypothesis best, double total) {
        Meaning meant =
                said(grammar.understand(best.words(), expectation).get(0).meaning());
        if (!meant.understood()) {
            return;
        }
        for (Confusions.Alternative alternative : confusions.alternatives(best)) {
            Interpretation other =
                    grammar.understand(alternative.words(), expectation).get(0);
            if (!other.meaning().readings().isEmpty()) {
                Meaning alternate = said(other.meaning());
                Candidate offered = candidates.get(alternate);
                if (offered != null && !alternate.equals(meant)) {
                    confused |= offered.heard() >= CONFUSED && offered.grade() == Grade.TYPICAL;
                }
                add(other, best.confidence() / total * alternative.share(), true);
            }
        }
    }

    private Decision decision() {
        List<Candidate> possible = candidates.values().stream()
                .filter(candidate -> candidate.grade() != Grade.IMPOSSIBLE)
                .sorted(Comparator.comparingDouble(Candidate::weight).reversed())
                .toList();
        if (possible.isEmpty()) {
            return new Decision.AskAgain(
                    impossible(candidates.values().iterator().next().meaning()));
        }
        Candidate best = possible.get(0);
        if (isCorrection(best) && changesNothing(best)) {
            List<Candidate> others = possible.stream()
                    .filter(each -> isCorrection(each) && !changesNothing(each))
                    .toList();
            if (!others.isEmpty()) {
                return insteadOfTheSame(others);
            }
        }
        if (best.heard() < FAINT) {
            return new Decision.AskAgain(refused.orElseGet(() -> Meaning.NotUnderstood.of(Reason.Kind.UNCLEAR)));
        }
        double sum = possible.stream().mapToDouble(Candidate::weight).sum();
        double confidence = best.weight() / sum;
        boolean asked = best.grade() == Grade.UNUSUAL || best.natural() < NATURAL || best.supposed();
        boolean sure = confidence >= needed(best.meaning())
                && best.heard() >= heardNeeded(best.meaning())
                && rivals(possible, BESIDE).size() <= 1;
        if (!sure || asked || confused) {
            List<Meaning> rivals = rivals(possible, confused ? CONFUSED : RIVAL);
            if (rivals.size() > 1) {
                return new Decision.AskBetween(rivals);
            }
        }
        return new Decision.Accept(best.meaning(), Math.min(confidence, best.heard()), !sure || asked || confused);
    }

    private static boolean isCorrection(Candidate candidate) {
        return candidate.meaning() instanceof Meaning.Correction;
    }

    private boolean changesNothing(Candidate candidate) {
        return candidate.meaning().readings().stream().allMatch(prior::stands);
    }

    /**
     * What a correction may have meant that was heard as the value that stands: it was misheard the same way once more,
     * and is asked about however weak it is.
     */
    private static Decision insteadOfTheSame(List<Candidate> others) {
        List<Meaning> rivals = rivals(others, BESIDE);
        Candidate best = others.get(0);
        return rivals.size() > 1
                ? new Decision.AskBetween(rivals)
                : new Decision.Accept(best.meaning(), best.heard(), true);
    }

    /** The values that are near the best one in weight, with it; none when the best is not a value. */
    private static List<Meaning> rivals(List<Candidate> possible, double least) {
        Candidate best = possible.get(0);
        List<Meaning> rivals = new ArrayList<>();
        for (Candidate candidate : possible) {
            boolean value = !candidate.meaning().readings().isEmpty()
                    && !best.meaning().readings().isEmpty();
            if (value && candidate.weight() >= least * best.weight() && rivals.size() < MOST_CANDIDATES) {
                rivals.add(candidate.meaning());
            }
        }
        return rivals;
    }

    private double heardNeeded(Meaning meaning) {
        return meaning.orders(Command.FINISH) ? HEARD_END : HEARD;
    }

    private static double needed(Meaning meaning) {
        return meaning.order().map(Weighing::needed).orElse(meaning.readings().isEmpty() ? SURE_ORDER : SURE);
    }

    private static double needed(Command command) {
        return switch (command) {
            case YES, NO, SCRATCH_THAT, FINISH, SKIP, DONE, UNKNOWN, TAKE -> SURE_ORDER;
            default -> HARMLESS;
        };
    }

    private Grade grade(Meaning meaning) {
        Grade worst = Grade.TYPICAL;
        for (Reading reading : meaning.readings()) {
            Grade grade = grade(reading);
            if (grade.compareTo(worst) > 0) {
                worst = grade;
            }
        }
        return worst;
    }

    private Grade grade(Reading reading) {
        QuantityWords words = lexicon.words(reading.quantity());
        if (!words.canBe(reading)) {
            return Grade.IMPOSSIBLE;
        }
        Grade grade = prior.of(reading);
        // 49.004 °F was 49.0 and the beginning of something else
        boolean usual = words.isUsual(reading) && (typed || words.isStatedSoFinely(reading));
        return grade == Grade.TYPICAL && !usual ? Grade.UNUSUAL : grade;
    }

    private Meaning.NotUnderstood impossible(Meaning meaning) {
        for (Reading reading : meaning.readings()) {
            QuantityWords words = lexicon.words(reading.quantity());
            boolean possible = words.canBe(reading);
            if (!possible || prior.of(reading) == Grade.IMPOSSIBLE) {
                Reading value = reading.inOneUnit();
                Reason why = possible
                        ? Reason.of(Reason.Kind.IMPOSSIBLE, value)
                        : Reason.of(
                                Reason.Kind.OUT_OF_RANGE,
                                value,
                                limit(words.lowest(), reading.unit()),
                                limit(words.highest(), reading.unit()));
                return new Meaning.NotUnderstood(
                        value.value().toPlainString() + " " + value.unit().symbol(), why);
            }
        }
        throw new IllegalStateException("nothing impossible in " + meaning);
    }

    /** A limit as a whole number in the unit that was said. */
    private static Reading limit(Reading limit, Unit unit) {
        Unit one = unit == Unit.POUND_AND_OUNCES ? Unit.POUND : unit;
        return new Reading(limit.quantity(), BigDecimal.valueOf(Math.round(limit.in(one))), one);
    }
}
