package readback.assistant.dialogue.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import readback.calc.charge.Judgement;
import readback.calc.charge.ValveCheck;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.condition.FailedCondition;
import readback.calc.condition.Remedy;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Undecided;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.Target;
import readback.calc.targets.TargetSource;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** A judgement as messages: what it is and what to do first, then the numbers, then how sure it is. */
public final class JudgementMessages {

    private final UnitSetting units;

    public JudgementMessages(UnitSetting units) {
        this.units = units;
    }

    /**
     * Tells the verdict: at once what it is, what is suspected and what to do first, the rest on request.
     *
     * @param suspects what is suspected beside or in place of the charge
     * @param trimmed whether a charge within its limits is still brought to the target
     */
    public void verdict(Judgement judgement, List<Message> suspects, boolean trimmed, Telling telling) {
        values(judgement, telling);
        judgement.verdict().fold(told(judgement, suspects, trimmed, telling)).run();
    }

    private Verdict.Cases<Runnable> told(
            Judgement judgement, List<Message> suspects, boolean trimmed, Telling telling) {
        return new Verdict.Cases<>() {
            @Override
            public Runnable compared(Verdict.Compared compared) {
                return () -> {
                    JudgementMessages.this.compared(judgement, compared, trimmed, telling);
                    boolean right = judgement.verdict().kind() == Verdict.Kind.IN_TOLERANCE;
                    suspects.forEach(right ? telling::headline : telling::reason);
                    judgement.valveCheck().ifPresent(check -> {
                        boolean wrong = check.superheat().position() != Comparison.Position.INSIDE;
                        valve(check, right && wrong && suspects.isEmpty() ? telling::headline : telling::number);
                    });
                };
            }

            @Override
            public Runnable noValidTest(Verdict.NoValidTest invalid) {
                return () -> {
                    telling.headline(Message.of("verdict.no-valid-test"));
                    // whoever thaws a coil should know why it froze
                    List<List<Message>> why = new ArrayList<>(List.of(suspects));
                    invalid.contradictions().forEach(each -> why.add(List.of(contradiction(each))));
                    invalid.conditions().forEach(each -> why.add(failed(each)));
                    firstOf(why, telling);
                    judgement.valveCheck().ifPresent(check -> valve(check, telling::number));
                };
            }

            @Override
            public Runnable doNotCharge(Verdict.DoNotCharge stopped) {
                return () -> {
                    boolean open = stopped.reasons().equals(Set.of(Verdict.DoNotCharge.Reason.CAUSE_OPEN));
                    telling.headline(Message.of(open ? "verdict.cannot-tell" : "verdict.do-not-charge"));
                    // air that is known to be too little comes before any suspicion, but for the ice that it made
                    boolean airFirst = fails(judgement, Condition.AIRFLOW_SUFFICIENT)
                            && !fails(judgement, Condition.COIL_FREE_OF_ICE);
                    List<List<Message>> why = new ArrayList<>();
                    if (airFirst) {
                        failing(judgement, Condition.AIRFLOW_SUFFICIENT::equals).forEach(why::add);
                    }
                    // the suspicion tells more than the reason; without one the reason must do
                    why.add(suspects);
                    stopped.reasons().stream()
                            .filter(reason -> !airFirst || reason != Verdict.DoNotCharge.Reason.AIRFLOW_TOO_LOW)
                            .sorted()
                            .map(reason -> List.of(Message.of("reason." + ConstantName.of(reason))))
                            .forEach(why::add);
                    // nothing is moved anyhow, so airflow need not be shown
                    failing(
                                    judgement,
                                    each -> each != Condition.AIRFLOW_SHOWN
                                            && !(airFirst && each == Condition.AIRFLOW_SUFFICIENT))
                            .forEach(why::add);
                    firstOf(why, telling);
                    judgement.valveCheck().ifPresent(check -> valve(check, telling::number));
                };
            }

            @Override
            public Runnable incomplete(Verdict.Incomplete incomplete) {
                return () -> {};
            }
        };
    }

    /** The first reason that there is, with the first thing to do about it, is said at once. */
    private static void firstOf(List<List<Message>> reasons, Telling telling) {
        List<List<Message>> why =
                reasons.stream().filter(each -> !each.isEmpty()).toList();
        for (int i = 0; i < why.size(); i++) {
            for (int j = 0; j < why.get(i).size(); j++) {
                Message message = why.get(i).get(j);
                if (i == 0 && j < 2) {
                    telling.headline(message);
                } else {
                    telling.reason(message);
                }
            }
        }
    }

    private void values(Judgement judgement, Telling telling) {
        boolean bySuperheat = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT;
        Optional<Temperature> saturation =
                bySuperheat ? judgement.evaporatingSaturation() : judgement.condensingSaturation();
        Optional<Estimate> estimate = bySuperheat ? judgement.superheat() : judgement.subcooling();
        String kind = bySuperheat ? "superheat" : "subcooling";
        if (saturation.isPresent() && estimate.isPresent()) {
            telling.number(Message.of("finding." + kind)
                    .with("saturation", Fact.temperature(saturation.get(), units))
                    .with("value", difference(estimate.get().value()))
                    .with("uncertainty", difference(estimate.get().expandedUncertainty())));
        }
        judgement.target().ifPresent(target -> telling.number(target(target, kind)));
    }

    private Message target(Target target, String kind) {
        return Message.of("target." + ConstantName.of(target.source()))
                .with("kind", new Fact.Term(kind))
                .with("target", difference(target.value()));
    }

    private void compared(Judgement judgement, Verdict.Compared verdict, boolean trimmed, Telling telling) {
        TemperatureDifference by = verdict.deviation().value();
        String side = verdict.deviation().position() == Comparison.Position.INSIDE ? "on" : side(by);
        String method = judgement.method() == ChargeMethod.TOTAL_SUPERHEAT ? "superheat" : "subcooling";
        String kind = ConstantName.of(verdict.kind());
        Fact.Amount far = difference(TemperatureDifference.kelvins(Math.abs(by.kelvins())));
        if (trimmed) {
            telling.headline(Message.of("verdict.nearly")
                    .with("kind", new Fact.Term(method))
                    .with("by", far)
                    .with("side", new Fact.Term("side." + side(by))));
        } else if (verdict.borderline()) {
            telling.headline(Message.of("verdict.undecided." + (far.value().signum() == 0 ? "on-target" : kind))
                    .with("kind", new Fact.Term(method))
                    .with("by", far)
                    .with("side", new Fact.Term("side." + side(by))));
            verdict.undecided().map(this::blame).ifPresent(telling::reason);
        } else {
            telling.headline(Message.of("verdict." + method + "." + kind)
                    .with("by", far)
                    .with("side", new Fact.Term("side." + side)));
        }
        // a charge is compared beside a cold coil only where no ice was found, and its caution was given
        judgement.conditions().stream()
                .filter(each -> each.condition() != Condition.COIL_ABOVE_FREEZING)
                .forEach(each -> failed(each).forEach(telling::reason));
    }

    private static String side(TemperatureDifference by) {
        return by.kelvins() > 0 ? "above" : "below";
    }

    /** The instrument that leaves it open, and how good it would have to be. */
    private Message blame(Undecided undecided) {
        Fact instrument = new Fact.Term("instrument." + ConstantName.of(undecided.instrument()));
        return undecided
                .sufficientTemperature()
                .map(limit -> RoundedFacts.downTo(limit, units))
                .or(() -> undecided.sufficientPressure().map(limit -> RoundedFacts.downTo(limit, units)))
                .filter(accuracy -> accuracy.value().signum() > 0)
                .map(accuracy -> Message.of("undecided.sufficient")
                        .with("instrument", instrument)
                        .with("accuracy", accuracy))
                .orElseGet(() -> Message.of("undecided.none-suffices").with("instrument", instrument));
    }

    private void valve(ValveCheck check, Consumer<Message> telling) {
        telling.accept(Message.of("valve." + ConstantName.of(check.superheat().position()))
                .with("value", difference(check.superheat().value()))
                .with("low", difference(check.superheat().limits().low()))
                .with("high", difference(check.superheat().limits().high())));
    }

    private static boolean fails(Judgement judgement, Condition condition) {
        return judgement.conditions().stream().anyMatch(each -> each.condition() == condition);
    }

    private static Stream<List<Message>> failing(Judgement judgement, Predicate<Condition> which) {
        return judgement.conditions().stream()
                .filter(each -> which.test(each.condition()))
                .map(JudgementMessages::failed);
    }

    /** What fails, then what can be done about it. */
    private static List<Message> failed(FailedCondition failed) {
        List<Message> messages = new ArrayList<>();
        messages.add(Message.of("condition." + ConstantName.of(failed.condition())));
        failed.remedies().stream().map(JudgementMessages::remedy).forEach(messages::add);
        return messages;
    }

    private static Message remedy(Remedy remedy) {
        return Message.of("remedy." + ConstantName.of(remedy));
    }

    /** Readings that cannot all be true. */
    public Message contradiction(Contradiction contradiction) {
        return Message.of("contradiction." + ConstantName.of(contradiction.kind()))
                .with(
                        "quantities",
                        new Fact.Listing(
                                contradiction.between().stream().map(Fact::name).toList()));
    }

    /** Why the verdict is what it is; how the method works is for the eye, where there is more to say of this one. */
    public List<Message> why(Judgement judgement, Optional<Diagnosis> diagnosis, List<Message> reasons) {
        List<Message> messages =
                new ArrayList<>(reasons.stream().map(Message::outLoud).toList());
        messages.add(
                Message.of("why.verdict." + ConstantName.of(judgement.verdict().kind())));
        if (judgement.verdict().kind() == Verdict.Kind.DO_NOT_CHARGE) {
            diagnosis.flatMap(DiagnosisMessages::clues).ifPresent(messages::add);
        }
        Message method = Message.of("why.method." + ConstantName.of(judgement.method()));
        messages.add(reasons.isEmpty() ? method : method.quietly());
        judgement
                .target()
                .map(Target::source)
                .filter(source -> source != TargetSource.RATING_PLATE)
                .ifPresent(source -> messages.add(
                        Message.of("why.target." + ConstantName.of(source)).quietly()));
        return messages;
    }

    private Fact.Amount difference(TemperatureDifference difference) {
        return Fact.difference(difference, units);
    }
}
