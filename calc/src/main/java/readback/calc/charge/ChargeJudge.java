package readback.calc.charge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.condition.AirflowEvidence;
import readback.calc.condition.Condition;
import readback.calc.condition.ConditionCheck;
import readback.calc.condition.FailedCondition;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.LineState;
import readback.calc.measurement.Readings;
import readback.calc.measurement.Saturation;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.measurement.Undecided;
import readback.calc.plausibility.Contradiction;
import readback.calc.plausibility.ContradictionFinder;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.targets.Target;
import readback.calc.targets.TargetFinder;

/**
 * Judges the charge of a running system by the method that its metering device allows. Always answers: what is missing,
 * contradictory or out of bounds is part of the answer.
 *
 * <p>It looks at the charge alone. Whether another fault explains the readings better is for
 * {@link readback.calc.diagnosis}.
 */
public final class ChargeJudge {

    /** The judgement that the readings allow so far. */
    public Judgement judge(SystemUnderTest system, Readings readings) {
        return judge(system, readings, Set.of());
    }

    /**
     * The judgement that the readings allow so far.
     *
     * @param denied conditions that do not hold by what the technician sees, whatever the readings say
     */
    public Judgement judge(SystemUnderTest system, Readings readings, Set<Condition> denied) {
        return judge(system, readings, denied, Seen.NOTHING);
    }

    /**
     * The judgement that the readings allow so far.
     *
     * @param denied conditions that do not hold by what the technician sees, whatever the readings say
     * @param seen what he saw that changes how the readings are taken
     */
    public Judgement judge(SystemUnderTest system, Readings readings, Set<Condition> denied, Seen seen) {
        List<Contradiction> contradictions =
                new ArrayList<>(ContradictionFinder.impossible(readings, system.atmosphere()));
        Readings possible = readings.without(ContradictionFinder.involved(contradictions));
        LineState lines = LineState.of(system, possible);
        contradictions.addAll(ContradictionFinder.among(possible, lines));
        Set<Quantity> doubted = ContradictionFinder.involved(contradictions);
        Readings sound = possible.without(doubted);
        LineState soundLines = lines.without(doubted);

        Optional<Estimate> superheat = soundLines.superheat();
        Optional<Estimate> subcooling = soundLines.subcooling();
        Optional<Temperature> evaporatingSaturation = lines.evaporating().map(Saturation::temperature);
        Optional<Temperature> condensingSaturation = lines.condensing().map(Saturation::temperature);

        ChargeMethod method = system.meteringDevice().chargeMethod();
        TargetFinder.Found target =
                TargetFinder.find(method, system.makersTarget(), sound, condensingSaturation, system.accuracy());
        List<FailedCondition> conditions = new ArrayList<>(target.failures());
        AirflowEvidence airflow = AirflowEvidence.of(sound);
        conditions.addAll(ConditionCheck.failing(system, sound, airflow, evaporatingSaturation, denied));
        Set<Quantity> missing = missing(method, readings, target);
        Optional<Estimate> actual = method == ChargeMethod.TOTAL_SUPERHEAT ? superheat : subcooling;
        Verdict verdict = verdict(
                system,
                possible,
                lines,
                actual,
                target.target(),
                blocking(conditions, seen.coilClear()),
                blocking(system, contradictions),
                missing);
        if (verdict instanceof Verdict.Compared) {
            boolean moves = verdict.kind() == Verdict.Kind.ADD || verdict.kind() == Verdict.Kind.RECOVER;
            ConditionCheck.airflowNotShown(system, airflow, moves).ifPresent(conditions::add);
        }
        return new Judgement(
                method,
                evaporatingSaturation,
                condensingSaturation,
                superheat,
                subcooling,
                target.target(),
                verdict,
                method == ChargeMethod.SUBCOOLING
                        ? superheat.map(estimate -> ValveCheck.of(system, sound, estimate))
                        : Optional.empty(),
                conditions,
                contradictions,
                LiquidReturn.cautions(
                        Optional.of(system.refrigerant()), system.atmosphere(), possible, lines, seen.suctionSwings()),
                missing);
    }

    private static Verdict verdict(
            SystemUnderTest system,
            Readings possible,
            LineState lines,
            Optional<Estimate> actual,
            Optional<Target> target,
            List<FailedCondition> blocking,
            List<Contradiction> contradictions,
            Set<Quantity> missing) {
        for (FailedCondition failed : blocking) {
            if (failed.condition() == Condition.AIRFLOW_SUFFICIENT) {
                return new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.AIRFLOW_TOO_LOW));
            }
        }
        if (!blocking.isEmpty() || !contradictions.isEmpty()) {
            return new Verdict.NoValidTest(blocking, contradictions);
        }
        if (!missing.isEmpty() || actual.isEmpty() || target.isEmpty()) {
            return new Verdict.Incomplete(missing);
        }
        Verdict.Compared compared = compare(system, actual.get(), target.get());
        boolean recover = compared.kind() == Verdict.Kind.RECOVER;
        // Taking out what is too much lowers the danger; anything else would leave the liquid coming.
        if (!recover && LiquidReturn.suspected(system, possible, lines)) {
            return new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.LIQUID_AT_COMPRESSOR));
        }
        boolean move = recover || compared.kind() == Verdict.Kind.ADD;
        return move && ChargeByWeight.only(system.refrigerant(), nameplate(possible))
                ? new Verdict.Compared(Verdict.Kind.WEIGH_IN, compared.deviation(), compared.undecided())
                : compared;
    }

    private static List<FailedCondition> blocking(List<FailedCondition> conditions, boolean coilSeenClear) {
        List<FailedCondition> blocking = new ArrayList<>(0);
        for (FailedCondition failed : conditions) {
            if (failed.condition().blocking()
                    && !(coilSeenClear && failed.condition() == Condition.COIL_ABOVE_FREEZING)) {
                blocking.add(failed);
            }
        }
        return blocking;
    }

    private static Optional<Mass> nameplate(Readings readings) {
        return readings.find(Quantity.NAMEPLATE_CHARGE).map(charge -> Mass.kilograms(charge.base()));
    }

    private static Verdict.Compared compare(SystemUnderTest system, Estimate actual, Target target) {
        boolean bySuperheat = system.meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT;
        Band limits =
                bySuperheat ? system.limits().superheat() : system.limits().subcooling();
        Estimate deviation = target.deviation(actual);
        Comparison comparison = Comparison.of(deviation, limits);
        Verdict.Kind kind = switch (comparison.position()) {
            case INSIDE -> Verdict.Kind.IN_TOLERANCE;
            // More charge lowers superheat and raises subcooling.
            case ABOVE -> bySuperheat ? Verdict.Kind.ADD : Verdict.Kind.RECOVER;
            case BELOW -> bySuperheat ? Verdict.Kind.RECOVER : Verdict.Kind.ADD;
        };
        return new Verdict.Compared(kind, comparison, Undecided.of(deviation, comparison));
    }

    private static Set<Quantity> missing(ChargeMethod method, Readings readings, TargetFinder.Found target) {
        Set<Quantity> needed = method == ChargeMethod.TOTAL_SUPERHEAT
                ? EnumSet.of(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE)
                : EnumSet.of(Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE);
        needed.addAll(target.missing());
        needed.removeIf(readings::has);
        return needed;
    }

    /** The contradictions that touch what the verdict rests on. */
    private static List<Contradiction> blocking(SystemUnderTest system, List<Contradiction> contradictions) {
        if (contradictions.isEmpty()) {
            return contradictions;
        }
        Set<Quantity> basis = system.meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT
                ? EnumSet.of(
                        Quantity.SUCTION_PRESSURE,
                        Quantity.SUCTION_LINE_TEMPERATURE,
                        Quantity.RETURN_WET_BULB,
                        Quantity.OUTDOOR_TEMPERATURE,
                        Quantity.PLATE_SUPERHEAT)
                : EnumSet.of(Quantity.LIQUID_PRESSURE, Quantity.LIQUID_LINE_TEMPERATURE, Quantity.PLATE_SUBCOOLING);
        if (system.makersTarget().isPresent()) {
            basis.add(Quantity.OUTDOOR_TEMPERATURE);
        }
        return contradictions.stream()
                .filter(contradiction -> !Collections.disjoint(contradiction.between(), basis))
                .toList();
    }
}
