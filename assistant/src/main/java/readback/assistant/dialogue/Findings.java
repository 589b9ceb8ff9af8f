package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.charge.ChargeMethod;
import readback.calc.charge.Comparison;
import readback.calc.charge.Contradiction;
import readback.calc.charge.Estimate;
import readback.calc.charge.FailedCondition;
import readback.calc.charge.Judgement;
import readback.calc.charge.Remedy;
import readback.calc.charge.Target;
import readback.calc.charge.TargetSource;
import readback.calc.charge.ValveCheck;
import readback.calc.charge.Verdict;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** A judgement as messages: value first, then what follows from it, then how sure it is. */
final class Findings {

    private final UnitSetting units;

    Findings(UnitSetting units) {
        this.units = units;
    }

    /** The verdict and everything that carries it. */
    List<Message> verdict(Judgement judgement) {
        List<Message> messages = new ArrayList<>();
        values(judgement, messages);
        Verdict verdict = judgement.verdict();
        if (verdict instanceof Verdict.Compared compared) {
            compared(judgement, compared, messages);
        } else if (verdict instanceof Verdict.NoValidTest invalid) {
            messages.add(Message.of("verdict.no-valid-test"));
            invalid.contradictions().forEach(each -> messages.add(contradiction(each)));
            invalid.conditions().forEach(each -> failed(each, messages));
        } else if (verdict instanceof Verdict.DoNotCharge stopped) {
            messages.add(Message.of("verdict.do-not-charge"));
            stopped.reasons().stream()
                    .sorted()
                    .forEach(reason -> messages.add(Message.of("reason." + Assessment.nameOf(reason))));
            judgement.conditions().forEach(each -> failed(each, messages));
        }
        judgement.valveCheck().ifPresent(check -> valve(check, messages));
        return messages;
    }

    private void values(Judgement judgement, List<Message> messages) {
        boolean bySuperheat = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT;
        Optional<Temperature> saturation =
                bySuperheat ? judgement.evaporatingSaturation() : judgement.condensingSaturation();
        Optional<Estimate> estimate = bySuperheat ? judgement.superheat() : judgement.subcooling();
        String kind = bySuperheat ? "superheat" : "subcooling";
        if (saturation.isPresent() && estimate.isPresent()) {
            messages.add(Message.of("finding." + kind)
                    .with("saturation", Fact.temperature(saturation.get(), units))
                    .with("value", difference(estimate.get().value()))
                    .with("uncertainty", difference(estimate.get().expandedUncertainty())));
        }
        judgement.target().ifPresent(target -> messages.add(target(target, kind)));
    }

    private Message target(Target target, String kind) {
        return Message.of("target." + Assessment.nameOf(target.source()))
                .with("kind", new Fact.Term(kind))
                .with("target", difference(target.value()));
    }

    private void compared(Judgement judgement, Verdict.Compared verdict, List<Message> messages) {
        TemperatureDifference by = verdict.deviation().value();
        String side = verdict.deviation().position() == Comparison.Position.INSIDE
                ? "on"
                : by.kelvins() > 0 ? "above" : "below";
        String method = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT ? "superheat" : "subcooling";
        messages.add(Message.of("verdict." + method + "." + Assessment.nameOf(verdict.kind()))
                .with("by", difference(TemperatureDifference.kelvins(Math.abs(by.kelvins()))))
                .with("side", new Fact.Term("side." + side)));
        if (verdict.borderline()) {
            Optional<Estimate> estimate =
                    judgement.method() == ChargeMethod.TOTAL_SUPERHEAT ? judgement.superheat() : judgement.subcooling();
            messages.add(estimate.flatMap(Estimate::dominating)
                    .map(instrument -> Message.of("verdict.borderline")
                            .with("instrument", new Fact.Term("instrument." + Assessment.nameOf(instrument))))
                    .orElseGet(() -> Message.of("verdict.borderline.plain")));
        }
        judgement.conditions().forEach(each -> failed(each, messages));
    }

    private void valve(ValveCheck check, List<Message> messages) {
        messages.add(Message.of("valve." + Assessment.nameOf(check.superheat().position()))
                .with("value", difference(check.superheat().value()))
                .with("low", difference(check.superheat().limits().low()))
                .with("high", difference(check.superheat().limits().high())));
    }

    private void failed(FailedCondition failed, List<Message> messages) {
        messages.add(Message.of("condition." + Assessment.nameOf(failed.condition())));
        failed.remedies().stream().map(Findings::remedy).forEach(messages::add);
    }

    private static Message remedy(Remedy remedy) {
        return Message.of("remedy." + Assessment.nameOf(remedy));
    }

    /** Readings that cannot all be true. */
    Message contradiction(Contradiction contradiction) {
        return Message.of("contradiction." + Assessment.nameOf(contradiction.kind()))
                .with(
                        "quantities",
                        new Fact.Listing(
                                contradiction.between().stream().map(Fact::name).toList()));
    }

    /** Why the verdict is what it is, at length. */
    List<Message> why(Judgement judgement) {
        List<Message> messages = new ArrayList<>();
        messages.add(Message.of("why.method." + Assessment.nameOf(judgement.method())));
        judgement
                .target()
                .map(Target::source)
                .filter(source -> source != TargetSource.RATING_PLATE)
                .ifPresent(source -> messages.add(Message.of("why.target." + Assessment.nameOf(source))));
        messages.add(Message.of(
                "why.verdict." + Assessment.nameOf(judgement.verdict().kind())));
        return messages;
    }

    private Fact difference(TemperatureDifference difference) {
        return Fact.difference(difference, units);
    }
}
