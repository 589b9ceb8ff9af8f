package readback.assistant.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntConsumer;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Effect;
import readback.assistant.simulated.BuiltUnits;
import readback.assistant.simulated.Case;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Wording;

/**
 * Service calls at simulated units through the real dialogue. The same start number gives the same calls. Owned by one
 * thread.
 */
public final class Bench {

    private final Dialogue dialogue;
    private final long start;
    private final Level level;
    private final BuiltUnits units = new BuiltUnits();

    /** @param start from which the generator of each call begins */
    public Bench(Dialogue dialogue, long start, Level level) {
        this.dialogue = dialogue;
        this.start = start;
        this.level = level;
    }

    /**
     * Makes the calls 1 to {@code count} and returns what came of them as lines of text: the table by fault and size,
     * then the shares that matter.
     *
     * @param made is told the number of calls made so far
     * @throws UnknownStepException for a step that the technician does not know
     */
    public List<String> measure(int count, IntConsumer made) {
        List<Outcome> outcomes = new ArrayList<>(count);
        for (int number = 1; number <= count; number++) {
            Case drawn = Case.draw(start, number, units);
            outcomes.add(new Call(dialogue, drawn, level, (said, turn) -> {}).made());
            made.accept(number);
        }
        List<String> lines = new ArrayList<>();
        lines.add(count + " calls at simulated units, start number " + start + ", level " + ConstantName.of(level));
        lines.addAll(new OutcomeTable(outcomes).lines());
        lines.add("");
        lines.addAll(new JudgementShares(outcomes).lines());
        return lines;
    }

    /**
     * Makes one call alone and returns it as lines of text: the truth, what was typed, what was shown, what came of it.
     *
     * @throws UnknownStepException for a step that the technician does not know
     */
    public List<String> repeat(int number, Wording wording) {
        Case drawn = Case.draw(start, number, units);
        List<String> lines = new ArrayList<>(List.of(drawn.toString()));
        Outcome outcome = new Call(dialogue, drawn, level, (said, turn) -> {
                    if (!said.isEmpty()) {
                        lines.add("> " + said);
                    }
                    turn.effects().stream()
                            .filter(Effect.Say.class::isInstance)
                            .flatMap(effect -> ((Effect.Say) effect).messages().stream())
                            .forEach(message -> lines.add("  " + wording.shown(message, UnitSetting.US)));
                })
                .made();
        lines.add(String.format(
                Locale.ROOT,
                "%s; first verdict %s, suspect %s, after looking %s; moved %d times, %.1f oz of it wrongly; charge %.3f"
                        + " of nameplate; threatened by %s, unwarned of %s",
                ConstantName.of(outcome.ending()),
                ConstantName.of(outcome.said()),
                ConstantName.of(outcome.suspect()),
                ConstantName.of(outcome.suspectAfterLooking()),
                outcome.moves(),
                outcome.wrongOunces(),
                outcome.charge(),
                names(outcome.threatened()),
                names(outcome.unwarned())));
        return lines;
    }

    private static String names(Set<? extends Enum<?>> constants) {
        return constants.isEmpty()
                ? "nothing"
                : String.join(
                        ", ", constants.stream().map(ConstantName::of).sorted().toList());
    }
}
