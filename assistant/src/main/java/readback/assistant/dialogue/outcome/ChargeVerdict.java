package readback.assistant.dialogue.outcome;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.condition.FailedCondition;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Fault;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;
import readback.calc.targets.Target;
import readback.prompts.checklist.Judged;

/**
 * The verdict on the charge.
 *
 * @param early what was missing of the settling time when the readings were begun; zero for none
 * @param suspect who leads where the charge is not to be touched
 */
public record ChargeVerdict(
        Verdict.Kind verdict,
        boolean borderline,
        ChargeMethod method,
        Optional<Temperature> evaporating,
        Optional<Temperature> condensing,
        Optional<TemperatureDifference> superheat,
        Optional<TemperatureDifference> subcooling,
        Optional<TemperatureDifference> target,
        Optional<Comparison.Position> valve,
        List<Contradiction.Kind> contradictions,
        Duration early,
        List<Condition> failed,
        Optional<Suspected> suspect)
        implements JobOutcome {

    /** The leading cause and how sure the ranking is. */
    public record Suspected(Fault fault, Diagnosis.Certainty certainty) {}

    public ChargeVerdict {
        contradictions = List.copyOf(contradictions);
        failed = List.copyOf(failed);
    }

    public static ChargeVerdict of(Judgement judgement, Duration early, Optional<Diagnosis> diagnosis) {
        return new ChargeVerdict(
                judgement.verdict().kind(),
                judgement.verdict().borderline(),
                judgement.method(),
                judgement.evaporatingSaturation().map(ChargeVerdict::millikelvins),
                judgement.condensingSaturation().map(ChargeVerdict::millikelvins),
                judgement.superheat().map(estimate -> millikelvins(estimate.value())),
                judgement.subcooling().map(estimate -> millikelvins(estimate.value())),
                judgement.target().map(Target::value).map(ChargeVerdict::millikelvins),
                judgement.valveCheck().map(check -> check.superheat().position()),
                judgement.contradictions().stream().map(Contradiction::kind).toList(),
                early,
                judgement.conditions().stream().map(FailedCondition::condition).toList(),
                diagnosis
                        .filter(any -> judgement.verdict().kind() == Verdict.Kind.DO_NOT_CHARGE)
                        .map(each -> new Suspected(each.leader().fault(), each.certainty())));
    }

    @Override
    public Judged judged() {
        return Judged.CHARGE;
    }

    @Override
    public String name() {
        return ConstantName.of(verdict);
    }

    /** The side of the system that the method does not use does not count. */
    @Override
    public boolean alike(JobOutcome other) {
        return other instanceof ChargeVerdict charge && carrying().equals(charge.carrying());
    }

    private ChargeVerdict carrying() {
        boolean low = method == ChargeMethod.TOTAL_SUPERHEAT;
        return new ChargeVerdict(
                verdict,
                borderline,
                method,
                evaporating.filter(any -> low),
                condensing.filter(any -> !low),
                superheat.filter(any -> low),
                subcooling.filter(any -> !low),
                target,
                valve,
                contradictions,
                early,
                failed,
                suspect);
    }

    @Override
    public String line() {
        StringJoiner line = new StringJoiner(" ");
        line.add(name());
        if (borderline) {
            line.add("borderline");
        }
        line.add("method=" + ConstantName.of(method));
        evaporating.ifPresent(t -> line.add("evaporating=" + Math.round(t.kelvin() * 1000) + "mK"));
        condensing.ifPresent(t -> line.add("condensing=" + Math.round(t.kelvin() * 1000) + "mK"));
        superheat.ifPresent(d -> line.add("superheat=" + shown(d)));
        subcooling.ifPresent(d -> line.add("subcooling=" + shown(d)));
        target.ifPresent(d -> line.add("target=" + shown(d)));
        valve.ifPresent(position -> line.add("valve=" + ConstantName.of(position)));
        contradictions.forEach(each -> line.add("contradiction=" + ConstantName.of(each)));
        if (!early.isZero()) {
            line.add("measured-early=" + early);
        }
        failed.forEach(each -> line.add("failed=" + ConstantName.of(each)));
        suspect.ifPresent(
                each -> line.add("suspect=" + ConstantName.of(each.fault())).add(ConstantName.of(each.certainty())));
        return line.toString();
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        List<Figure> figures = new ArrayList<>();
        evaporating.ifPresent(t -> figures.add(Figure.temperature("evaporating", t, units)));
        condensing.ifPresent(t -> figures.add(Figure.temperature("condensing", t, units)));
        superheat.ifPresent(d -> figures.add(Figure.difference("superheat", d, units)));
        subcooling.ifPresent(d -> figures.add(Figure.difference("subcooling", d, units)));
        target.ifPresent(d -> figures.add(Figure.difference("target", d, units)));
        return figures;
    }

    private static String shown(TemperatureDifference difference) {
        return Math.round(difference.kelvins() * 1000) + "mK";
    }

    private static Temperature millikelvins(Temperature temperature) {
        return Temperature.kelvin(Math.round(temperature.kelvin() * 1000) / 1000.0);
    }

    private static TemperatureDifference millikelvins(TemperatureDifference difference) {
        return TemperatureDifference.kelvins(Math.round(difference.kelvins() * 1000) / 1000.0);
    }
}
