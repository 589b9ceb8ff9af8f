package readback.calc.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Set;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Readings;
import readback.calc.charge.SystemUnderTest;
import readback.calc.charge.Verdict;
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
        Judgement judgement = judge.judge(system, readings);
        List<Evidence> evidence = Expectations.evidence(system, readings, judgement);
        Diagnosis diagnosis = diagnostician
                .diagnose(judgement.method(), evidence, findings, excluded(judgement, findings))
                .asking(readings);
        boolean withheld = withheld(judgement.verdict().kind(), diagnosis, evidence.size() + findings.size());
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

    private static boolean withheld(Verdict.Kind kind, Diagnosis diagnosis, int pieces) {
        Fault leader = diagnosis.leader().fault();
        boolean otherFault = leader != Fault.NONE && !leader.isCharge();
        return switch (kind) {
            case ADD -> otherFault && diagnosis.certainty() != Diagnosis.Certainty.TOO_LITTLE_EVIDENCE;
            case RECOVER ->
                otherFault
                        && diagnosis.certainty() == Diagnosis.Certainty.CLEAR
                        && pieces >= EVIDENCE_AGAINST_RECOVERING;
            case IN_TOLERANCE, NO_VALID_TEST, DO_NOT_CHARGE, INCOMPLETE -> false;
        };
    }
}
