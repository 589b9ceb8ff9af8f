package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Situation;
import readback.calc.charge.Correction;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.condition.AirflowPerTon;
import readback.calc.measurement.Limits;
import readback.calc.procedure.VacuumCriterion;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/** What checklists ask about the work around the charge check: what keeps a hold from beginning, what is left out. */
final class Holds {

    /** A finding: the job is the weigh-in and its charge is worked out. */
    static final String CHARGE_TO_WEIGH = "charge-to-weigh";

    /** When each finding holds, by the name that checklists use. */
    private static final Map<String, Predicate<Assessment>> FINDINGS = Map.ofEntries(
            Map.entry("test-pressure-above-plate", Holds::abovePlate),
            Map.entry("vacuum-not-deep-enough", Holds::notDeepEnough),
            Map.entry("line-included", Holds::lineIncluded),
            Map.entry("no-published-line-charge", assessment -> new WeighInJudge(assessment).unpublished()),
            Map.entry("suction-size-matters", assessment -> new WeighInJudge(assessment).suctionMatters()),
            Map.entry(
                    "included-suction-size-matters",
                    assessment -> new WeighInJudge(assessment).includedSuctionMatters()),
            Map.entry("lift-matters", assessment -> new WeighInJudge(assessment).liftMatters()),
            Map.entry("rooms-matter", assessment -> new WeighInJudge(assessment).roomsMatter()),
            Map.entry(CHARGE_TO_WEIGH, Holds::chargeToWeigh),
            Map.entry("weighed-in-right", assessment -> new WeighInJudge(assessment).weighedRight()),
            Map.entry("airflow-to-show", Holds::airflowToShow),
            Map.entry("airflow-stated", Holds::airflowStated),
            Map.entry(
                    "airflow-by-heater",
                    assessment -> AirSideJudge.heaterAirflow(assessment.sheet(), assessment.air())
                            .isPresent()),
            Map.entry(
                    "refrigerant-to-add",
                    assessment -> assessment.verdict().equals(Optional.of(Verdict.Kind.ADD)) || trim(assessment) > 0),
            Map.entry(
                    "refrigerant-to-recover",
                    assessment ->
                            assessment.verdict().equals(Optional.of(Verdict.Kind.RECOVER)) || trim(assessment) < 0),
            Map.entry("refrigerant-recovered", assessment -> moved(assessment, kilograms -> kilograms < 0)),
            Map.entry("moved-since-measured", Holds::movedSinceMeasured),
            Map.entry("leak-to-test", Holds::leakToTest),
            Map.entry("examined", assessment -> assessment.settings().tutor() == Tutor.EXAMINER));

    private static final Set<Quantity> AT_THE_GAUGES = EnumSet.of(
            Quantity.SUCTION_PRESSURE,
            Quantity.LIQUID_PRESSURE,
            Quantity.SUCTION_LINE_TEMPERATURE,
            Quantity.LIQUID_LINE_TEMPERATURE);

    private Holds() {}

    /** Whether a finding of this name is told here. */
    static boolean tells(String finding) {
        return FINDINGS.containsKey(finding);
    }

    /** Whether the finding holds now; false for the names of others. */
    static boolean found(Assessment assessment, String finding) {
        Predicate<Assessment> holds = FINDINGS.get(finding);
        return holds != null && holds.test(assessment);
    }

    /** Whether refrigerant was moved that way, now or in an earlier round. */
    private static boolean moved(Assessment assessment, DoublePredicate way) {
        return Stream.concat(
                        Stream.of(assessment.movedNow()),
                        assessment.rounds().stream().map(Round::moved))
                .mapToDouble(Mass::kilograms)
                .anyMatch(way);
    }

    /**
     * Whether refrigerant was moved after the last of the readings that could be judged, or between them: what was read
     * before shows what is no more.
     */
    private static boolean movedSinceMeasured(Assessment assessment) {
        boolean judged = assessment
                .judgement()
                .map(Judgement::verdict)
                .flatMap(Verdict::comparison)
                .isPresent();
        return judged
                && times(assessment, Intake.ADDS_UP)
                        .anyMatch(moved -> times(assessment, AT_THE_GAUGES).allMatch(moved::isAfter)
                                || (firstTimes(assessment).anyMatch(moved::isAfter)
                                        && firstTimes(assessment).anyMatch(moved::isBefore)));
    }

    /** When each of the readings at the gauges was first told, however often it was corrected since. */
    private static Stream<Instant> firstTimes(Assessment assessment) {
        return AT_THE_GAUGES.stream()
                .filter(quantity -> assessment.sheet().reading(quantity).isPresent())
                .flatMap(quantity -> assessment.sheet().firstGiven(Slot.of(quantity)).stream());
    }

    /** When each of these was told; one that was left out tells nothing. */
    private static Stream<Instant> times(Assessment assessment, Set<Quantity> quantities) {
        return quantities.stream()
                .flatMap(quantity -> assessment.sheet().answer(Slot.of(quantity)).stream())
                .filter(Answer.Value.class::isInstance)
                .map(Answer::at);
    }

    /**
     * Charge that was missing went somewhere, and a test may have shown that the circuit leaks. What is weighed into an
     * empty system was not missing.
     */
    private static boolean leakToTest(Assessment assessment) {
        boolean wasMissing = !assessment.job().equals(JobId.WEIGH_IN) && moved(assessment, kilograms -> kilograms > 0);
        return wasMissing
                || Stream.of(Judged.PRESSURE_TEST, Judged.EVACUATION)
                        .flatMap(test -> assessment.announcement(test).stream())
                        .anyMatch(told -> told.outcome().showsLeak());
    }

    private static boolean notDeepEnough(Assessment assessment) {
        return assessment
                .reading(Slots.VACUUM_ISOLATED)
                .filter(vacuum -> !criterion(assessment).deepEnough(vacuum.absolutePressure()))
                .isPresent();
    }

    private static boolean lineIncluded(Assessment assessment) {
        return assessment
                .readings()
                .find(Quantity.INCLUDED_LINE_LENGTH)
                .filter(length -> length.base() > 0)
                .isPresent();
    }

    /** The standard protocol has whoever verifies show the airflow first, by the split or by a measured airflow. */
    private static boolean airflowToShow(Assessment assessment) {
        return assessment.settings().limits() == Limits.INDEPENDENT_VERIFIER && !airflowStated(assessment);
    }

    private static boolean airflowStated(Assessment assessment) {
        return AirflowPerTon.of(assessment.readings()).isPresent();
    }

    /** Kilograms to trim the charge by, positive to add; zero where it is not trimmed. */
    private static double trim(Assessment assessment) {
        return assessment
                .correction()
                .filter(each -> each.basis() == Correction.Basis.TRIM)
                .map(each -> each.next().kilograms())
                .orElse(0.0);
    }

    private static boolean chargeToWeigh(Assessment assessment) {
        return assessment.job().equals(JobId.WEIGH_IN) && new WeighInJudge(assessment).anythingToWeigh();
    }

    private static boolean abovePlate(Assessment assessment) {
        return assessment
                .reading(Slots.PRESSURE_START)
                .map(start -> new Situation.PressureTesting(
                        start.gaugePressure(),
                        assessment
                                .readings()
                                .find(Quantity.PLATE_LOW_SIDE_PRESSURE)
                                .map(Reading::gaugePressure)))
                .filter(test -> CautionFinder.in(test).stream()
                        .anyMatch(caution -> caution.rule() == CautionRule.TEST_PRESSURE_ABOVE_PLATE))
                .isPresent();
    }

    /** The maker's figure where it was said, else that of the field. */
    static VacuumCriterion criterion(Assessment assessment) {
        return assessment
                .reading(Slots.VACUUM_LIMIT)
                .map(limit -> VacuumCriterion.FIELD.stayingBelow(limit.absolutePressure()))
                .orElse(VacuumCriterion.FIELD);
    }

    /** How long after the hold began a value was first called out; corrections of it do not count. */
    static Optional<Duration> elapsed(Sheet sheet, Slot hold, Slot slot) {
        return sheet.waited(hold)
                .map(Answer.Passed::since)
                .flatMap(since -> sheet.firstGiven(slot).map(at -> Duration.between(since, at)));
    }
}
