package readback.assistant.dialogue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.calc.applicability.CircuitParts;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.Situation;
import readback.calc.charge.ChargeLevel;
import readback.calc.charge.Correction;
import readback.calc.charge.Judgement;
import readback.calc.charge.LiquidReturn;
import readback.calc.charge.UnknownAltitude;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.diagnosis.Advice;
import readback.calc.diagnosis.Advisor;
import readback.calc.diagnosis.Course;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Finding;
import readback.calc.diagnosis.NextObservation;
import readback.calc.diagnosis.Suspect;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.ConditionContext;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/**
 * What is known, and what calc makes of it: the answers so far, what was set and done, and the judgement that follows.
 * The one place where answers become typed readings. Immutable; the judgement is worked out once, when it is first
 * asked for.
 */
public final class Assessment implements ConditionContext {

    /** Finding that holds while another job was interrupted and goes on when this one is done. */
    private static final String OTHER_JOB_WAITS = "other-job-waits";

    /** Finding that holds for a refrigerant that is mixed of several. */
    private static final String BLEND = "blend";

    private static final String READ = "read-";

    /** Questions about the air and the running whose "no" denies a condition. */
    private static final Map<Slot, Condition> DENIALS =
            Map.of(Slots.AIR_PATH, Condition.AIRFLOW_SUFFICIENT, Slots.STEADY_RUNNING, Condition.RUN_LONG_ENOUGH);

    private static final Advisor ADVISOR = new Advisor();

    private final SessionSettings settings;
    private final List<JobId> jobs;
    private final Sheet sheet;
    private final List<Round> rounds;
    private final Readings readings;
    private final AbsolutePressure air;
    private final Optional<Refrigerant> refrigerant;
    private final Optional<SystemUnderTest> system;

    /** Worked out when it is first asked for: most questions about a state need no advice. */
    private @Nullable Advice advice;

    /** The same for the outcome of each job; a step is looked for several times in one turn. */
    private final Map<Judged, Optional<Announcement>> announcements = Collections.synchronizedMap(new HashMap<>());

    /** The same for the steps that apply, by job. */
    private final Map<JobId, List<Job.Placed>> steps = Collections.synchronizedMap(new HashMap<>());

    /**
     * @param settings as at the start, but for the units, which can be changed by voice
     * @param jobs names of the jobs under way, the current one last
     * @param sheet what was answered
     * @param rounds measurements that were acted on, oldest first
     */
    Assessment(SessionSettings settings, List<JobId> jobs, Sheet sheet, List<Round> rounds) {
        this.settings = settings;
        this.jobs = List.copyOf(jobs);
        this.sheet = sheet;
        this.rounds = List.copyOf(rounds);
        this.refrigerant =
                sheet.option(Slots.REFRIGERANT).or(settings::refrigerant).flatMap(Assessment::refrigerant);
        this.air = sheet.reading(Quantity.ALTITUDE)
                .map(altitude -> Atmosphere.atAltitude(altitude.base()))
                .orElse(Atmosphere.SEA_LEVEL);
        Readings stated = readings(sheet);
        this.readings = sheet.answer(Slot.of(Quantity.AIRFLOW)).isPresent()
                ? stated
                : AirSideJudge.heaterAirflow(sheet, air).map(stated::with).orElse(stated);
        this.system = refrigerant
                .flatMap(fluid -> meteringDevice(sheet)
                        .map(device -> SystemUnderTest.of(fluid, device)
                                .in(air)
                                .judgedBy(settings.limits())
                                .measuredWith(InstrumentAccuracy.statedIn(readings))
                                .aimedAt(MakersTarget.of(readings, secondChartPoint(sheet)))
                                .ofEfficiency(efficiency(sheet))))
                .map(known -> Seasons.restrictorOn(sheet) ? known.withCondenserRestricted() : known);
    }

    SessionSettings settings() {
        return settings;
    }

    List<JobId> jobs() {
        return jobs;
    }

    /** The job under way. */
    JobId job() {
        return jobs.get(jobs.size() - 1);
    }

    Sheet sheet() {
        return sheet;
    }

    List<Round> rounds() {
        return rounds;
    }

    Assessment with(SessionSettings next) {
        return new Assessment(next, jobs, sheet, rounds);
    }

    Assessment doing(List<JobId> next) {
        return new Assessment(settings, next, sheet, rounds);
    }

    Assessment with(Sheet next) {
        return new Assessment(settings, jobs, next, rounds);
    }

    Assessment measuringAgain(Round acted, Sheet cleared) {
        List<Round> more = new ArrayList<>(rounds);
        more.add(acted);
        return new Assessment(settings, jobs, cleared, more);
    }

    private static Readings readings(Sheet sheet) {
        Readings readings = Readings.none();
        for (Quantity quantity : Quantity.values()) {
            Optional<Answer> answer = sheet.answer(Slot.of(quantity));
            Optional<Reading> reading = answer.flatMap(Sheet::readingOf);
            if (reading.isPresent()) {
                readings = readings.with(reading.get());
            } else if (answer.isPresent()) {
                readings = readings.withUnknown(quantity);
            }
        }
        Readings known = lastStated(readings, sheet);
        if (sheet.answer(Slot.of(Quantity.REFRIGERANT_ADDED)).isPresent()) {
            return known;
        }
        return ScaleSlots.wentIn(sheet::reading).map(known::with).orElse(known);
    }

    /** Gauges are good to a pressure or to a share of the reading, whichever was said last. */
    private static Readings lastStated(Readings readings, Sheet sheet) {
        Optional<Answer> fixed = sheet.answer(Slot.of(Quantity.GAUGE_ACCURACY));
        Optional<Answer> share = sheet.answer(Slot.of(Quantity.GAUGE_ACCURACY_OF_READING));
        return fixed.isPresent()
                        && share.isPresent()
                        && share.get().at().isAfter(fixed.get().at())
                ? readings.without(Quantity.GAUGE_ACCURACY)
                : readings;
    }

    private static Map<Finding, Boolean> findings(Sheet sheet) {
        Map<Finding, Boolean> findings = new EnumMap<>(Finding.class);
        for (Finding finding : Finding.values()) {
            sheet.option(Slots.look(finding)).ifPresent(option -> findings.put(finding, !option.equals(Intake.NO)));
        }
        return findings;
    }

    /** Questions that the technician left open. */
    private static Set<Finding> passedOver(Sheet sheet) {
        Set<Finding> passedOver = EnumSet.noneOf(Finding.class);
        for (Finding finding : Finding.values()) {
            Slot slot = Slots.look(finding);
            if (sheet.answer(slot).isPresent() && sheet.option(slot).isEmpty()) {
                passedOver.add(finding);
            }
        }
        return passedOver;
    }

    private static Set<Condition> denied(Sheet sheet) {
        Set<Condition> denied = EnumSet.noneOf(Condition.class);
        DENIALS.forEach((slot, condition) ->
                sheet.option(slot).filter(Intake.NO::equals).ifPresent(no -> denied.add(condition)));
        return denied;
    }

    private static Optional<MakersTarget.Point> secondChartPoint(Sheet sheet) {
        return sheet.reading(Slots.SECOND_CHART_OUTDOOR)
                .flatMap(outdoor -> sheet.reading(Slots.SECOND_CHART_TARGET)
                        .map(target -> new MakersTarget.Point(outdoor.temperature(), target.temperatureDifference())));
    }

    private static Optional<Refrigerant> refrigerant(String designation) {
        return Catalogue.standard().find(designation).known();
    }

    static Optional<MeteringDevice> meteringDevice(Sheet sheet) {
        return sheet.option(Slots.METERING_DEVICE).flatMap(option -> ConstantName.find(MeteringDevice.class, option));
    }

    public Readings readings() {
        return readings;
    }

    /** Pressure of the air around the gauges. */
    public AbsolutePressure air() {
        return air;
    }

    /** Whether the verdict rests on the assumption that the site lies at sea level. */
    public boolean altitudeMatters() {
        return !readings.has(Quantity.ALTITUDE)
                && system.isPresent()
                && judgement()
                        .filter(judgement -> UnknownAltitude.matters(system.get(), readings, judgement.verdict()))
                        .isPresent();
    }

    /** How good the instruments are: as stated, ordinary where nothing was. */
    public InstrumentAccuracy instruments() {
        return InstrumentAccuracy.statedIn(readings);
    }

    public Optional<Refrigerant> refrigerant() {
        return refrigerant;
    }

    public Optional<SystemUnderTest> system() {
        return system;
    }

    /** What came of the measurements that a job asks to judge; empty while something that it needs is missing. */
    Optional<Announcement> announcement(Judged what) {
        return announcements.computeIfAbsent(what, new JobJudge(this)::of);
    }

    /** The steps of a job that apply now, in order, each with its checklist. */
    List<Job.Placed> steps(Job job) {
        return steps.computeIfAbsent(job.id(), id -> job.applicable(this).toList());
    }

    private Optional<Advice> advice() {
        if (advice == null && system.isPresent()) {
            advice = advice(system.get(), rounds.isEmpty() ? Course.BEGINNING : Course.UNDER_WAY);
            if (correction()
                    .filter(each -> each.basis() == Correction.Basis.CONTRARY_RESPONSE)
                    .isPresent()) {
                advice = advice(system.get(), Course.CONTRARY);
            }
        }
        return Optional.ofNullable(advice);
    }

    private Advice advice(SystemUnderTest known, Course course) {
        return ADVISOR.advise(known, readings, findings(sheet), passedOver(sheet), denied(sheet), course);
    }

    /** The judgement, as soon as refrigerant and metering device are known. */
    public Optional<Judgement> judgement() {
        return advice().map(Advice::judgement);
    }

    /** What may be wrong besides the charge, ranked. */
    public Optional<Diagnosis> diagnosis() {
        return advice().map(Advice::diagnosis);
    }

    /** What is likely wrong beside what the verdict says. */
    public Optional<Suspect> reservation() {
        return advice().flatMap(Advice::reservation);
    }

    /**
     * How much to move next; absent while the charge was not compared with a target, or where it is right but another
     * fault is suspected: a charge is not trimmed beside one.
     */
    public Optional<Correction> correction() {
        return judgement()
                .flatMap(this::correction)
                .filter(each ->
                        each.basis() != Correction.Basis.TRIM || reservation().isEmpty());
    }

    private Optional<Correction> correction(Judgement latest) {
        List<Correction.Step> steps = new ArrayList<>();
        Mass moved = Mass.NONE;
        for (Round round : rounds) {
            steps.add(new Correction.Step(moved, round.deviation()));
            moved = round.moved();
        }
        Correction.Step.of(moved, latest).ifPresent(steps::add);
        return Correction.after(
                steps, latest, nameplate(), levelNow(), parts().change().stepShare());
    }

    /** What was told of parts of the circuit that change the work on its charge. */
    CircuitParts parts() {
        return new CircuitParts(told(Slots.MICRO_CHANNEL), told(Slots.ACCUMULATOR));
    }

    /** What the plate rates, or else what the year of manufacture tells; empty where neither was told. */
    private static Optional<Efficiency> efficiency(Sheet sheet) {
        return sheet.option(Slots.SEER_RATING)
                .map(Integer::valueOf)
                .map(Efficiency::rated)
                .or(() -> sheet.option(Slots.YEARS_OLD)
                        .flatMap(years -> sheet.answer(Slots.YEARS_OLD)
                                .map(answer ->
                                        answer.at().atZone(ZoneOffset.UTC).getYear() - Integer.parseInt(years)))
                        .map(Efficiency::builtIn));
    }

    private boolean told(Slot slot) {
        return sheet.option(slot).filter(Intake.YES::equals).isPresent();
    }

    private Optional<Mass> nameplate() {
        return readings.find(Quantity.NAMEPLATE_CHARGE).map(charge -> Mass.kilograms(charge.base()));
    }

    /** What all readings of this round show to be in the unit, where the verdict is to move refrigerant. */
    Optional<ChargeLevel> level() {
        return advice().flatMap(each ->
                each.diagnosis().charge(each.judgement().verdict().kind()));
    }

    /** What the readings before the first move showed, with what was moved since: then most was looked at. */
    private Optional<ChargeLevel> levelNow() {
        return rounds.isEmpty()
                ? level()
                : rounds.get(0).level().flatMap(first -> nameplate().map(charge -> first.after(movedBefore(), charge)));
    }

    /** Refrigerant moved before this round of measurements, positive when added. */
    private Mass movedBefore() {
        Mass sum = Mass.NONE;
        for (Round round : rounds) {
            sum = sum.plus(round.moved());
        }
        return sum;
    }

    /** Refrigerant moved since the last measurement, positive when added. */
    Mass movedNow() {
        double added = readings.base(Quantity.REFRIGERANT_ADDED).orElse(0);
        double recovered = readings.base(Quantity.REFRIGERANT_RECOVERED).orElse(0);
        return Mass.kilograms(added - recovered);
    }

    /** Refrigerant moved in this session, positive when added. */
    public Mass movedInAll() {
        return movedNow().plus(movedBefore());
    }

    /** The cautions that the readings call for now. */
    List<Caution> cautions() {
        List<Caution> cautions =
                new ArrayList<>(judgement().map(Judgement::cautions).orElseGet(this::withoutDevice));
        reading(Slots.PRESSURE_END)
                .or(() -> reading(Slots.PRESSURE_START))
                .map(nitrogen -> new Situation.PressureTesting(
                        nitrogen.gaugePressure(),
                        sheet.reading(Quantity.PLATE_LOW_SIDE_PRESSURE).map(Reading::gaugePressure)))
                .ifPresent(test -> cautions.addAll(CautionFinder.in(test)));
        cautions.addAll(Cylinders.cautions(this));
        cautions.addAll(Seasons.cautions(this));
        cautions.addAll(new WeighInJudge(this).cautions());
        return cautions;
    }

    /** What the readings call for while the metering device, and perhaps the refrigerant, is not known yet. */
    private List<Caution> withoutDevice() {
        return LiquidReturn.cautions(refrigerant, air, readings, InstrumentAccuracy.STANDARD);
    }

    /** How likely a value is beside what is known. What is weighed into an empty system is a whole charge. */
    Grade grade(Reading reading) {
        if (reading.quantity() == Quantity.REFRIGERANT_ADDED && Holds.found(this, Holds.CHARGE_TO_WEIGH)) {
            Reading charge = new Reading(Quantity.NAMEPLATE_CHARGE, reading.value(), reading.unit());
            return Plausibility.grade(charge, refrigerant, readings.without(Quantity.NAMEPLATE_CHARGE));
        }
        Readings others = readings.without(reading.quantity());
        return Seasons.heats(this, reading.quantity())
                ? Plausibility.gradeHeating(reading, refrigerant, others)
                : Plausibility.grade(reading, refrigerant, others);
    }

    /** The reading in a slot that a procedure uses more than once. */
    Optional<Reading> reading(Slot slot) {
        return sheet.reading(slot);
    }

    @Override
    public boolean answered(Slot slot) {
        return sheet.answer(slot).isPresent();
    }

    @Override
    public boolean measured(Slot slot) {
        return reading(slot).isPresent();
    }

    @Override
    public Optional<String> option(Slot slot) {
        return sheet.option(slot);
    }

    /** The verdict once there is one; while readings are missing there is none. */
    @Override
    public Optional<Verdict.Kind> verdict() {
        return judgement().map(judgement -> judgement.verdict().kind()).filter(kind -> kind != Verdict.Kind.INCOMPLETE);
    }

    /** Whether a finding of this name can ever hold. */
    static boolean tells(String finding) {
        return finding.equals(OTHER_JOB_WAITS)
                || finding.equals(BLEND)
                || Holds.tells(finding)
                || Seasons.tells(finding)
                || ConstantName.find(Condition.class, finding).isPresent()
                || (finding.startsWith(Slots.LOOK)
                        && ConstantName.find(Finding.class, finding.substring(Slots.LOOK.length()))
                                .isPresent())
                || (finding.startsWith(READ)
                        && ConstantName.find(Quantity.class, finding.substring(READ.length()))
                                .isPresent());
    }

    /**
     * "blend", conditions that fail by their name, and the observation that is due: "look-" with the name of a finding,
     * "read-" with that of a quantity.
     */
    @Override
    public boolean found(String finding) {
        if (finding.equals(OTHER_JOB_WAITS)) {
            return jobs.size() > 1;
        }
        if (finding.equals(BLEND)) {
            return refrigerant.filter(Refrigerant::blend).isPresent();
        }
        boolean failed = judgement().stream()
                .flatMap(each -> each.conditions().stream())
                .anyMatch(condition -> ConstantName.of(condition.condition()).equals(finding));
        return failed
                || Holds.found(this, finding)
                || Seasons.found(this, finding)
                || due().filter(next -> dueAs(next).equals(finding)).isPresent();
    }

    /** What to read or look at before the verdict is acted on. */
    private Optional<NextObservation> due() {
        return advice().flatMap(Advice::due);
    }

    private static String dueAs(NextObservation next) {
        return next.lookedFor()
                .map(finding -> Slots.look(finding).id())
                .orElseGet(() -> READ + ConstantName.of(next.missing().get(0)));
    }

    /** The verdict with the numbers that led to it; empty while readings are missing. */
    Optional<ChargeVerdict> outcome() {
        return judgement()
                .filter(each -> each.verdict().kind() != Verdict.Kind.INCOMPLETE)
                .map(each -> ChargeVerdict.of(each, early().orElse(Duration.ZERO), diagnosis()));
    }

    /** What was missing of the settling time when these readings were begun; empty where it was over or not needed. */
    Optional<Duration> early() {
        return rounds.isEmpty()
                ? Optional.empty()
                : Optional.of(rounds.get(rounds.size() - 1).early()).filter(missing -> !missing.isZero());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Assessment that
                && settings.equals(that.settings)
                && jobs.equals(that.jobs)
                && sheet.equals(that.sheet)
                && rounds.equals(that.rounds);
    }

    @Override
    public int hashCode() {
        return Objects.hash(settings, jobs, sheet, rounds);
    }
}
