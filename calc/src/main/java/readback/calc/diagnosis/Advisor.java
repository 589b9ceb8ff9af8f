package readback.calc.diagnosis;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.calc.caution.CautionFinder;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Seen;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.condition.ConditionCheck;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;

/** Judges the charge and looks for what else may be wrong, so that refrigerant is not moved for another fault. */
public final class Advisor {

    /** What a move would put right must outweigh everything else together. Decision 0005. */
    private static final double MENDS = 0.5;

    /** Where "nothing is wrong" is the main rival, what a move would put right needs this. Decision 0005. */
    private static final double MENDS_AT_LEAST = 0.25;

    /** And it has to be so many times as likely as all other faults together. Decision 0005. */
    private static final double MENDS_BEFORE_OTHERS = 1.5;

    /** The same with a coil below freezing, where too little air has to be ruled out first. Decision 0005. */
    private static final double MENDS_COLD_COIL = 0.8;

    /** Before a move nothing more is asked when the cause is as sure as this. Decision 0005. */
    private static final double SETTLED = 0.97;

    /** What an observation before a move has to tell at least, in natural units of information. Decision 0005. */
    private static final double WORTH_BEFORE_A_MOVE = 0.05;

    /** With a right charge, something else has to be as likely as this to be asked about. Decision 0005. */
    private static final double DOUBTFUL = 0.3;

    /** What an observation has to tell at least while the charge is right. Decision 0005. */
    private static final double WORTH_WHEN_RIGHT = 0.15;

    /** With a right charge, something else is named when it is likelier than not. */
    private static final double LIKELY = 0.5;

    /** With a move, something else is named that is as likely as this. */
    private static final double NOT_RULED_OUT = 0.15;

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
        return advise(system, readings, findings, Set.of(), Set.of(), Course.BEGINNING);
    }

    /**
     * The advice from readings, from what was seen or tried, and from conditions that the technician denied.
     *
     * @param findings answered questions; those not asked are absent
     * @param passedOver questions that the technician left open; they are not asked again
     * @param denied conditions that do not hold, whatever the readings say
     * @param course what was moved so far
     */
    public Advice advise(
            SystemUnderTest system,
            Readings readings,
            Map<Finding, Boolean> findings,
            Set<Finding> passedOver,
            Set<Condition> denied,
            Course course) {
        boolean iceLookedFor = findings.containsKey(Finding.ICE_ON_COIL);
        boolean iced = findings.getOrDefault(Finding.ICE_ON_COIL, false);
        Judgement judgement = judge.judge(
                system,
                readings,
                withIce(denied, iced),
                new Seen(iceLookedFor && !iced, findings.getOrDefault(Finding.SUCTION_SWINGS, false)));
        if (system.condenserRestricted() || ConditionCheck.byMakersChart(system, readings)) {
            return chargeAlone(judgement);
        }
        Diagnosis diagnosis = diagnostician
                .diagnose(
                        judgement.method(),
                        EvidenceFinder.observed(system, readings, judgement),
                        findings,
                        excluded(judgement, iced))
                .asking(readings, passedOver);
        Judgement told = withheld(judgement, diagnosis, course)
                .map(judgement::withVerdict)
                .orElse(judgement);
        return new Advice(told, diagnosis, due(judgement, diagnosis, course), reservation(told, diagnosis));
    }

    /**
     * With a restrictor the pressures are held by hand and are evidence of nothing but the charge; of a cold day, which
     * the maker's chart alone covers, there are no simulated units to compare with.
     */
    private Advice chargeAlone(Judgement judgement) {
        Diagnosis none = diagnostician.diagnose(judgement.method(), List.of(), Map.of());
        return new Advice(judgement, none, Optional.empty(), Optional.empty());
    }

    /** A coil that boils refrigerant above freezing keeps no ice, unless someone sees it. */
    private static Set<Fault> excluded(Judgement judgement, boolean iced) {
        boolean warm = judgement
                .evaporatingSaturation()
                .filter(coil -> coil.compareTo(CautionFinder.SURELY_ABOVE_FREEZING) > 0)
                .isPresent();
        return warm && !iced ? Set.of(Fault.FROZEN_COIL) : Set.of();
    }

    private static Set<Condition> withIce(Set<Condition> denied, boolean iced) {
        Set<Condition> all = EnumSet.noneOf(Condition.class);
        all.addAll(denied);
        if (iced) {
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

    /** The verdict in place of one that is not to be acted on. */
    private static Optional<Verdict> withheld(Judgement judgement, Diagnosis diagnosis, Course course) {
        Optional<Fault> mended = mended(judgement);
        if (mended.isPresent()) {
            if (course == Course.CONTRARY) {
                return Optional.of(new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.CONTRARY_RESPONSE)));
            }
            if (stands(judgement, diagnosis, mended.get(), course)) {
                return Optional.empty();
            }
            boolean otherLeads = !diagnosis.leadingFault().fault().isCharge();
            return Optional.of(new Verdict.DoNotCharge(Set.of(
                    otherLeads
                            ? Verdict.DoNotCharge.Reason.OTHER_FAULT_LEADS
                            : Verdict.DoNotCharge.Reason.CAUSE_OPEN)));
        }
        Fault leader = diagnosis.leader().fault();
        return judgement.verdict().kind() == Verdict.Kind.NO_VALID_TEST
                        && leader != Fault.NONE
                        && !leader.isCharge()
                        && diagnosis.certainty() != Diagnosis.Certainty.TOO_LITTLE_EVIDENCE
                        && coldCoilAlone(judgement)
                ? Optional.of(new Verdict.DoNotCharge(Set.of(Verdict.DoNotCharge.Reason.OTHER_FAULT_LEADS)))
                : Optional.empty();
    }

    /**
     * How likely a move puts right what is wrong. Once it was the charge, the nearer it comes to its target the less it
     * shows; "nothing" is then no reason to stop short of it.
     */
    private static double mended(Diagnosis diagnosis, Fault fault, Course course) {
        return diagnosis.probability(fault) + (course == Course.UNDER_WAY ? diagnosis.probability(Fault.NONE) : 0);
    }

    /**
     * Whether a move is to be acted on. The target says that the charge is off; that nothing is wrong all the same may
     * be likelier than too much or too little of it, another fault may not.
     */
    private static boolean stands(Judgement judgement, Diagnosis diagnosis, Fault mended, Course course) {
        double likely = diagnosis.probability(mended);
        return mended(diagnosis, mended, course) >= mends(judgement)
                || (!coldCoil(judgement)
                        && likely >= MENDS_AT_LEAST
                        && likely >= MENDS_BEFORE_OTHERS * other(diagnosis));
    }

    private static double mends(Judgement judgement) {
        return coldCoil(judgement) ? MENDS_COLD_COIL : MENDS;
    }

    private static boolean coldCoil(Judgement judgement) {
        return judgement.conditions().stream().anyMatch(failed -> failed.condition() == Condition.COIL_ABOVE_FREEZING);
    }

    /** What a move would put right; absent where the verdict is no move. */
    private static Optional<Fault> mended(Judgement judgement) {
        return judgement.verdict().comparison().flatMap(compared -> mended(judgement.method(), compared));
    }

    private static Optional<Fault> mended(ChargeMethod method, Verdict.Compared compared) {
        return switch (compared.kind()) {
            case ADD -> Optional.of(Fault.UNDERCHARGE);
            case RECOVER -> Optional.of(Fault.OVERCHARGE);
            case WEIGH_IN ->
                Optional.of(
                        (compared.deviation().value().kelvins() > 0) == (method == ChargeMethod.TOTAL_SUPERHEAT)
                                ? Fault.UNDERCHARGE
                                : Fault.OVERCHARGE);
            default -> Optional.empty();
        };
    }

    private static Optional<NextObservation> due(Judgement judgement, Diagnosis diagnosis, Course course) {
        if (coldCoilAlone(judgement)) {
            Optional<NextObservation> ice = diagnosis.observations().stream()
                    .map(Diagnosis.Worth::observation)
                    .filter(new NextObservation.Look(Finding.ICE_ON_COIL)::equals)
                    .findFirst();
            if (ice.isPresent()) {
                return ice;
            }
        }
        Optional<Fault> mended = mended(judgement);
        if (mended.isPresent()) {
            // what was settled before the first move is asked again only when it no longer holds
            double settled = course == Course.UNDER_WAY ? mends(judgement) : SETTLED;
            return course != Course.CONTRARY && mended(diagnosis, mended.get(), course) >= settled
                    ? Optional.empty()
                    : diagnosis.next(WORTH_BEFORE_A_MOVE);
        }
        return switch (judgement.verdict().kind()) {
            case IN_TOLERANCE -> other(diagnosis) < DOUBTFUL ? Optional.empty() : diagnosis.next(WORTH_WHEN_RIGHT);
            case DO_NOT_CHARGE -> diagnosis.next();
            case NO_VALID_TEST -> coldCoilAlone(judgement) ? diagnosis.next() : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** How likely something other than the charge is wrong. */
    private static double other(Diagnosis diagnosis) {
        return diagnosis.suspects().stream()
                .filter(suspect ->
                        suspect.fault() != Fault.NONE && !suspect.fault().isCharge())
                .mapToDouble(Suspect::probability)
                .sum();
    }

    /**
     * Missing refrigerant behind the ice: nothing is judged or topped up with ice on the coil, but whoever thaws it
     * should know why it froze.
     */
    private static Optional<Suspect> shortOfCharge(Judgement judgement, Diagnosis diagnosis) {
        Suspect leader = diagnosis.leader();
        return coldCoilAlone(judgement)
                        && leader.fault() == Fault.UNDERCHARGE
                        && leader.probability() >= MENDS_COLD_COIL
                        && diagnosis.certainty() != Diagnosis.Certainty.TOO_LITTLE_EVIDENCE
                ? Optional.of(leader)
                : Optional.empty();
    }

    private static Optional<Suspect> reservation(Judgement judgement, Diagnosis diagnosis) {
        if (judgement.verdict().kind() == Verdict.Kind.NO_VALID_TEST) {
            return shortOfCharge(judgement, diagnosis);
        }
        double least = switch (judgement.verdict().kind()) {
            case IN_TOLERANCE -> LIKELY;
            case ADD, RECOVER, WEIGH_IN -> NOT_RULED_OUT;
            default -> 1;
        };
        return other(diagnosis) >= least
                ? diagnosis.suspects().stream()
                        .filter(suspect -> suspect.fault() != Fault.NONE
                                && !suspect.fault().isCharge())
                        .findFirst()
                : Optional.empty();
    }
}
