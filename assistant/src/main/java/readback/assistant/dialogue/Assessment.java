package readback.assistant.dialogue;

import java.time.Duration;
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
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import readback.calc.caution.Caution;
import readback.calc.caution.CautionFinder;
import readback.calc.charge.Correction;
import readback.calc.charge.Judgement;
import readback.calc.charge.LiquidReturn;
import readback.calc.charge.UnknownAltitude;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.diagnosis.Advice;
import readback.calc.diagnosis.Advisor;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.diagnosis.Finding;
import readback.calc.diagnosis.NextObservation;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.InstrumentAccuracy;
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
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.checklist.ConditionContext;
import readback.prompts.checklist.Job;

/**
 * What is known, and what calc makes of it: the answers so far, what was set and done, and the judgement that follows.
 * The one place where answers become typed readings. Immutable; the judgement is worked out once, when it is first
 * asked for.
 */
public final class Assessment implements ConditionContext {

    /** Slot of the refrigerant; its options are ASHRAE designations. */
    public static final String REFRIGERANT = "refrigerant";

    /** Slot of the metering device. */
    public static final String METERING_DEVICE = "metering-device";

    /** Report of the charge check. */
    public static final String CHARGE = "charge";

    /** Finding that holds while another job was interrupted and goes on when this one is done. */
    private static final String OTHER_JOB_WAITS = "other-job-waits";

    /** Finding that holds for a refrigerant that is mixed of several. */
    private static final String BLEND = "blend";

    private static final String LOOK = "look-";

    /** Questions about the air and the running whose "no" denies a condition. */
    private static final Map<String, Condition> DENIALS =
            Map.of("air-path", Condition.AIRFLOW_SUFFICIENT, "steady-running", Condition.RUN_LONG_ENOUGH);

    private static final Advisor ADVISOR = new Advisor();

    private final SessionSettings settings;
    private final List<String> jobs;
    private final Sheet sheet;
    private final List<Round> rounds;
    private final Readings readings;
    private final AbsolutePressure air;
    private final Optional<Refrigerant> refrigerant;
    private final Optional<SystemUnderTest> system;

    /** Worked out when it is first asked for: most questions about a state need no advice. */
    private @Nullable Advice advice;

    /** The same for the outcome of each job; a step is looked for several times in one turn. */
    private final Map<String, Optional<Report>> reports = Collections.synchronizedMap(new HashMap<>());

    /** The same for the steps that apply, by job. */
    private final Map<String, List<Job.Placed>> steps = Collections.synchronizedMap(new HashMap<>());

    /**
     * @param settings as at the start, but for the units, which can be changed by voice
     * @param jobs names of the jobs under way, the current one last
     * @param sheet what was answered
     * @param rounds measurements that were acted on, oldest first
     */
    Assessment(SessionSettings settings, List<String> jobs, Sheet sheet, List<Round> rounds) {
        this.settings = settings;
        this.jobs = List.copyOf(jobs);
        this.sheet = sheet;
        this.rounds = List.copyOf(rounds);
        this.readings = readings(sheet);
        this.refrigerant = sheet.option(REFRIGERANT).or(settings::refrigerant).flatMap(Assessment::refrigerant);
        this.air = sheet.reading(Quantity.ALTITUDE)
                .map(altitude -> Atmosphere.atAltitude(altitude.base()))
                .orElse(Atmosphere.SEA_LEVEL);
        this.system = refrigerant.flatMap(fluid -> meteringDevice(sheet)
                .map(device -> SystemUnderTest.of(fluid, device)
                        .in(air)
                        .judgedBy(settings.limits())
                        .measuredWith(InstrumentAccuracy.statedIn(readings))));
    }

    SessionSettings settings() {
        return settings;
    }

    List<String> jobs() {
        return jobs;
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

    Assessment doing(List<String> next) {
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
            Optional<Answer> answer = sheet.answer(quantity.name());
            Optional<Reading> reading = answer.flatMap(Sheet::readingOf);
            if (reading.isPresent()) {
                readings = readings.with(reading.get());
            } else if (answer.isPresent()) {
                readings = readings.withUnknown(quantity);
            }
        }
        Readings known = lastStated(readings, sheet);
        if (sheet.answer(Quantity.REFRIGERANT_ADDED.name()).isPresent()) {
            return known;
        }
        return ScaleSlots.wentIn(slot -> sheet.answer(slot).flatMap(Sheet::readingOf))
                .map(known::with)
                .orElse(known);
    }

    /** Gauges are good to a pressure or to a share of the reading, whichever was said last. */
    private static Readings lastStated(Readings readings, Sheet sheet) {
        Optional<Answer> fixed = sheet.answer(Quantity.GAUGE_ACCURACY.name());
        Optional<Answer> share = sheet.answer(Quantity.GAUGE_ACCURACY_OF_READING.name());
        return fixed.isPresent()
                        && share.isPresent()
                        && share.get().at().isAfter(fixed.get().at())
                ? readings.without(Quantity.GAUGE_ACCURACY)
                : readings;
    }

    private static Map<Finding, Boolean> findings(Sheet sheet) {
        Map<Finding, Boolean> findings = new EnumMap<>(Finding.class);
        for (Finding finding : Finding.values()) {
            sheet.option(LOOK + ConstantName.of(finding))
                    .ifPresent(option -> findings.put(finding, !option.equals(Intake.NO)));
        }
        return findings;
    }

    private static Set<Condition> denied(Sheet sheet) {
        Set<Condition> denied = EnumSet.noneOf(Condition.class);
        DENIALS.forEach((slot, condition) ->
                sheet.option(slot).filter(Intake.NO::equals).ifPresent(no -> denied.add(condition)));
        return denied;
    }

    private static Optional<Refrigerant> refrigerant(String designation) {
        return Catalogue.standard().find(designation) instanceof Lookup.Found found
                ? Optional.of(found.refrigerant())
                : Optional.empty();
    }

    private static Optional<MeteringDevice> meteringDevice(Sheet sheet) {
        return sheet.option(METERING_DEVICE).flatMap(option -> ConstantName.find(MeteringDevice.class, option));
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
    Optional<Report> report(String name) {
        return reports.computeIfAbsent(name, new Reports(this)::of);
    }

    /** The steps of a job that apply now, in order, each with its checklist. */
    List<Job.Placed> steps(Job job) {
        return steps.computeIfAbsent(job.id(), id -> job.applicable(this).toList());
    }

    private Optional<Advice> advice() {
        if (advice == null && system.isPresent()) {
            advice = ADVISOR.advise(system.get(), readings, findings(sheet), denied(sheet));
        }
        return Optional.ofNullable(advice);
    }

    /** The judgement, as soon as refrigerant and metering device are known. */
    public Optional<Judgement> judgement() {
        return advice().map(Advice::judgement);
    }

    /** What may be wrong besides the charge, ranked. */
    public Optional<Diagnosis> diagnosis() {
        return advice().map(Advice::diagnosis);
    }

    /** How much to move next; absent while the charge was not compared with a target. */
    public Optional<Correction> correction() {
        return judgement().flatMap(latest -> {
            List<Correction.Step> steps = new ArrayList<>();
            Mass moved = Mass.NONE;
            for (Round round : rounds) {
                steps.add(new Correction.Step(moved, round.deviation()));
                moved = round.moved();
            }
            Correction.Step.of(moved, latest).ifPresent(steps::add);
            return Correction.after(
                    steps,
                    latest,
                    readings.find(Quantity.NAMEPLATE_CHARGE).map(charge -> Mass.kilograms(charge.base())));
        });
    }

    /** Refrigerant moved since the last measurement, positive when added. */
    Mass movedNow() {
        double added = readings.base(Quantity.REFRIGERANT_ADDED).orElse(0);
        double recovered = readings.base(Quantity.REFRIGERANT_RECOVERED).orElse(0);
        return Mass.kilograms(added - recovered);
    }

    /** Refrigerant moved in this session, positive when added. */
    public Mass movedInAll() {
        Mass sum = movedNow();
        for (Round round : rounds) {
            sum = sum.plus(round.moved());
        }
        return sum;
    }

    /** The cautions that the readings call for now. */
    List<Caution> cautions() {
        List<Caution> cautions =
                new ArrayList<>(judgement().map(Judgement::cautions).orElseGet(this::withoutDevice));
        reading("pressure-end")
                .or(() -> reading("pressure-start"))
                .map(nitrogen -> readback.calc.caution.Situation.pressureTest(
                        nitrogen.gaugePressure(),
                        sheet.reading(Quantity.PLATE_LOW_SIDE_PRESSURE).map(Reading::gaugePressure)))
                .ifPresent(test -> cautions.addAll(CautionFinder.in(test)));
        cautions.addAll(Cylinders.cautions(this));
        return cautions;
    }

    /** What the readings call for while the metering device, and perhaps the refrigerant, is not known yet. */
    private List<Caution> withoutDevice() {
        return LiquidReturn.cautions(refrigerant, air, readings, CautionFinder.LEAST_SAFE_SUPERHEAT);
    }

    /** How likely a value is beside what is known. What is weighed into an empty system is a whole charge. */
    Grade grade(Reading reading) {
        if (reading.quantity() == Quantity.REFRIGERANT_ADDED && Holds.found(this, Holds.CHARGE_TO_WEIGH)) {
            Reading charge = new Reading(Quantity.NAMEPLATE_CHARGE, reading.value(), reading.unit());
            return Plausibility.grade(charge, refrigerant, readings.without(Quantity.NAMEPLATE_CHARGE));
        }
        return Plausibility.grade(reading, refrigerant, readings.without(reading.quantity()));
    }

    /** The reading in a slot that a procedure uses more than once. */
    Optional<Reading> reading(String slot) {
        return sheet.answer(slot).flatMap(Sheet::readingOf);
    }

    @Override
    public boolean answered(String slot) {
        return sheet.answer(slot).isPresent();
    }

    @Override
    public boolean measured(String slot) {
        return reading(slot).isPresent();
    }

    @Override
    public Optional<String> option(String slot) {
        return sheet.option(slot);
    }

    /** The verdict once there is one; while readings are missing there is none. */
    @Override
    public Optional<String> verdict() {
        return judgement()
                .map(Judgement::verdict)
                .filter(verdict -> verdict.kind() != Verdict.Kind.INCOMPLETE)
                .map(verdict -> ConstantName.of(verdict.kind()));
    }

    /** Whether a finding of this name can ever hold. */
    static boolean tells(String finding) {
        return finding.equals(OTHER_JOB_WAITS)
                || finding.equals(BLEND)
                || Holds.tells(finding)
                || ConstantName.find(Condition.class, finding).isPresent()
                || (finding.startsWith(LOOK)
                        && ConstantName.find(Finding.class, finding.substring(LOOK.length()))
                                .isPresent());
    }

    /**
     * "blend", conditions that fail by their name, and observations that would tell most as "look-" with their name.
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
                || diagnosis()
                        .flatMap(Diagnosis::next)
                        .filter(NextObservation.Look.class::isInstance)
                        .filter(next ->
                                (LOOK + ConstantName.of(((NextObservation.Look) next).finding())).equals(finding))
                        .isPresent();
    }

    /**
     * The verdict with the numbers that led to it, in the one form that is recorded and compared on replay; empty while
     * readings are missing.
     */
    Optional<String> recorded() {
        return judgement()
                .filter(each -> each.verdict().kind() != Verdict.Kind.INCOMPLETE)
                .map(this::line);
    }

    /** What was missing of the settling time when these readings were begun; empty where it was over or not needed. */
    Optional<Duration> early() {
        return rounds.isEmpty()
                ? Optional.empty()
                : Optional.of(rounds.get(rounds.size() - 1).early()).filter(missing -> !missing.isZero());
    }

    private String line(Judgement judgement) {
        StringJoiner line = new StringJoiner(" ");
        line.add(ConstantName.of(judgement.verdict().kind()));
        if (judgement.verdict().borderline()) {
            line.add("borderline");
        }
        line.add("method=" + ConstantName.of(judgement.method()));
        judgement.evaporatingSaturation().ifPresent(t -> line.add("evaporating=" + millikelvins(t)));
        judgement.condensingSaturation().ifPresent(t -> line.add("condensing=" + millikelvins(t)));
        judgement.superheat().ifPresent(e -> line.add("superheat=" + millikelvins(e.value())));
        judgement.subcooling().ifPresent(e -> line.add("subcooling=" + millikelvins(e.value())));
        judgement.target().ifPresent(t -> line.add("target=" + millikelvins(t.value())));
        judgement
                .valveCheck()
                .ifPresent(check ->
                        line.add("valve=" + ConstantName.of(check.superheat().position())));
        judgement.contradictions().forEach(c -> line.add("contradiction=" + ConstantName.of(c.kind())));
        early().ifPresent(missing -> line.add("measured-early=" + missing));
        judgement.conditions().forEach(c -> line.add("failed=" + ConstantName.of(c.condition())));
        if (judgement.verdict().kind() == Verdict.Kind.DO_NOT_CHARGE) {
            diagnosis()
                    .ifPresent(each -> line.add(
                                    "suspect=" + ConstantName.of(each.leader().fault()))
                            .add(ConstantName.of(each.certainty())));
        }
        return line.toString();
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

    private static String millikelvins(Temperature temperature) {
        return Math.round(temperature.kelvin() * 1000) + "mK";
    }

    private static String millikelvins(TemperatureDifference difference) {
        return Math.round(difference.kelvins() * 1000) + "mK";
    }
}
