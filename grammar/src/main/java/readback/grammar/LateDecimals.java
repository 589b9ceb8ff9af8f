package readback.grammar;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
import readback.grammar.number.NumberParser;
import readback.grammar.number.NumberStyle;
import readback.grammar.number.SpokenNumber;

/**
 * Decimals that were said by themselves, behind a value that had been taken when its speaker paused: "eight one", then
 * "point five".
 */
public final class LateDecimals {

    private static final String POINT = "point";

    private LateDecimals() {}

    /**
     * What the words make of the value before them; empty unless they are decimals and nothing else, and the value has
     * none yet.
     *
     * @param words as they were heard or typed
     * @param before the value that was taken last
     */
    public static Optional<Reading> of(String words, Reading before) {
        List<String> said = List.of(words.toLowerCase(Locale.ROOT).strip().split(" +", -1));
        if (!goesOn(said, before)) {
            return Optional.empty();
        }
        List<SpokenNumber.Value> values = new NumberParser(said).values(0, said.size());
        return values.stream()
                .findFirst()
                .map(SpokenNumber.Value::value)
                .map(decimals -> before.value().signum() < 0 ? decimals.negate() : decimals)
                .map(decimals -> joined(before, decimals));
    }

    private static boolean goesOn(List<String> said, Reading before) {
        return before.value().scale() <= 0
                && before.unit() != Unit.POUND_AND_OUNCES
                && said.get(0).equals(POINT);
    }

    /**
     * The correction of the value before by decimals that were spoken in one breath with it, and by what may follow
     * them: "point five, no, eighty one point six". Only how sure their words are counts: what else they might mean
     * throws no doubt on them.
     *
     * @param best the likeliest of what was heard
     * @param expectation of the next step, for its units
     */
    public static Optional<Decision.Accept> inOneBreath(
            Grammar grammar, Hypothesis best, Reading before, Expectation expectation) {
        return of(best.words(), before)
                .or(() -> corrected(grammar, best.words(), before, expectation))
                .map(whole -> new Decision.Accept(
                        new Meaning.Correction(List.of(whole)), best.confidence(), best.confidence() < Weighing.SURE));
    }

    /** What the words are of the value before, said with it from the beginning. */
    private static Optional<Reading> corrected(Grammar grammar, String words, Reading before, Expectation expectation) {
        if (!goesOn(List.of(words.split(" ", -1)), before)) {
            return Optional.empty();
        }
        return NumberStyle.CARDINAL
                .say(before.value())
                .map(begun -> grammar.understand(
                                begun + ' ' + words, Expectation.of(before.quantity(), expectation.units()))
                        .get(0)
                        .meaning())
                .map(Meaning::readings)
                .filter(readings -> readings.size() == 1 && readings.get(0).quantity() == before.quantity())
                .map(readings -> readings.get(0));
    }

    private static Reading joined(Reading before, BigDecimal decimals) {
        return new Reading(before.quantity(), before.value().add(decimals), before.unit());
    }
}
