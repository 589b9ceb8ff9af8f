package readback.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;

/**
 * Random sequences of the vocabulary's words, understood and weighed. Run with a count and a seed:
 *
 * <pre>mvn -q -B -pl .,calc,grammar test-compile
 * java -cp grammar/target/test-classes:grammar/target/classes:calc/target/classes readback.grammar.RandomWords 10000000 1
 * </pre>
 */
final class RandomWords {

    private final Grammar grammar = Grammar.standard();
    private final SplittableRandom random;
    private final List<Expectation> steps = new ArrayList<>();
    private final List<List<String>> words = new ArrayList<>();
    private long understood;
    private long values;

    RandomWords(long seed) {
        random = new SplittableRandom(seed);
        for (Quantity quantity : Quantity.values()) {
            Expectation step = new Expectation(
                    quantity.name(), Optional.of(quantity), Optional.empty(), Optional.of(quantity), UnitSetting.US);
            steps.add(step);
            words.add(List.copyOf(grammar.vocabulary(step).words()));
        }
        for (String set : grammar.choices().sets()) {
            Expectation step =
                    new Expectation(set, Optional.empty(), Optional.of(set), Optional.empty(), UnitSetting.METRIC);
            steps.add(step);
            words.add(List.copyOf(grammar.vocabulary(step).words()));
        }
    }

    /**
     * Understands and weighs one sequence of 1 to 9 words, number words more often than others.
     *
     * @throws IllegalStateException if a value that cannot be is taken
     */
    void next() {
        int at = random.nextInt(steps.size());
        StringBuilder said = new StringBuilder();
        int length = random.nextInt(1, 10);
        for (int i = 0; i < length; i++) {
            List<String> from = random.nextInt(3) == 0 ? words.get(at) : NUMBERS;
            said.append(i == 0 ? "" : " ").append(from.get(random.nextInt(from.size())));
        }
        Hypothesis hypothesis = new Hypothesis(said.toString(), 1, List.of());
        Decision decision = grammar.decide(List.of(hypothesis), steps.get(at), Prior.indifferent());
        if (decision instanceof Decision.Accept accept && !accept.doubtful()) {
            understood++;
            check(said.toString(), accept.meaning());
        }
    }

    private void check(String said, Meaning meaning) {
        List<Reading> readings = meaning instanceof Meaning.Values taken
                ? taken.readings()
                : meaning instanceof Meaning.Correction correction ? correction.readings() : List.of();
        for (Reading reading : readings) {
            values++;
            boolean possible = Optional.ofNullable(
                            grammar.lexicon().quantities().get(reading.quantity()))
                    .orElseThrow()
                    .canBe(reading);
            if (!possible) {
                throw new IllegalStateException("\"" + said + "\" was taken as " + reading);
            }
        }
    }

    long understood() {
        return understood;
    }

    long values() {
        return values;
    }

    private static final List<String> NUMBERS = List.of(
            "zero",
            "oh",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "niner",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fifteen",
            "eighteen",
            "twenty",
            "thirty",
            "fifty",
            "eighty",
            "ninety",
            "hundred",
            "thousand",
            "point",
            "and",
            "a",
            "half",
            "quarter",
            "eighths",
            "minus",
            "double",
            "psi",
            "degrees",
            "suction",
            "line",
            "liquid",
            "correction",
            "no",
            "[unk]");

    /** Arguments: how many sequences, seed. */
    public static void main(String[] arguments) {
        long count = Long.parseLong(arguments[0]);
        long seed = Long.parseLong(arguments[1]);
        RandomWords fuzz = new RandomWords(seed);
        long start = System.nanoTime();
        for (long i = 0; i < count; i++) {
            fuzz.next();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(
                "seed %d: %d sequences, %d taken without a question, %d values in them, all possible; %.0f sequences/s%n",
                seed, count, fuzz.understood(), fuzz.values(), count / seconds);
    }
}
