package readback.assistant.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Vocabulary;
import readback.grammar.number.NumberStyle;

/**
 * How a technician calls out what he would type: numbers digit by digit or as they are read, with pauses, now and then
 * with a slip that he corrects. Shares and pauses are common practice, no source. The same chance gives the same words.
 */
final class Callout {

    /** What is written otherwise than it is called out. */
    private static final Set<String> NAMED = Set.of("refrigerant", "metering-device");

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    /** Whoever calls out digit by digit does it slowly so often. */
    private static final double SLOW = 0.5;

    /** So often the name comes before a value that was asked for. */
    private static final double NAME_FIRST = 0.3;

    /** So often there is a pause between a name and its value. */
    private static final double NAME_THEN_PAUSE = 0.5;

    private static final double SLIP = 0.1;
    private static final double TALK = 0.08;

    /** Pauses in seconds, shortest and longest. */
    private static final double[] BETWEEN_DIGITS = {0.05, 0.5};

    private static final double[] BEFORE_VALUE = {0.2, 0.9};
    private static final double[] BEFORE_CORRECTION = {0.1, 0.7};
    private static final double[] BEHIND_CORRECTION = {0, 0.3};

    /** Below this nobody slips: there is one digit only. */
    private static final BigDecimal TWO_DIGITS = BigDecimal.TEN;

    /** The first four are usual; the others come in one of five corrections. */
    private static final List<String> CORRECTIONS =
            List.of("correction", "no", "make that", "i mean", "sorry", "scratch that", "make it", "wait no");

    private static final int USUAL_CORRECTIONS = 4;
    private static final double UNUSUAL = 0.2;

    /** What is said to a colleague or a customer beside the unit; none of it is meant for the assistant. */
    private static final List<String> SMALL_TALK = List.of(
            "hand me the other wrench would you",
            "i left the ladder in the truck",
            "did you get lunch yet",
            "there are two more boxes behind the seat",
            "we should be out of here by six thirty",
            "it was ninety five degrees yesterday",
            "no not that one the smaller one",
            "watch your step there",
            "tell her it will take about twenty minutes",
            "that gate sticks you have to lift it",
            "i can finish this alone if you want to go on",
            "yes ma'am almost done out here",
            "put the panel back on when you are through",
            "my kid has a game tonight at seven",
            "hold this for me a second",
            "the breaker is on the other side of the house");

    private final Grammar grammar;
    private final RandomGenerator chance;

    Callout(Grammar grammar, RandomGenerator chance) {
        this.grammar = grammar;
        this.chance = chance;
    }

    /**
     * What is called out in place of a line.
     *
     * @param slips whether it holds a slip of the tongue and its correction
     */
    record Line(List<Breath> breaths, boolean slips) {
        Line {
            breaths = List.copyOf(breaths);
        }

        /** All words, with a comma where there is a pause. */
        String words() {
            return breaths.stream().map(Breath::words).collect(Collectors.joining(", "));
        }
    }

    /** Now and then something that is said to somebody else. */
    Optional<Line> smallTalk() {
        return chance.nextDouble() < TALK ? Optional.of(plain(any(SMALL_TALK))) : Optional.empty();
    }

    /** The line as it is called out: options by one of their names, numbers in words. */
    Line of(String line, Expectation expectation, Vocabulary vocabulary) {
        Meaning meaning = grammar.understand(line, expectation).get(0).meaning();
        if (meaning instanceof Meaning.Choice choice && NAMED.contains(choice.choice())) {
            String before = line.startsWith(Technician.CHANGE) ? Technician.CHANGE : "";
            return plain(before + name(choice, vocabulary));
        }
        Matcher number = NUMBER.matcher(line);
        return number.find() ? value(line, number, expectation) : plain(line);
    }

    private static Line plain(String words) {
        return new Line(List.of(new Breath(words, 0)), false);
    }

    private Line value(String line, Matcher found, Expectation expectation) {
        boolean answer = line.equals(found.group());
        String name = line.substring(0, found.start()).strip();
        if (answer && expectation.quantity().isPresent() && chance.nextDouble() < NAME_FIRST) {
            name = Technician.name(expectation.quantity().get());
        }
        List<Breath> breaths = new ArrayList<>();
        if (!name.isEmpty()) {
            breaths.add(new Breath(name, chance.nextDouble() < NAME_THEN_PAUSE ? seconds(BEFORE_VALUE) : 0));
        }
        BigDecimal value = new BigDecimal(found.group());
        boolean digits = chance.nextBoolean();
        boolean slow = digits && chance.nextDouble() < SLOW;
        boolean slips = answer && value.compareTo(TWO_DIGITS) >= 0 && chance.nextDouble() < SLIP;
        if (slips) {
            breaths.addAll(number(beside(value), digits, slow, seconds(BEFORE_CORRECTION)));
            breaths.add(new Breath(any(corrections()), seconds(BEHIND_CORRECTION)));
        }
        breaths.addAll(number(value, digits, slow, 0));
        String behind = line.substring(found.end()).strip();
        if (!behind.isEmpty()) {
            breaths.add(new Breath(behind, 0));
        }
        return new Line(run(breaths), slips);
    }

    private List<String> corrections() {
        return chance.nextDouble() < UNUSUAL
                ? CORRECTIONS.subList(USUAL_CORRECTIONS, CORRECTIONS.size())
                : CORRECTIONS.subList(0, USUAL_CORRECTIONS);
    }

    /** The number beside it, as it is said before it is corrected: another last digit. */
    private BigDecimal beside(BigDecimal value) {
        BigDecimal step = value.ulp();
        return chance.nextBoolean() ? value.add(step) : value.subtract(step);
    }

    private List<Breath> number(BigDecimal value, boolean digits, boolean slow, double behind) {
        String words = inWords(value, digits);
        List<String> parts = slow ? List.of(words.split(" ", -1)) : List.of(words);
        List<Breath> breaths = new ArrayList<>();
        for (String part : parts.subList(0, parts.size() - 1)) {
            breaths.add(new Breath(part, seconds(BETWEEN_DIGITS)));
        }
        breaths.add(new Breath(parts.get(parts.size() - 1), behind));
        return breaths;
    }

    /** Breaths without a pause between them are one. */
    private static List<Breath> run(List<Breath> breaths) {
        List<Breath> run = new ArrayList<>();
        for (Breath next : breaths) {
            Breath last = run.isEmpty() ? new Breath("", 1) : run.get(run.size() - 1);
            if (last.pause() == 0) {
                run.set(run.size() - 1, new Breath(last.words() + " " + next.words(), next.pause()));
            } else {
                run.add(next);
            }
        }
        return run;
    }

    private double seconds(double[] span) {
        return chance.nextDouble(span[0], span[1]);
    }

    private <T> T any(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }

    /** One of the two usual names that are listened for. */
    private String name(Meaning.Choice choice, Vocabulary vocabulary) {
        Set<String> listened = vocabulary.phrases().stream()
                .flatMap(phrase -> Stream.of(phrase.split(" ", -1)))
                .collect(Collectors.toSet());
        List<String> all = grammar.choices().phrases(choice.choice(), choice.option());
        List<String> names = all.stream()
                .filter(name -> listened.containsAll(List.of(name.split(" ", -1))))
                .limit(2)
                .toList();
        return names.isEmpty() ? all.get(0) : any(names);
    }

    /** Digit by digit, or "sixty six", "one eighteen", "three oh five", "three hundred". */
    private static String inWords(BigDecimal number, boolean digits) {
        NumberStyle style = digits ? NumberStyle.DIGITS : NumberStyle.GROUPED;
        return style.say(number)
                .or(() -> NumberStyle.CARDINAL.say(number))
                .orElseThrow(() -> new IllegalArgumentException("No technician reads " + number + " aloud."));
    }
}
