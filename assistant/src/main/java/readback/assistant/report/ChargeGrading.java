package readback.assistant.report;

import java.util.Optional;
import java.util.OptionalInt;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.charge.Judgement;
import readback.calc.commissioning.InstallationGrade;
import readback.calc.condition.AirflowEvidence;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Limits;
import readback.calc.targets.Target;
import readback.calc.targets.TargetSource;

/**
 * The grade of a charge, or why there is none. A grade rests on the charge as it was left: what was measured before
 * refrigerant was moved again tells nothing about it.
 *
 * @param deviation actual minus target against the limits of the standard; empty where the charge was not compared
 */
record ChargeGrading(Optional<InstallationGrade> grade, Reason reason, Optional<Comparison> deviation) {

    /** What the grade rests on, or what it lacks. */
    enum Reason {
        BY_READINGS,
        BY_WEIGHT,
        NOT_MEASURED,
        /** Refrigerant was moved after the measurement. */
        MOVED_SINCE,
        /** The readings were cleared or changed, and no verdict followed. */
        SUPERSEDED,
        /** The system was not given its time to settle. */
        EARLY,
        /** The standard protocol judges no charge without: RA3.2.2.7. */
        AIRFLOW_NOT_SHOWN,
        NOT_COMPARED,
        /** Held against what fits most units instead of this unit's own value. */
        COMMON_TARGET
    }

    private static ChargeGrading without(Reason reason) {
        return new ChargeGrading(Optional.empty(), reason, Optional.empty());
    }

    /** By its readings where they can be graded, else by its weight. */
    static ChargeGrading of(JobReport report) {
        ChargeGrading readings = byReadings(report);
        if (readings.grade().isPresent()) {
            return readings;
        }
        ChargeGrading weight = byWeight(report);
        return weight.grade().isPresent() || readings.reason() == Reason.NOT_MEASURED ? weight : readings;
    }

    /** By superheat or subcooling. */
    static ChargeGrading byReadings(JobReport report) {
        Optional<JobReport.Round> last = report.finalRound();
        if (last.isEmpty()) {
            return without(Reason.NOT_MEASURED);
        }
        JobReport.Round round = last.get();
        Optional<Comparison> deviation = deviation(round.judgement());
        Optional<Reason> lacks = lacks(report, round, deviation);
        return lacks.isPresent()
                ? new ChargeGrading(Optional.empty(), lacks.get(), deviation)
                : new ChargeGrading(deviation.map(InstallationGrade::ofCharge), Reason.BY_READINGS, deviation);
    }

    private static Optional<Reason> lacks(JobReport report, JobReport.Round round, Optional<Comparison> deviation) {
        if (movedAfter(report, round.event())) {
            return Optional.of(Reason.MOVED_SINCE);
        }
        if (!stands(report, round)) {
            return Optional.of(Reason.SUPERSEDED);
        }
        if (!round.outcome().early().isZero()) {
            return Optional.of(Reason.EARLY);
        }
        if (deviation.isEmpty()) {
            return Optional.of(Reason.NOT_COMPARED);
        }
        // that it was too little would have been the verdict
        if (!AirflowEvidence.of(round.assessment().readings()).shown()
                && !AirflowEvidence.of(report.last().readings()).shown()) {
            return Optional.of(Reason.AIRFLOW_NOT_SHOWN);
        }
        return round.judgement()
                .target()
                .filter(target -> target.source() == TargetSource.COMMON_PRACTICE)
                .map(any -> Reason.COMMON_TARGET);
    }

    /** Whether the readings of the end still lead to the verdict that was announced last. */
    private static boolean stands(JobReport report, JobReport.Round round) {
        return report.last()
                .judgement()
                .map(judgement -> ChargeVerdict.of(
                        judgement, round.outcome().early(), report.last().diagnosis()))
                .filter(round.outcome()::alike)
                .isPresent();
    }

    /** Empty where the verdict rests on no comparison with a target. */
    private static Optional<Comparison> deviation(Judgement judgement) {
        return judgement
                .verdict()
                .comparison()
                .flatMap(any -> judgement
                        .judged()
                        .flatMap(actual ->
                                judgement.target().map(target -> against(judgement.method(), target, actual))));
    }

    private static Comparison against(ChargeMethod method, Target target, Estimate actual) {
        return Comparison.of(
                target.deviation(actual),
                method == ChargeMethod.TOTAL_SUPERHEAT ? Limits.INSTALLER.superheat() : Limits.INSTALLER.subcooling());
    }

    /** By the scale. */
    static ChargeGrading byWeight(JobReport report) {
        Optional<JobReport.Result> last = report.results().stream()
                .filter(result -> result.outcome() instanceof WeighedIn)
                .reduce((earlier, later) -> later);
        if (last.isEmpty() || !(last.get().outcome() instanceof WeighedIn weighed)) {
            return without(Reason.NOT_MEASURED);
        }
        if (movedAfter(report, last.get().event())) {
            return without(Reason.MOVED_SINCE);
        }
        return weighed.comparison()
                .map(each -> new ChargeGrading(
                        Optional.of(InstallationGrade.ofCharge(each.outcome())), Reason.BY_WEIGHT, Optional.empty()))
                .orElseGet(() -> without(Reason.NOT_COMPARED));
    }

    private static boolean movedAfter(JobReport report, int event) {
        OptionalInt last = report.moves().moves().stream()
                .filter(move -> move.amount().base() > 0)
                .mapToInt(move -> move.event())
                .max();
        return last.isPresent() && last.getAsInt() > event;
    }
}
