package readback.assistant.bench;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import readback.assistant.measure.Share;
import readback.calc.caution.CautionRule;

/** The shares by which the judgement is measured, each with calls to look at where it should be better. */
final class JudgementShares {

    /** So many calls are named to look at. */
    private static final int NAMED = 5;

    private final List<Outcome> outcomes;

    JudgementShares(List<Outcome> outcomes) {
        this.outcomes = outcomes;
    }

    List<String> lines() {
        return List.of(
                "Shares with the interval that holds the true share about 95 times in 100; calls to look at.",
                harm(
                        "refrigerant moved for a fault that is not the charge",
                        call -> call.truth().isOther(),
                        Outcome::moved),
                harm(
                        "sent to the scale though no refrigerant is missing",
                        call -> call.truth().charge() >= 1,
                        Outcome::recharge),
                good("right direction, charge off by over 10 %", Outcome::clearlyCharge, Outcome::rightDirection),
                harm("wrong direction, charge off by over 10 %", Outcome::clearlyCharge, Outcome::wrongDirection),
                good("sound units left alone", call -> call.truth().sound(), call -> !call.moved()),
                good("charge faults that end within 3 %", call -> call.truth().isCharge(), Outcome::chargeRight),
                good(
                        "the same, where they were not charged by weight",
                        call -> call.truth().isCharge() && !call.recharged(),
                        Outcome::chargeRight),
                good("first suspect right at the first verdict", call -> true, Outcome::suspectRight),
                good("first suspect right after the looks advised", call -> true, Outcome::suspectAfterLookingRight),
                good("among the first two suspects after looking", call -> true, Outcome::amongFirstTwo),
                "median of questions beyond the checklist: sound "
                        + median(call -> call.truth().sound()) + ", charge "
                        + median(call -> call.truth().isCharge()) + ", other faults "
                        + median(call -> call.truth().isOther()),
                missed("liquid at the compressor without its caution", CautionRule.LIQUID_AT_COMPRESSOR),
                missed("coil below freezing without its caution", CautionRule.COIL_BELOW_FREEZING),
                harm("unit stopped by what was moved", call -> true, call -> call.ending() == Outcome.Ending.STOPPED),
                harm("dialogue without an end", call -> true, call -> call.ending() == Outcome.Ending.ENDLESS),
                outcomes.stream().mapToInt(call -> call.drawn().drawnAgain()).sum()
                        + " units do not run and were drawn again");
    }

    private int median(Predicate<Outcome> of) {
        int[] sorted =
                outcomes.stream().filter(of).mapToInt(Outcome::asked).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    }

    private String missed(String what, CautionRule rule) {
        return harm(
                what,
                call -> call.threatened().contains(rule),
                call -> call.unwarned().contains(rule));
    }

    private String good(String what, Predicate<Outcome> of, Predicate<Outcome> part) {
        return line(what, of, part, part.negate());
    }

    private String harm(String what, Predicate<Outcome> of, Predicate<Outcome> part) {
        return line(what, of, part, part);
    }

    private String line(String what, Predicate<Outcome> of, Predicate<Outcome> part, Predicate<Outcome> lookAt) {
        List<Outcome> all = outcomes.stream().filter(of).toList();
        Share share = new Share((int) all.stream().filter(part).count(), all.size());
        String named = all.stream()
                .filter(lookAt)
                .limit(NAMED)
                .map(call -> String.valueOf(call.drawn().number()))
                .collect(Collectors.joining(", "));
        return share.line(what) + (named.isEmpty() ? "" : "; " + named);
    }
}
