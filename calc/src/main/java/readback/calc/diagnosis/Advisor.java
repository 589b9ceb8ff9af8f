package readback.calc.diagnosis;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.Temperature;

/** Judges the charge and looks for what else may be wrong, so that refrigerant is not moved for another fault. */
public final class Advisor {

    /** Low superheat is dangerous in itself; "recover" gives way only to a fault that stands on this much evidence. */
    private static final int EVIDENCE_AGAINST_RECOVERING = 3;

    /** Freezing, and 2 °F for the gauge. */
    private static final Temperature WARMEST_ICED_COIL = Temperature.fahrenheit(34);

    private final ChargeJudge judge = new ChargeJudge();
    private final Diagnostician diagnostician = new Diagnostician();

    /** The advice from readings alone. */
    public Advice advise(SystemUnderTest system, Readings readings) {
        return advise(system, readings, Map.of());
    }

    /**
     * The advice from readings and from what was seen or tried.
     *
     * @param findings answered questions; those not asked are absent
     */
    public Advice advise(SystemUnderTest system, Readings readings, Map<Finding, Boolean> findings) {
        return advise(system, readings, findings, Set.of());
    }

    /**
     * The advice from readings, from what was seen or tried, and from conditions that the technician denied.
     *
     * @param findings answered questions; those not asked are absent
     * @param denied conditions that do not hold, whatever the readings say
     */
    public Advice advise(
            SystemUnderTest system, Readings readings, Map<Finding, Boolean> findings, Set<Condition> denied) {
        Judgement judgement = judge.judge(system, readings, withIce(denied, findings));
        List<Evidence> evidence = EvidenceFinder.evidence(system, readings, judgement);
        Diagnosis diagnosis = diagnostician
                .diagnose(judgement.method(), evidence, findings, excluded(judgement, findings))
                .asking(readings);
        boolean withheld = withheld(judgement, diagnosis, evidence.size() + findings.size());
        return new Advice(
                withheld
                        ? judgement.withVerdict(
                                new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.OTHER_FAULT_LEADS)))
                        : judgement,
                diagnosis);
    }

    /** A coil that boils refrigerant above freezing keeps no ice, unless someone sees it. */
    private static Set<Fault> excluded(Judgement judgement, Map<Finding, Boolean> findings) {
        boolean warm = judgement
                .evaporatingSaturation()
                .filter(coil -> coil.compareTo(WARMEST_ICED_COIL) > 0)
                .isPresent();
        return warm && !findings.getOrDefault(Finding.ICE_ON_COIL, false) ? Set.of(Fault.FROZEN_COIL) : Set.of();
    }

    private static Set<Condition> withIce(Set<Condition> denied, Map<Finding, Boolean> findings) {
        Set<Condition> all = EnumSet.noneOf(Condition.class);
        all.addAll(denied);
        if (findings.getOrDefault(Finding.ICE_ON_COIL, false)) {
            all.add(Condition.COIL_FREE_OF_ICE);
        }
        return all;
    }

    /** A cold or iced coil is itself a symptom: the fault behind it is worth naming, where everything was read. */
    private static boolean coldCoilAlone(Judgement judgement) {
        return judgement.verdict() instanceof Verdict.NoValidTest invalid
                && invalid.contradictions().isEmpty()
                && judgement.missing().isEmpty()
                && invalid.conditions().stream()
                        .allMatch(failed -> failed.condition() == Condition.COIL_ABOVE_FREEZING
                                || failed.condition() == Condition.COIL_FREE_OF_ICE);
    }

    private static boolean withheld(Judgement judgement, Diagnosis diagnosis, int pieces) {
        Fault leader = diagnosis.leader().fault();
        boolean otherFault = leader != Fault.NONE && !leader.isCharge();
        boolean enough = diagnosis.certainty() != Diagnosis.Certainty.TOO_LITTLE_EVIDENCE;
        return switch (judgement.verdict().kind()) {
            case ADD, WEIGH_IN -> otherFault && enough;
            case NO_VALID_TEST -> otherFault && enough && coldCoilAlone(judgement);
            case RECOVER ->
                otherFault
                        && diagnosis.certainty() == Diagnosis.Certainty.CLEAR
                        && pieces >= EVIDENCE_AGAINST_RECOVERING;
            case IN_TOLERANCE, DO_NOT_CHARGE, INCOMPLETE -> false;
        };
    }
}
