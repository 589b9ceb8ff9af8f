package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import readback.calc.charge.AirflowPerTon;
import readback.calc.charge.Correction;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumCriterion;
import readback.calc.procedure.VacuumDecay;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;
import readback.prompts.text.NumberVerbaliser;

/** The outcome of each job that a checklist asks to judge; empty while something that it needs is missing. */
final class Reports {

    /** How each thing that a checklist can ask to judge is judged, by its name. */
    private static final Map<String, Function<Reports, Optional<Report>>> JUDGED = Map.of(
            Assessment.CHARGE,
            Reports::charge,
            "airflow",
            Reports::airflow,
            "pressure-test",
            Reports::standingPressure,
            "evacuation",
            Reports::evacuation,
            "weigh-in",
            reports -> new WeighInReports(reports.assessment).target(),
            "weighed-in",
            reports -> new WeighInReports(reports.assessment).weighed(),
            "resting-pressure",
            Reports::restingPressure);

    private final Assessment assessment;
    private final UnitSetting units;

    Reports(Assessment assessment) {
        this.assessment = assessment;
        this.units = assessment.settings().units();
    }

    /** Whether a checklist can ask to judge this. */
    static boolean judges(String name) {
        return JUDGED.containsKey(name);
    }

    Optional<Report> of(String name) {
        Function<Reports, Optional<Report>> judged = JUDGED.get(name);
        if (judged == null) {
            throw new IllegalStateException("no report is named " + name);
        }
        return judged.apply(this);
    }

    private Optional<Report> charge() {
        JudgementMessages findings = new JudgementMessages(units);
        return assessment
                .recorded()
                .flatMap(recorded -> assessment.judgement().map(judgement -> {
                    List<Message> messages = new ArrayList<>(findings.verdict(judgement));
                    List<Message> suspects = assessment
                            .diagnosis()
                            .map(each -> findings.suspects(judgement, each))
                            .orElse(List.of());
                    messages.addAll(suspects);
                    assessment.correction().ifPresent(each -> {
                        messages.addAll(findings.correction(each));
                        if (each.basis() == Correction.Basis.BY_WEIGHT) {
                            Cylinders.depth(assessment).ifPresent(messages::add);
                        }
                    });
                    assessment
                            .early()
                            .ifPresent(missing -> messages.add(
                                    Message.of("verdict.measured-early").with("minutes", Waiting.minutes(missing))));
                    if (assessment.altitudeMatters()) {
                        messages.add(Message.of("verdict.sea-level-assumed"));
                    }
                    return new Report(recorded, messages, suspects.isEmpty() ? messages : suspects);
                }));
    }

    private Optional<Report> airflow() {
        OptionalDouble perTon = AirflowPerTon.of(assessment.readings());
        if (perTon.isPresent()) {
            String outcome = AirflowPerTon.enough(perTon.getAsDouble()) ? "enough" : "too-little-air";
            long rounded = Math.round(perTon.getAsDouble());
            return Optional.of(new Report(
                    "airflow " + outcome + " cfm-per-ton=" + rounded,
                    List.of(
                            Message.of("airflow.per-ton")
                                    .with(
                                            "value",
                                            new Fact.Amount(BigDecimal.valueOf(rounded), Unit.CUBIC_FOOT_PER_MINUTE)),
                            Message.of("airflow." + outcome))));
        }
        Optional<Temperature> dry = assessment.readings().temperature(Quantity.RETURN_DRY_BULB);
        Optional<Temperature> wet = assessment.readings().temperature(Quantity.RETURN_WET_BULB);
        Optional<Temperature> supply = assessment.readings().temperature(Quantity.SUPPLY_DRY_BULB);
        if (dry.isEmpty() || wet.isEmpty() || supply.isEmpty()) {
            return Optional.empty();
        }
        Optional<SplitCheck.Result> split = SplitCheck.judge(
                dry.get(), wet.get(), supply.get(), assessment.settings().limits());
        if (split.isEmpty()) {
            return Optional.of(new Report("airflow outside-table", List.of(Message.of("airflow.outside-table"))));
        }
        String outcome = ConstantName.of(split.get().outcome());
        return Optional.of(new Report(
                "airflow " + outcome + " split=" + tenths(split.get().actual()) + " target="
                        + tenths(split.get().target()),
                List.of(
                        Message.of("airflow.split")
                                .with("value", Fact.difference(split.get().actual(), units))
                                .with("target", Fact.difference(split.get().target(), units)),
                        Message.of("airflow." + outcome))));
    }

    private static String tenths(TemperatureDifference difference) {
        return Math.round(difference.fahrenheit() * 10) / 10.0 + "F";
    }

    private Optional<Report> standingPressure() {
        Optional<Reading> start = assessment.reading("pressure-start");
        Optional<Reading> end = assessment.reading("pressure-end");
        Optional<Reading> gasStart = assessment.reading("gas-start");
        Optional<Reading> gasEnd = assessment.reading("gas-end");
        if (start.isEmpty() || end.isEmpty() || gasStart.isEmpty() || gasEnd.isEmpty()) {
            return Optional.empty();
        }
        StandingPressure.Result result = StandingPressure.judge(
                start.get().gaugePressure(),
                gasStart.get().temperature(),
                end.get().gaugePressure(),
                gasEnd.get().temperature(),
                assessment.air());
        String outcome = ConstantName.of(result.outcome());
        return Optional.of(new Report(
                "pressure-test " + outcome + " loss=" + Math.round(result.loss().pascals()) + "Pa",
                List.of(
                        Message.of("pressure-test.expected")
                                .with("expected", pressure(result.expected()))
                                .with("measured", Fact.amount(end.get())),
                        Message.of("pressure-test." + outcome).with("loss", pressureDifference(result.loss())))));
    }

    private Optional<Report> evacuation() {
        Optional<Reading> isolated = assessment.reading(Holds.VACUUM_ISOLATED);
        if (isolated.isEmpty() || assessment.reading("vacuum-held").isEmpty()) {
            return Optional.empty();
        }
        List<VacuumDecay.Sample> samples = new ArrayList<>();
        samples.add(new VacuumDecay.Sample(Duration.ZERO, isolated.get().absolutePressure()));
        for (String later : List.of("vacuum-half", "vacuum-held")) {
            assessment
                    .reading(later)
                    .ifPresent(reading -> Holds.elapsed(assessment.sheet(), "vacuum-first-half", later)
                            .ifPresent(elapsed ->
                                    samples.add(new VacuumDecay.Sample(elapsed, reading.absolutePressure()))));
        }
        VacuumCriterion criterion = Holds.criterion(assessment);
        String name = ConstantName.of(VacuumDecay.judge(samples, criterion));
        double slope =
                Unit.MICRON.fromBase(VacuumDecay.pascalsPerMinute(samples).orElse(0));
        return Optional.of(new Report(
                "evacuation " + name + " slope=" + Math.round(slope) + "micron/min limit="
                        + Math.round(
                                Unit.MICRON.fromBase(criterion.mustStayBelow().pascals())) + "micron",
                List.of(
                        Message.of("evacuation.slope")
                                .with("slope", new Fact.Amount(rounded(slope, 0), Unit.MICRON))
                                .with("limit", microns(criterion.mustStayBelow())),
                        Message.of("evacuation." + name))));
    }

    private static Fact microns(AbsolutePressure vacuum) {
        return new Fact.Amount(rounded(Unit.MICRON.fromBase(vacuum.pascals()), 0), Unit.MICRON);
    }

    private Optional<Report> restingPressure() {
        Optional<Reading> resting = assessment.readings().find(Quantity.RESTING_PRESSURE);
        Optional<Reading> temperature = assessment.reading("rest-temperature");
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        if (resting.isEmpty() || temperature.isEmpty() || refrigerant.isEmpty()) {
            return Optional.empty();
        }
        try {
            RestingPressure.Result result = RestingPressure.judge(
                    refrigerant.get(),
                    resting.get().gaugePressure(),
                    temperature.get().temperature(),
                    assessment.air(),
                    assessment.instruments().liquidGauge().at(resting.get().gaugePressure()),
                    assessment.instruments().lineProbe());
            String outcome = ConstantName.of(result.outcome());
            return Optional.of(new Report(
                    "resting-pressure " + outcome + " excess="
                            + Math.round(result.excess().pascals()) + "Pa",
                    List.of(
                            Message.of("resting-pressure.compared").with("pressure", pressure(result.saturation())),
                            Message.of("resting-pressure." + outcome))));
        } catch (OutOfRangeException e) {
            return Optional.of(
                    new Report("resting-pressure no-saturation", List.of(Message.of("resting-pressure.none"))));
        }
    }

    private Fact pressure(GaugePressure pressure) {
        Unit unit = units.pressure();
        return new Fact.Amount(rounded(unit.fromBase(pressure.pascals()), unit == Unit.PSIG ? 0 : 2), unit);
    }

    /** A loss or an excess: a difference is neither gauge nor absolute. */
    private Fact pressureDifference(GaugePressure difference) {
        boolean psi = units.pressure() == Unit.PSIG;
        Unit unit = psi ? Unit.PSIG : Unit.BAR_GAUGE;
        BigDecimal value = rounded(unit.fromBase(difference.pascals()), psi ? 0 : 2);
        return new Fact.Named(
                value.toPlainString() + (psi ? " psi" : " bar"),
                NumberVerbaliser.words(value) + (psi ? " p s i" : " bar"));
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
