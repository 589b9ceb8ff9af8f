package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.ChargeLevel;
import readback.calc.charge.Correction;
import readback.calc.charge.Judgement;
import readback.calc.quantity.Mass;

/**
 * How the charge was changed in this session.
 *
 * @param rounds measurements that were acted on, oldest first
 */
record ChargeHistory(List<Round> rounds) {

    /** The measurements so far, the latest among them where it compares something. */
    List<Correction.Step> steps(Judgement latest) {
        List<Correction.Step> steps = new ArrayList<>();
        Mass moved = Mass.NONE;
        for (Round round : rounds) {
            steps.add(new Correction.Step(moved, round.deviation()));
            moved = round.moved();
        }
        Correction.Step.of(moved, latest).ifPresent(steps::add);
        return steps;
    }

    /** What the readings before the first move showed, with what was moved since; empty before it. */
    Optional<ChargeLevel> level(Optional<Mass> nameplate) {
        return rounds.stream()
                .findFirst()
                .flatMap(Round::level)
                .flatMap(first -> nameplate.map(charge -> first.after(moved(), charge)));
    }

    /** Refrigerant moved before this round of measurements, positive when added. */
    Mass moved() {
        return rounds.stream().map(Round::moved).reduce(Mass.NONE, Mass::plus);
    }
}
