package readback.assistant.dialogue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
import readback.calc.diagnosis.Advice;
import readback.calc.diagnosis.Advisor;
import readback.calc.diagnosis.Course;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.NextObservation;
import readback.calc.diagnosis.Suspect;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.InstrumentAccuracy;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.AbsolutePressure;
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
 * Immutable; the judgement is worked out once, when it is first asked for.
 */
public final class Assessment implements ConditionContext {

    private static final Advisor ADVISOR = new Advisor();

    private final SessionSettings settings;
    private final List<JobId> jobs;
    private final Sheet sheet;
    private final List<Round> rounds;
    private final ChargeHistory history;
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
        this.history = new ChargeHistory(this.rounds);
        this.refrigerant = TypedAnswers.refrigerant(sheet, settings);
        this.air = TypedAnswers.air(sheet);
        this.readings = TypedAnswers.readings(sheet, air);
        this.system = refrigerant
                .flatMap(fluid -> TypedAnswers.meteringDevice(sheet)
                        .map(device -> SystemUnderTest.of(fluid, device)
                                .in(air)
                                .judgedBy(settings.limits())
                                .measuredWith(InstrumentAccuracy.statedIn(readings))
                                .aimedAt(MakersTarget.of(readings, TypedAnswers.secondChartPoint(sheet)))
                                .ofEfficiency(TypedAnswers.efficiency(sheet))))
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
        return ADVISOR.advise(
                known,
                readings,
                TypedAnswers.findings(sheet),
                TypedAnswers.passedOver(sheet),
                TypedAnswers.denied(sheet),
                course);
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
        return Correction.after(
                history.steps(latest),
                latest,
                nameplate(),
                levelNow(),
                parts().change().stepShare());
    }

    /** What the readings before the first move showed, with what was moved since: then most was looked at. */
    private Optional<ChargeLevel> levelNow() {
        return rounds.isEmpty() ? level() : history.level(nameplate());
    }

    /** What was told of parts of the circuit that change the work on its charge. */
    CircuitParts parts() {
        return TypedAnswers.parts(sheet);
    }

    private Optional<Mass> nameplate() {
        return readings.find(Quantity.NAMEPLATE_CHARGE).map(charge -> Mass.kilograms(charge.base()));
    }

    /** What all readings of this round show to be in the unit, where the verdict is to move refrigerant. */
    Optional<ChargeLevel> level() {
        return advice().flatMap(each ->
                each.diagnosis().charge(each.judgement().verdict().kind()));
    }

    /** Refrigerant moved since the last measurement, positive when added. */
    Mass movedNow() {
        double added = readings.base(Quantity.REFRIGERANT_ADDED).orElse(0);
        double recovered = readings.base(Quantity.REFRIGERANT_RECOVERED).orElse(0);
        return Mass.kilograms(added - recovered);
    }

    /** Refrigerant moved in this session, positive when added. */
    public Mass movedInAll() {
        return movedNow().plus(history.moved());
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

    @Override
    public boolean found(String finding) {
        return StepFindings.found(this, finding);
    }

    /** What to read or look at before the verdict is acted on. */
    Optional<NextObservation> due() {
        return advice().flatMap(Advice::due);
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
